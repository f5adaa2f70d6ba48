#!/bin/sh
# Finds Chromium and its driver (WebDriver) for tests; as root on Debian and the like it installs the package where they are
# missing. Prints the path of the browser and, on the next line, that of the driver; or a message, and ends with 1.
set -u

fail() { echo "browser: $*"; exit 1; }

first() {
  for name in "$@"; do
    command -v "$name" && return
  done
}

find_both() {
  browser=$(first chromium chromium-browser google-chrome google-chrome-stable)
  driver=$(first chromedriver)
  [ -n "$browser" ] && [ -n "$driver" ]
}

# The driver's package brings the browser of the very same version.
install_package() {
  command -v apt-get >/dev/null 2>&1 ||
    fail "Chromium and chromedriver are needed for these tests and are not here, nor apt-get to install them: install both"
  [ "$(id -u)" -eq 0 ] ||
    fail "Chromium and chromedriver are needed for these tests: apt-get install chromium-driver (only root can)"
  log=$(mktemp /tmp/fourpin-browser.XXXXXX) || fail "there is no room under /tmp"
  export DEBIAN_FRONTEND=noninteractive
  { apt-get update -qq && apt-get install -y -qq --no-install-recommends -o DPkg::Lock::Timeout=300 \
    chromium-driver fonts-dejavu-core; } >"$log" 2>&1 </dev/null ||
    fail "Chromium could not be installed by apt-get: $(tail -n 3 "$log" | tr '\n' ' ')"
  rm -f "$log"
}

if ! find_both; then
  install_package
  find_both || fail "the package chromium-driver was installed, but chromium and chromedriver are not on the PATH"
fi
echo "$browser"
echo "$driver"
