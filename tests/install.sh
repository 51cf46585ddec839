#!/usr/bin/env bash
# Makes the Debian package, and installs, uses and removes it in a fresh Debian of the same release.
#   sudo tests/install.sh [FOLDER]     FOLDER: where package, transcript and a picture of the window go (build/install)
# As root; takes some minutes and fetches about 500 MB from the mirror that this system's apt uses. It is no part of
# tests/run.sh; its fast part, the installed tree, is (tests/installed.sh). PW_FRESH_ROOT=FILE.tar takes a bare system that
# mmdebstrap made before.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
if [ "${1:-}" != --inside ]; then
  [ "$(id -u)" -eq 0 ] || { echo 'as root: a fresh system is made and entered'; exit 2; }
  out=$(realpath -m "${1:-build/install}")
  source app/needs.sh
  install_missing "${needs_build[@]}" "${needs_package[@]}"
  mkdir -p "$out"
  rm -rf "$out"/*.deb "$out"/again "$out"/transcript.txt
  exec > >(tee "$out/transcript.txt") 2>&1

  echo "== package"
  cmake --preset package >/dev/null
  cmake --build --preset release --target platewright pw_packed_texts >/dev/null
  cpack --config build/release/CPackConfig.cmake -B "$out/again" >/dev/null 2>&1
  first=$(sha256sum "$out"/again/*.deb | cut -d' ' -f1)
  rm -rf "$out/again"
  cpack --config build/release/CPackConfig.cmake -B "$out" >/dev/null 2>&1
  rm -rf "$out/_CPack_Packages"
  deb=$(ls "$out"/*.deb)
  echo "$(basename "$deb"), $(stat -c %s "$deb") bytes, sha256 $first"
  [ "$first" = "$(sha256sum "$deb" | cut -d' ' -f1)" ] || { echo 'FAILED: packed twice, the two differ'; exit 1; }
  echo 'packed twice: the same bytes'
  dpkg-deb -f "$deb" Version Depends Recommends Installed-Size
  # Root is no reason to refuse here: the whole script is run as root, in a machine of its own.
  lintian --allow-root --show-overrides --tags initial-upload-closes-no-bugs "$deb" || true
  lintian --allow-root --fail-on error,warning "$deb"
  echo 'lintian: no errors, no warnings'

  echo "== fresh system"
  root=$(mktemp -d /var/tmp/platewright-root.XXXXXX)
  trap 'rm -rf --one-file-system "$root"' EXIT
  base=${PW_FRESH_ROOT:-$root.tar}
  if [ ! -f "$base" ]; then
    release=$(. /etc/os-release && echo "$VERSION_CODENAME")
    mirror=$(apt-get indextargets --format '$(REPO_URI) $(CODENAME) $(COMPONENT)' 'Created-By: Packages' |
      awk -v release="$release" '$2 == release && $3 == "main" {print $1; exit}')
    mmdebstrap --quiet --variant=minbase "$release" "$base" "$mirror"
    trap 'rm -rf --one-file-system "$root" "$root.tar"' EXIT
  fi
  tar -C "$root" -xf "$base"
  cp /etc/resolv.conf "$root/etc/resolv.conf"
  mkdir "$root/test"
  cp "$deb" tests/install.sh "$root/test/"
  # A namespace of its own: what is mounted and started in there is gone with it.
  unshare --mount --pid --fork --kill-child bash -c '
    mount --make-rprivate /
    mount -t proc proc "$0/proc"
    mount --rbind /dev "$0/dev"
    mount -t tmpfs tmpfs "$0/run"
    exec chroot "$0" env -i HOME=/root PATH=/usr/sbin:/usr/bin:/sbin:/bin LC_ALL=C.UTF-8 DEBIAN_FRONTEND=noninteractive \
      bash /test/install.sh --inside' "$root" && status=0 || status=$?
  cp "$root/test/window.xwd" "$out/" 2>/dev/null && convert "xwd:$out/window.xwd" "$out/window.png" && rm "$out/window.xwd"
  [ "$status" -eq 0 ] || echo 'FAILED in the fresh system'
  exit "$status"
fi

# --- From here on in the fresh system.
failed=0
fail() { echo "FAILED: $*"; failed=1; }
hold() { # what is held, then the command
  local what=$1
  shift
  if "$@" >/test/said 2>&1; then echo "  ok  $what"; else fail "$what"; tail -5 /test/said; fi
}
files() { find / -xdev \( -path /proc -o -path /dev -o -path /run -o -path /sys -o -path /test -o -path /tmp \) -prune -o -print | sort; }
# What the package manager and its caches keep of everything that was ever installed.
passing='^/(var/(lib/(apt|dpkg|systemd|ucf|ieee-data|pam|xkb|python)|cache|log|backups|mail)|etc/(ld.so.cache|passwd-|shadow-|group-|gshadow-|mtab|\.pwd\.lock)|root/)'
cd /test
deb=(/test/*.deb)
apt-get update -qq
useradd --create-home worker
as() { su worker -s /bin/bash -c "cd ~ && export LC_ALL=C.UTF-8 DISPLAY=${DISPLAY:-} && $1"; }

echo "== with nothing but what the package depends on"
files >/test/before
apt-get install -y -qq --no-install-recommends "${deb[0]}" >/test/said 2>&1 || { tail -20 /test/said; exit 1; }
echo "installed: $(dpkg -l | grep -c '^ii') packages in the system, $(du -sxh / 2>/dev/null | cut -f1)"
[ -z "$(ls /var/lib/dpkg/info/platewright.{preinst,postinst,prerm,postrm} 2>/dev/null)" ] && echo '  ok  no scripts of its own' || fail scripts
sample=/usr/share/platewright/samples/mill_lane_six_pin.plate.json
echo "  $(as 'platewright --version')"
hold 'check a sample: holds' as "platewright check $sample | tee /dev/stderr | grep -q ^holds"
hold 'check one that sets: status 1' as "platewright check /usr/share/platewright/samples/mill_lane_six_pin_thin.plate.json; [ \$? -eq 1 ]"
hold 'cut: DXF' as "platewright cut $sample -o plate.dxf && grep -q AC1015 plate.dxf"
hold 'cut: RS-274' as "platewright cut $sample -o plate.ngc && grep -qx M2 plate.ngc"
hold 'sheet: PDF' as "platewright sheet $sample -o sheet.pdf && head -c 5 sheet.pdf | grep -q PDF && grep -qa Andika sheet.pdf"
hold 'sheet in German' as "platewright sheet $sample -o blatt.pdf --language de --template"
hold 'solid: STEP' as "platewright solid $sample -o plate.step --stack && head -1 plate.step | grep -q ISO-10303-21"
hold 'rack' as "platewright rack $sample | grep -q ^Take"
hold 'schemas are there' test -s /usr/share/platewright/schema/job.schema.json
ldd /usr/bin/platewright /usr/lib/*/platewright/pw_step.so | grep 'not found' && fail 'a library is missing'
dpkg -L platewright | while read -r one; do [ -f "$one" ] && echo "$one"; done >/test/ours
rm -rf /home/worker/{plate,sheet,blatt}*
apt-get purge -y -qq --autoremove platewright >/test/said 2>&1 || fail purge
find /home/worker -mindepth 1 -newer /test/before ! -name '.*' | grep . && fail 'left in the home folder'
files >/test/after
while read -r one; do [ -e "$one" ] && fail "left: $one"; done </test/ours
left=$(diff <(grep -vE "$passing" /test/before) <(grep -vE "$passing" /test/after) | grep '^[<>]' || true)
[ -z "$left" ] && echo "  ok  purged: $(wc -l </test/ours) files of ours gone, file lists before and after are the same" || fail "purged, but: $left"

