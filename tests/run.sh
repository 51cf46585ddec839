#!/usr/bin/env bash
# Installs what is missing, builds with warnings as errors, and runs every test; then the core, geometry and engine
# tests once more under the address and undefined-behaviour sanitizers; then the fuzz targets for a moment.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
source app/needs.sh
install_missing "${needs_build[@]}" "${needs_tests[@]}" "${needs_fuzz[@]}"
export QT_QPA_PLATFORM=offscreen ASAN_OPTIONS=detect_leaks=1
export LSAN_OPTIONS="suppressions=$PWD/tests/support/lsan.supp:print_suppressions=0"

bash tests/layers.sh

echo "== release"
cmake --preset release -DPW_WARNINGS_FAIL=ON >/dev/null
cmake --build --preset release
ctest --preset release -j 2

echo "== sanitizers"
cmake --preset asan -DPW_WARNINGS_FAIL=ON >/dev/null
cmake --build --preset asan
ctest --preset asan -j 2

echo "== fuzzing"
cmake --preset fuzz -DPW_WARNINGS_FAIL=ON >/dev/null
# Not `check`, which needs the engine built once more: it is for long runs.
fuzzed=(units names job rack texts mesh placement solve)
cmake --build --preset fuzz --target "${fuzzed[@]/#/fuzz_}"
PW_FUZZ_SEED=1 tests/fuzz/run.sh "${PW_FUZZ_SECONDS:-12}" "${fuzzed[@]}"
