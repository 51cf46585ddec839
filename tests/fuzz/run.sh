#!/usr/bin/env bash
# Runs the fuzz targets one after the other: tests/fuzz/run.sh SECONDS [TARGET...]. Each starts from its seeds
# (tests/fuzz/corpus) and from what earlier runs found out (build/fuzz/corpus); 0 seconds goes through both once.
# Fails on a crash, on an input that takes over 10 s or over 1 GB, and on a leak; the input lies in build/fuzz/found.
set -uo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
seconds=${1:?give the seconds for each target}
shift
targets=("$@")
[ ${#targets[@]} -gt 0 ] || for folder in tests/fuzz/corpus/*/; do targets+=("$(basename "$folder")"); done
declare -A dictionary=([units]=units [names]=units [job]=json [rack]=json [check]=json)
mkdir -p build/fuzz/found
failed=()
printf '%-10s %12s %10s %10s %8s\n' target executions edges inputs MB
for target in "${targets[@]}"; do
  mkdir -p "build/fuzz/corpus/$target"
  log="build/fuzz/$target.log"
  options=(-timeout=10 -rss_limit_mb=1024 -print_final_stats=1 -artifact_prefix="build/fuzz/found/$target-")
  if [ "$seconds" -gt 0 ]; then options+=(-max_total_time="$seconds"); else options+=(-runs=0); fi
  [ -n "${PW_FUZZ_SEED:-}" ] && options+=(-seed="$PW_FUZZ_SEED") # the same tries each time; else by the clock
  [ -n "${dictionary[$target]:-}" ] && options+=(-dict="tests/fuzz/${dictionary[$target]}.dict")
  nice "build/fuzz/tests/fuzz/fuzz_$target" "${options[@]}" "build/fuzz/corpus/$target" "tests/fuzz/corpus/$target" \
    >"$log" 2>&1 || failed+=("$target")
  last=$(grep -aE '^#[0-9]+.*cov: ' "$log" | tail -1)
  printf '%-10s %12s %10s %10s %8s\n' "$target" \
    "$(sed -nE 's/^stat::number_of_executed_units: *([0-9]+)/\1/p' "$log")" \
    "$(sed -nE 's/.*cov: ([0-9]+).*/\1/p' <<<"$last")" "$(sed -nE 's/.*corp: ([0-9]+).*/\1/p' <<<"$last")" \
    "$(sed -nE 's/^stat::peak_rss_mb: *([0-9]+)/\1/p' "$log")"
done
for target in "${failed[@]}"; do
  echo "== $target failed; the end of build/fuzz/$target.log:" >&2
  grep -a -vE '^#[0-9]+' "build/fuzz/$target.log" | tail -25 >&2
done
[ ${#failed[@]} -eq 0 ]