echo "== on a desktop"
apt-get install -y -qq --no-install-recommends xvfb xdotool x11-utils man-db xdg-utils libglib2.0-bin desktop-file-utils \
  shared-mime-info libfile-mimeinfo-perl bash-completion openbox dbus >/test/said 2>&1 || { tail -20 /test/said; exit 1; }
files >/test/before
apt-get install -y -qq "${deb[0]}" >/test/said 2>&1 || { tail -20 /test/said; exit 1; }
as "cp $sample 'a job, copied.plate.json'"
hold 'man page' as 'man -P cat platewright | grep -q "EXIT STATUS"'
hold 'completion in bash' bash -c 'source /usr/share/bash-completion/bash_completion; _completion_loader platewright; complete -p platewright'
hold 'xdg-mime knows the type' as '[ "$(xdg-mime query filetype "$HOME/a job, copied.plate.json")" = application/x-platewright-job+json ]'
hold 'gio knows the type' as 'gio info -a standard::content-type "a job, copied.plate.json" | grep -q application/x-platewright-job+json'
hold 'any other JSON stays JSON' as 'echo "{}" >x.json && gio info -a standard::content-type x.json | grep -q "application/json"'
hold 'the default program' as '[ "$(xdg-mime query default application/x-platewright-job+json)" = platewright.desktop ]'
hold 'gio names it too' as 'gio mime application/x-platewright-job+json | grep -q platewright.desktop'
export DISPLAY=:91
mkdir -p /test/screen && chmod 1777 /tmp
Xvfb $DISPLAY -screen 0 1366x768x24 -nolisten tcp -fbdir /test/screen >/test/xvfb 2>&1 &
screen=$!
sleep 2
as 'openbox >/dev/null 2>&1 & sleep 1'
# What a file manager does with a double click.
as 'cd / && gio open "$HOME/a job, copied.plate.json" >/dev/null 2>&1 &'
title='' wanted="$(sed -n 's/^ *"title": "\(.*\)",$/\1/p' $sample) - Platewright"
for _ in $(seq 60); do
  window=$(as "xdotool search --class platewright 2>/dev/null | tail -1" || true)
  [ -n "$window" ] && title=$(as "xdotool getwindowname $window 2>/dev/null" || true)
  [[ $title == "$wanted" ]] && break
  sleep 1
