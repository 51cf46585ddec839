# What the project needs from Debian 12, and a function that installs what is missing. Sourced by run.sh and tests/run.sh.
needs_build=(build-essential cmake ninja-build qt6-base-dev qt6-tools-dev qt6-l10n-tools qt6-translations-l10n
  libgl-dev libeigen3-dev libcgal-dev libpolyclipping-dev
  libocct-modeling-algorithms-dev libocct-data-exchange-dev nlohmann-json3-dev libcli11-dev libgtest-dev
  libbenchmark-dev fonts-sil-andika fonts-dejavu-core)
needs_tests=(python3 python3-ezdxf python3-getfem python3-jsonschema poppler-utils xvfb git desktop-file-utils appstream shared-mime-info
  libxml2-utils man-db file)
# To make the package and try it in a fresh system (tests/install.sh).
needs_package=(dpkg-dev lintian mmdebstrap imagemagick)
needs_fuzz=(clang-14 libclang-rt-14-dev) # tests/run.sh and tests/fuzz
needs_valgrind=(valgrind)                # tests/valgrind.sh
needs_coverage=(gcovr)                   # tests/coverage.sh

install_missing() {
  local missing=() package
  for package in "$@"; do
    dpkg-query -W -f='${Status}' "$package" 2>/dev/null | grep -q 'ok installed' || missing+=("$package")
  done
  [ ${#missing[@]} -eq 0 ] && return 0
  local root=()
  if [ "$(id -u)" -ne 0 ]; then
    command -v sudo >/dev/null || { echo "These packages are missing: ${missing[*]}. Install them as root." >&2; return 1; }
    root=(sudo)
  fi
  echo "Installing: ${missing[*]}"
  "${root[@]}" apt-get update -qq
  "${root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "${missing[@]}" >/dev/null
}
