#!/bin/sh
# Tries the launcher on a fresh copy of the sources, in a folder with a space in its name, then on a built one that
# cannot be written to. Prints one line for each check; exit code 1 if any failed.
set -u

root=$(CDPATH='' cd -- "$(dirname -- "$0")/../../../.." && pwd -P) || exit 1
place=$(mktemp -d) || exit 1
trap 'chmod -R u+w "$place"; rm -rf "$place"' EXIT
copy="$place/fresh copy"
failed=0
count=0

check() {
  what=$1
  shift
  count=$((count + 1))
  if "$@"; then
    echo "launcher: good: $what"
  else
    failed=$((failed + 1))
    echo "launcher: WRONG: $what"
    tail -q -n 8 "$place"/out* "$place"/err* | sed 's/^/    /'
  fi
}

holds() { grep -q -- "$2" "$place/$1"; }
is_empty() { [ ! -s "$place/$1" ]; }
same_version() { [ -s "$place/$1" ] && cmp -s "$place/$1" "$place/$2"; }
launch() { "$launcher" "$@" > "$place/out" 2> "$place/err"; code=$?; }

mkdir "$copy"
(cd "$root" && tar -cf - --exclude=target --exclude=.fourpin .) | (cd "$copy" && tar -xf -)
ln -s "fresh copy/fourpin" "$place/by link"
launcher="$place/by link"
cd /

"$launcher" --version > "$place/out1" 2> "$place/err1" &
"$launcher" --version > "$place/out2" 2> "$place/err2"
code2=$?
wait $!
code1=$?
cat "$place/err1" "$place/err2" > "$place/err"
check "two first uses at once both end well" [ "$code1$code2" = 00 ]
check "both give the version" holds out1 '^fourpin [0-9]'
check "both give the same version" same_version out1 out2
check "the sources were built once" [ "$(grep -c 'building' "$place/err")" = 1 ]
rm "$place"/out? "$place"/err?

launch --version
check "the second use says nothing but the answer" is_empty err
launch --no-such-option
check "wrong usage ends with 2" [ "$code" = 2 ]
check "wrong usage leaves standard output empty" is_empty out

echo 'broken' > "$copy/core/src/main/java/fourpin/Broken.java"
launch --version
check "a broken source ends with 3" [ "$code" = 3 ]
check "a broken source is named" holds err 'Broken.java'
check "the log is named" holds err 'build.log'
rm "$copy/core/src/main/java/fourpin/Broken.java"

launch --version
check "a repaired source is built again" holds err 'building'
: > "$copy/.fourpin/classes.jsa"
launch --version
check "a spoilt class archive goes unnoticed" [ "$code" = 0 ]
check "a spoilt class archive brings no message" is_empty err

JAVA_HOME=/nowhere launch --version
check "a wrong JAVA_HOME is passed over when there is a Java 25 elsewhere" [ "$code" = 0 ]

"$launcher" serve --port 0 --data "$place/shop.db" > "$place/out" 2> "$place/err" &
server=$!
waited=0
while [ "$waited" -lt 60 ] && ! grep -q 'http://127.0.0.1:' "$place/out"; do
  sleep 1
  waited=$((waited + 1))
done
kill "$server"
wait "$server"
code=$?
check "the server says where browsers find it" holds out '^Fourpin is at http://127.0.0.1:[1-9]'
check "and stops when it is told to" [ "$code" = 143 ]
check "without a word of complaint" is_empty err

chmod -R a-w "$copy"
chmod a+rx "$place"
as_other=''
[ "$(id -u)" != 0 ] || as_other='setpriv --reuid=65534 --regid=65534 --clear-groups'
launch_unable_to_write() { $as_other "$launcher" "$@" > "$place/out" 2> "$place/err"; code=$?; }
launch_unable_to_write --version
check "a built folder that cannot be written to works" [ "$code" = 0 ]
check "and without a message" is_empty err
chmod u+w "$copy/core/pom.xml"
touch "$copy/core/pom.xml"
launch_unable_to_write --version
check "it works when its sources are newer, too" [ "$code" = 0 ]
check "and says so" holds err 'newer than the build'

echo "launcher: $count checks, $failed failed"
[ "$failed" -eq 0 ]
