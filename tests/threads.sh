#!/usr/bin/env bash
# The thread sanitizer over what runs beside the window: checks, ladders, racks and proposals at once, and the window's
# own work on them. Ten minutes and more to build, so not part of run.sh; see the release
# checklist in DEVELOPERS.md.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
source app/needs.sh
install_missing "${needs_build[@]}" "${needs_tests[@]}"
export QT_QPA_PLATFORM=offscreen
export TSAN_OPTIONS="suppressions=$PWD/tests/support/tsan.supp halt_on_error=1 die_after_fork=0" # the kill tests fork

cmake --preset tsan -DPW_WARNINGS_FAIL=ON >/dev/null
cmake --build --preset tsan --target engine_tests gui_tests
build/tsan/tests/engine_tests --gtest_filter='Threads.*:Rack*.*'
build/tsan/tests/gui_tests --gtest_filter='Checker*:Ladder*:NewestWork*:Journal*:RackPage*:Propose*:WindowTest*'
