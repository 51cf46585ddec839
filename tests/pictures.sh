#!/usr/bin/env bash
# Makes the README's pictures anew, in resources/pictures, from the window itself; or every state of the window, for
# looking at:  bash tests/pictures.sh [FOLDER]
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
export QT_QPA_PLATFORM=offscreen
grab=build/release/tests/gui_tests
[ -x "$grab" ] || { echo "Build first: bash app/run.sh" >&2; exit 1; }
if [ $# -eq 1 ]; then
  exec "$grab" --grab "$1"
fi
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
"$grab" --grab "$folder" readme_
for picture in "$folder"/readme_*.png; do
  mv "$picture" "resources/pictures/$(basename "${picture#"$folder"/readme_}")"
done
