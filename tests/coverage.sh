#!/usr/bin/env bash
# Long test: which lines of core, geometry and engine their own tests run. What no test comes by is to be looked at, not
# chased. The thousands of random designs are left out: they go where the named tests go. Counts of what stands in
# headers are low, as test programs bring copies of it that are not counted.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
source app/needs.sh
install_missing "${needs_build[@]}" "${needs_tests[@]}" "${needs_coverage[@]}"
export QT_QPA_PLATFORM=offscreen
cmake --preset coverage -DPW_WARNINGS_FAIL=ON >/dev/null
cmake --build --preset coverage
find build/coverage -name '*.gcda' -delete
export GTEST_TOTAL_SHARDS=2
for layer in core geometry engine; do
  halves=()
  for half in 0 1; do
    GTEST_SHARD_INDEX=$half "build/coverage/tests/${layer}_tests" --gtest_brief=1 \
      --gtest_filter='-*ManyDesigns*:*RandomDesigns*:*RandomJobs*' &
    halves+=($!)
  done
  for half in "${halves[@]}"; do wait "$half"; done
done
gcovr -j 2 --root . --object-directory build/coverage --filter 'core/' --filter 'geometry/' --filter 'app/engine/' \
  --exclude-unreachable-branches --exclude-throw-branches \
  --txt build/coverage/lines.txt --json-summary build/coverage/summary.json build/coverage
python3 - build/coverage/summary.json <<'PY'
import collections, json, sys
rooms = collections.defaultdict(lambda: [0, 0])
for each in json.load(open(sys.argv[1]))["files"]:
    parts = each["filename"].split("/")
    layer = "engine" if parts[0] == "app" else parts[0]
    for room in (layer, "/".join(parts[:-1])):
        rooms[room][0] += each["line_covered"]
        rooms[room][1] += each["line_total"]
for room, (run, lines) in sorted(rooms.items()):
    print(f"{room:<24} {run:>6} of {lines:>6} lines  {100 * run / max(lines, 1):5.1f} %")
PY
echo "Lines that no test runs: build/coverage/lines.txt"
