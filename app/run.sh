#!/usr/bin/env bash
# Installs what is missing, builds, and opens a sample in the window. With no display: prints the sample's verdict,
# writes its cut file and says where. Usage: bash app/run.sh [JOB.plate.json]
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
source app/needs.sh
install_missing "${needs_build[@]}"

cmake --preset release >build-configure.log 2>&1 || { cat build-configure.log; exit 1; }
rm -f build-configure.log
cmake --build --preset release --target platewright

program=build/release/app/cli/platewright
job=${1:-samples/mill_lane_six_pin.plate.json}
if [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; then
  exec "$program" "$job"
fi
status=0
"$program" check "$job" || status=$?
[ "$status" -le 1 ] || exit "$status"
cut=$(mktemp -d)/plate.dxf
"$program" cut "$job" -o "$cut" --anyway >/dev/null
echo
echo "No display here, so no window. The cut file is $cut"
