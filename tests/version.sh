#!/usr/bin/env bash
# The version's text in a folder without git, before the first release, on it, after it, and with changes.
set -euo pipefail
script="$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)/resources/package/version.cmake"
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
export GIT_CONFIG_GLOBAL=/dev/null GIT_CONFIG_SYSTEM=/dev/null GIT_CEILING_DIRECTORIES=$(dirname "$folder")
export GIT_AUTHOR_NAME=test GIT_AUTHOR_EMAIL=test@example.invalid GIT_COMMITTER_NAME=test GIT_COMMITTER_EMAIL=test@example.invalid
failed=0
expect() { # what, pattern
  rm -f "$folder.cpp"
  cmake -DVERSION=0.1.0 -DSOURCE="$folder/source" -DOUT="$folder.cpp" -P "$script"
  local said
  said=$(sed -n 's/.*return "\(.*\)".*/\1/p' "$folder.cpp")
  if [[ ! $said =~ ^$2$ ]]; then
    echo "FAILED: $1: \"$said\" is not like $2"
    failed=1
  fi
}
mkdir "$folder/source"
echo 1 >"$folder/source/file"
expect 'no git' '0\.1\.0'
git -C "$folder/source" init -q
git -C "$folder/source" add file
git -C "$folder/source" commit -qm one
expect 'before the release' '0\.1\.0~1\.g[0-9a-f]{7,}'
git -C "$folder/source" tag v0.1.0
expect 'the release' '0\.1\.0'
echo 2 >"$folder/source/file"
expect 'the release, changed' '0\.1\.0\+dirty'
git -C "$folder/source" commit -qam two
expect 'after the release' '0\.1\.0\+1\.g[0-9a-f]{7,}'
touch "$folder/source/file of mine"
expect 'a file that git does not know' '0\.1\.0\+1\.g[0-9a-f]{7,}'
echo 3 >"$folder/source/file"
expect 'after it, changed' '0\.1\.0\+1\.g[0-9a-f]{7,}\.dirty'
mkdir "$folder/source/unpacked"
git -C "$folder/source" mv file "$folder/source/unpacked/file"
cmake -DVERSION=0.1.0 -DSOURCE="$folder/source/unpacked" -DOUT="$folder.cpp" -P "$script"
grep -q '"0.1.0"' "$folder.cpp" || { echo 'FAILED: a folder in another clone is not that clone'; failed=1; }
# The same text is not written again, so nothing is built again.
touch -d 2000-01-01 "$folder.cpp"
cmake -DVERSION=0.1.0 -DSOURCE="$folder/source/unpacked" -DOUT="$folder.cpp" -P "$script"
[ "$(date -r "$folder.cpp" +%Y)" = 2000 ] || { echo 'FAILED: written again without need'; failed=1; }
rm -f "$folder.cpp"
[ "$failed" -eq 0 ] && echo 'version: names the source and nothing else'
exit "$failed"
