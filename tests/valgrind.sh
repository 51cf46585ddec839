#!/usr/bin/env bash
# Long test: memcheck over the command line on three samples: check, cut, sheet, solid, rack. Fails on
# a read or write outside what is ours, on a jump that hangs on a byte nobody wrote, and on memory that is lost.
# Builds the preset dev (-O1 -g) first, or takes the program that is named.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
source app/needs.sh
install_missing "${needs_valgrind[@]}"
program=${1:-}
if [ -z "$program" ]; then
  install_missing "${needs_build[@]}"
  cmake --preset dev -DPW_BENCH=OFF -DPW_VALGRIND=ON >/dev/null
  cmake --build --preset dev --target platewright pw_step
  program=build/dev/app/cli/platewright
fi
export QT_QPA_PLATFORM=offscreen
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
failed=0
checked() { # words of the command line
  local log="$folder/log" status=0
  # 0 and 1 are verdicts, 2 bad input; 99 is valgrind's.
  nice valgrind --quiet --error-exitcode=99 --leak-check=full --errors-for-leak-kinds=definite --num-callers=25 \
    --suppressions=tests/support/valgrind.supp "$program" "$@" >"$folder/out" 2>"$log" || status=$?
  printf '%-5s %s\n' "$([ "$status" -le 1 ] && echo well || echo "$status")" "$*"
  if [ "$status" -gt 1 ]; then
    head -60 "$log" >&2
    failed=1
  fi
}
for sample in mill_lane_six_pin mill_lane_square_four mill_lane_pull_taper; do
  job=samples/$sample.plate.json
  checked check "$job" --json
  checked cut "$job" --anyway -o "$folder/$sample.dxf"
  checked cut "$job" --anyway -o "$folder/$sample.ngc"
  checked sheet "$job" --anyway -o "$folder/$sample.pdf"
  checked solid "$job" --anyway -o "$folder/$sample.step"
  checked rack "$job" --rack samples/rack.json
done
exit "$failed"
