#!/usr/bin/env bash
# Installs the build into an empty folder, checks every file for what it is meant to be, and runs the program from there.
#   tests/installed.sh BUILD-FOLDER
# The package in a fresh Debian is tests/install.sh.
set -euo pipefail
build=$(cd "$1" && pwd)
cd "$(dirname "${BASH_SOURCE[0]}")/.."
root=$(mktemp -d)
trap 'rm -rf "$root"' EXIT
failed=0
fail() { echo "FAILED: $*"; failed=1; }

# The copy of the packed texts is made by the whole build; here they may be missing.
cmake --build "$build" --target pw_packed_texts >/dev/null
DESTDIR="$root" cmake --install "$build" --prefix /usr >"$root/log" 2>&1 || { cat "$root/log"; exit 1; }
usr="$root/usr"
program="$usr/bin/platewright"

echo "-- files for the desktop"
desktop-file-validate "$usr/share/applications/platewright.desktop" || fail desktop entry
appstreamcli validate --no-net "$usr"/share/metainfo/*.metainfo.xml >"$root/log" || { cat "$root/log"; fail AppStream entry; }
xmllint --noout "$usr/share/mime/packages/platewright.xml" || fail file type
update-mime-database "$usr/share/mime" 2>"$root/log" || fail file type
grep -qx '60:application/x-platewright-job+json:\*.plate.json' "$usr/share/mime/globs2" || fail "the file type's pattern"
for size in 16 22 24 32 48 64 128 256; do
  file "$usr/share/icons/hicolor/${size}x$size/apps/platewright.png" | grep -q "PNG image data, $size x $size," ||
    fail "icon of $size"
done
xmllint --noout "$usr/share/icons/hicolor/scalable/apps/platewright.svg" || fail icon
said=$(LC_ALL=C.UTF-8 MANROFFSEQ='' man --warnings -E UTF-8 -l -Tutf8 -Z "$usr/share/man/man1/platewright.1.gz" 2>&1 >/dev/null)
[ -z "$said" ] || fail "man page: $said"
bash -c "source '$usr/share/bash-completion/completions/platewright'; complete -p platewright" >/dev/null || fail bash completion

echo "-- nothing of the build folder"
strings -a "$program" "$usr"/lib*/platewright/pw_step.so "$usr"/lib/*/platewright/pw_step.so 2>/dev/null >"$root/strings" || true
for folder in "$build" "$PWD" "$HOME/"; do
  if grep -nF -- "$folder" "$root/strings"; then fail "an installed file names $folder"; fi
done
if readelf -d "$program" | grep -E 'RPATH|RUNPATH'; then fail 'an installed program has a run path'; fi

echo "-- the program runs from there, and finds what belongs to it"
# Nothing of the build may help it: the module is found in the installed tree or not at all.
sample="$usr/share/platewright/samples/mill_lane_six_pin.plate.json"
mkdir "$root/made" "$root/home"
run() { (cd "$root/made" && env -i HOME="$root/home" PATH="$usr/bin:/usr/bin:/bin" LC_ALL=C.UTF-8 "$@"); }
version=$(run platewright --version)
[[ $version =~ ^platewright\ [0-9]+\.[0-9]+\.[0-9]+([~+][0-9a-z.]+)?$ ]] || fail "version: $version"
# (Into a file first: a reader that has seen enough closes the pipe, and that is no fault of the writer.)
run platewright check "$sample" >"$root/log" && grep -q '^holds' "$root/log" || { head -3 "$root/log"; fail check; }
run platewright cut "$sample" -o plate.dxf >/dev/null && [ -s "$root/made/plate.dxf" ] || fail cut
run platewright sheet "$sample" -o sheet.pdf >/dev/null && head -c 5 "$root/made/sheet.pdf" | grep -q '%PDF-' || fail sheet
run platewright solid "$sample" -o plate.step >/dev/null || fail solid
grep -qm1 '^ISO-10303-21' "$root/made/plate.step" || fail solid
# Without the module it says so: that it was the installed one that served.
mv "$usr" "$root/elsewhere"
usr="$root/elsewhere" program="$root/elsewhere/bin/platewright"
run platewright solid "$usr/share/platewright/samples/mill_lane_six_pin.plate.json" -o moved.step >/dev/null || fail 'a moved tree'
find "$usr" -name pw_step.so -delete
if run platewright solid "$usr/share/platewright/samples/mill_lane_six_pin.plate.json" -o none.step >/dev/null 2>"$root/log"; then
  fail 'a solid is written without the installed module: by one from somewhere else'
fi
grep -q 'pw_step.so' "$root/log" || fail "the module's absence is not told"

[ "$failed" -eq 0 ] && echo 'installed: complete, clean, and it runs'
exit "$failed"
