#!/usr/bin/env bash
# Runs the fuzz targets one after the other: tests/fuzz/run.sh SECONDS [TARGET...]. Each starts from its seeds
# (tests/fuzz/corpus) and from what earlier runs found out (build/fuzz/corpus); 0 seconds goes through both once.
# Fails on a crash, on an input that takes over 10 s or over 1 GB, and on a leak; the input lies in build/fuzz/found.
# What took over 10 s by the clock is tried again alone and counts by its processor time: on a machine that is busy
# elsewhere the clock runs on while a target waits. If it was only that, the target goes on with what is left of its time.
set -uo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
seconds=${1:?give the seconds for each target}
shift
targets=("$@")
[ ${#targets[@]} -gt 0 ] || for folder in tests/fuzz/corpus/*/; do targets+=("$(basename "$folder")"); done
declare -A dictionary=([units]=units [names]=units [job]=json [rack]=json [check]=json)
mkdir -p build/fuzz/found
target= log=
fuzz() { # options, then files or folders
  nice "build/fuzz/tests/fuzz/fuzz_$target" -rss_limit_mb=1024 -artifact_prefix="build/fuzz/found/$target-" "$@"
}
only_the_machine_was_slow() { # the log names an input that took too long by the clock, and alone it does not
  local input
  input=$(sed -nE 's/.*Test unit written to (.*-timeout-.*)/\1/p' "$log")
  [ -n "$input" ] && (ulimit -t 10 && fuzz -timeout=300 "$input") >"$log.again" 2>&1 || return 1
  echo "$target: over 10 s by the clock, alone not by the processor: ${input##*/}" >&2
  rm "$input"
}
failed=()
printf '%-10s %12s %10s %10s %8s\n' target executions edges inputs MB
for target in "${targets[@]}"; do
  mkdir -p "build/fuzz/corpus/$target"
  log="build/fuzz/$target.log"
  executions=0
  end=$((SECONDS + seconds))
  for try in 1 2 3 4 5; do
    options=(-timeout=10 -print_final_stats=1)
    left=$((end - SECONDS))
    if [ "$seconds" -gt 0 ]; then options+=(-max_total_time=$((left > 1 ? left : 1))); else options+=(-runs=0); fi
    [ -n "${PW_FUZZ_SEED:-}" ] && options+=(-seed=$((PW_FUZZ_SEED + try))) # the same each time; else by the clock
    [ -n "${dictionary[$target]:-}" ] && options+=(-dict="tests/fuzz/${dictionary[$target]}.dict")
    status=0
    fuzz "${options[@]}" "build/fuzz/corpus/$target" "tests/fuzz/corpus/$target" >"$log" 2>&1 || status=$?
    executions=$((executions + $(sed -nE 's/^stat::number_of_executed_units: *([0-9]+)/\1/p' "$log" | tail -1) + 0))
    [ "$status" -ne 0 ] && only_the_machine_was_slow || break
  done
  [ "$status" -eq 0 ] || failed+=("$target")
  last=$(grep -aE '^#[0-9]+.*cov: ' "$log" | tail -1)
  printf '%-10s %12s %10s %10s %8s\n' "$target" \
    "$executions" \
    "$(sed -nE 's/.*cov: ([0-9]+).*/\1/p' <<<"$last")" "$(sed -nE 's/.*corp: ([0-9]+).*/\1/p' <<<"$last")" \
    "$(sed -nE 's/^stat::peak_rss_mb: *([0-9]+)/\1/p' "$log")"
done
for target in "${failed[@]}"; do
  echo "== $target failed; the end of build/fuzz/$target.log:" >&2
  grep -a -vE '^#[0-9]+' "build/fuzz/$target.log" | tail -25 >&2
done
[ ${#failed[@]} -eq 0 ]
