#!/usr/bin/env bash
# Builds everything once and runs every test. The last line is always "N passed, N failed" (", N skipped" if there are any).
#   bash tests/run.sh
#   bash tests/run.sh --filter FullyQualifiedName~Standings      anything given here goes on to "dotnet test"
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."

results="$PWD/.artifacts/test-results"
export LIVEHEAT_TEST_RESULTS="$results"     # see Directory.Build.targets: one .trx file a project
export DOTNET_NOLOGO=1 DOTNET_CLI_TELEMETRY_OPTOUT=1
export MSBUILDDISABLENODEREUSE=1             # leave no build processes behind
export PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD=1    # the browser tests use the Chromium of this machine

give_up() {
  echo "$1" >&2
  echo "0 passed, 1 failed"
  exit 1
}

find_browser() {
  [ -n "${LIVEHEAT_CHROMIUM:-}" ] && return 0
  local name
  for name in chromium chromium-browser google-chrome google-chrome-stable; do
    command -v "$name" >/dev/null && return 0
  done
  [ -x "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome" ]
}

# install NAME... : from the system's packages, saying why in the first argument.
install() {
  local why="$1"; shift
  echo "$why"
  command -v apt-get >/dev/null || give_up "There is no apt-get here. Install $* and start again."
  local as_root=()
  if [ "$(id -u)" -ne 0 ]; then
    command -v sudo >/dev/null || give_up "Installing needs root. Run: apt-get install $*; then start again."
    as_root=(sudo)
  fi
  "${as_root[@]}" apt-get update -qq \
    && "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq "$@" >/dev/null \
    || give_up "$* could not be installed, and the tests need it."
}

# Sums one attribute of the <Counters> of all result files.
count() {
  awk -v name="$1" '
    match($0, /<Counters [^>]*>/) {
      counters = substr($0, RSTART, RLENGTH)
      if (match(counters, " " name "=\"[0-9]+\"")) {
        value = substr(counters, RSTART, RLENGTH); gsub(/[^0-9]/, "", value); sum += value
      }
    }
    END { print sum + 0 }' "${files[@]}"
}

# Name and message of every failed test, out of the result files.
list_failed() {
  awk '
    function plain(text) {
      gsub(/&lt;/, "<", text); gsub(/&gt;/, ">", text); gsub(/&quot;/, "\"", text); gsub(/&#xD;/, "", text); gsub(/&amp;/, "\\&", text)
      return text
    }
    /<UnitTestResult / && /outcome="Failed"/ {
      match($0, / testName="[^"]*"/); print "  " plain(substr($0, RSTART + 11, RLENGTH - 12)); failed = 1
    }
    failed && /<Message>/ { message = 1; sub(/.*<Message>/, "") }
    message { line = $0; sub(/<\/Message>.*/, "", line); print "      " plain(line) }
    /<\/Message>/ { message = 0; failed = 0 }
    /<\/UnitTestResult>/ { failed = 0 }' "${files[@]}"
}

command -v dotnet >/dev/null || give_up "The .NET SDK is missing: \"dotnet\" is not on the PATH. Install .NET SDK 10 from https://dotnet.microsoft.com/download"
find_browser || install "No Chromium or Chrome found; installing Debian's chromium and fonts-liberation for the browser tests." chromium fonts-liberation
command -v openssl >/dev/null || install "No openssl found; installing it: a test checks our signatures with it." openssl
command -v strace >/dev/null || install "No strace found; installing it: tests see with it that the disk is synchronised before a tap is acknowledged." strace

dotnet build LiveHeat.sln -c Release || give_up "The build failed: see the errors above. No test was run."

rm -rf "$results"
outcome=0
dotnet test LiveHeat.sln -c Release --no-build "$@" || outcome=$?

shopt -s nullglob
files=("$results"/*.trx)
[ ${#files[@]} -gt 0 ] || give_up "No test was run."

passed=$(count passed)
failed=$(( $(count failed) + $(count error) + $(count timeout) + $(count aborted) ))
skipped=$(( $(count total) - $(count executed) ))

echo
if [ "$failed" -gt 0 ]; then
  echo "Failed:"
  list_failed
elif [ "$outcome" -ne 0 ]; then
  echo "\"dotnet test\" ended with code $outcome, although no test says that it failed: a test process broke off. See above." >&2
  failed=1
elif [ $((passed + failed)) -eq 0 ]; then
  echo "No test was run." >&2
  outcome=1
fi

line="$passed passed, $failed failed"
[ "$skipped" -gt 0 ] && line+=", $skipped skipped"
echo "$line"
[ "$outcome" -eq 0 ] && [ "$failed" -eq 0 ]
