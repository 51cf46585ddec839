#!/usr/bin/env bash
# Makes every output of one sample, to be looked at page by page:
#   tests/outputs.sh FOLDER [JOB]      JOB: a job file; the six-pin sample when not said
# Needs a release build; draws the pages as pictures where pdftoppm is at hand.
set -euo pipefail
here="$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)"
folder="${1:?say where to: tests/outputs.sh FOLDER [JOB]}"
job="${2:-$here/samples/mill_lane_six_pin.plate.json}"
platewright="${PLATEWRIGHT:-$here/build/release/app/cli/platewright}"
mkdir -p "$folder"

make() { "$platewright" "$@" --anyway >>"$folder/said.txt"; }
: >"$folder/said.txt"
"$platewright" check "$job" >"$folder/report_words.txt" || true
"$platewright" check "$job" --text >"$folder/report.txt" || true
"$platewright" check "$job" --json >"$folder/report.json" || true
make cut "$job" -o "$folder/finished_size.dxf"
make cut "$job" -o "$folder/finished_size_r12.dxf" --r12
make cut "$job" -o "$folder/finished_size.svg"
if "$platewright" cut "$job" -o "$folder/program.ngc" --anyway >>"$folder/said.txt" 2>&1; then
    make cut "$job" -o "$folder/path.dxf" --path
    make cut "$job" -o "$folder/path_r12.dxf" --path --r12
    make cut "$job" -o "$folder/path.svg" --path
    make cut "$job" "$job" -o "$folder/two_on_a_sheet.dxf" --path --on "1000 x 1000 mm"
    make cut "$job" "$job" -o "$folder/two_on_a_sheet.ngc" --on "1000 x 1000 mm"
fi
make solid "$job" -o "$folder/plate.step"
make solid "$job" -o "$folder/stack.step" --stack
for paper in a4 letter; do
    make sheet "$job" -o "$folder/sheet_$paper.pdf" --paper "$paper"
    make sheet "$job" -o "$folder/template_$paper.pdf" --paper "$paper" --template
done
if command -v pdftoppm >/dev/null; then
    for pdf in "$folder"/*.pdf; do
        pdftoppm -r 110 -png "$pdf" "${pdf%.pdf}"
    done
fi
ls "$folder"
