#!/usr/bin/env bash
# clang-tidy over the code (.clang-tidy says what is on, and why the rest is off). An hour on two cores, so not part of
# run.sh; see the release checklist in DEVELOPERS.md. Usage: bash tests/tidy.sh [FOLDER...], all rooms by default.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
source app/needs.sh
install_missing "${needs_build[@]}" clang-tidy
cmake --preset release >/dev/null
[ $# -gt 0 ] || set -- core geometry app
find "$@" -name '*.cpp' -print0 |
  xargs -0 -n 4 -P 2 clang-tidy --quiet -p build/release --extra-arg=-Wno-unknown-warning-option