done
[[ $title == "$wanted" ]] && echo "  ok  double click: the window \"$title\" comes up" || fail "double click: no window, \"$title\""
[ -n "$window" ] && hold 'it is known to the desktop by its entry' as "xprop -id $window WM_CLASS | grep -q '\"platewright\"'"
[ -n "$window" ] && hold 'it has an icon' as "xprop -id $window _NET_WM_ICON | grep -c Icon >/dev/null" # read to its end: cut short it names none
sleep 4
cp /test/screen/Xvfb_screen0 /test/window.xwd
pids=$(pgrep -u worker -x platewright || true)
[ -n "$pids" ] && kill $pids
sleep 1
kill $screen 2>/dev/null || true
dpkg -L platewright | while read -r one; do [ -f "$one" ] && echo "$one"; done >/test/ours
apt-get purge -y -qq --autoremove platewright >/test/said 2>&1 || fail purge
while read -r one; do [ -e "$one" ] && fail "left: $one"; done </test/ours
grep -rl platewright /usr/share/mime /usr/share/applications /usr/share/icons 2>/dev/null && fail 'a cache still knows it'
left=$(find / -xdev \( -path /proc -o -path /dev -o -path /run -o -path /test -o -path /home -o -path /tmp \) -prune -o \
  -iname '*platewright*' -print | grep -vE '^/var/(log|cache|lib/(dpkg|apt))' || true)
[ -z "$left" ] && echo '  ok  purged: nothing named platewright is left' || fail "left: $left"

[ "$failed" -eq 0 ] && echo 'install: installs, runs, opens by double click, and goes without a trace'
exit "$failed"
