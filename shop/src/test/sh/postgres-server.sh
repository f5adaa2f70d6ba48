#!/bin/sh
# Runs a PostgreSQL server of its own for tests and trials, and nothing else on the machine touches it: data in a folder
# under /tmp, a free port on loopback, a password of its own. As root it installs Debian's package where there is none,
# and runs the server as an unprivileged user.
#
# Prints "ready PORT PASSWORD" when the server answers, or a message and ends with 1. Then it obeys lines on its input:
# "crash" kills every process of the server at once (SIGKILL), starts it again, and prints "ready" anew. At the end of
# the input, that is also when the program that asked for it dies, it stops the server and removes the folder.
set -u

fail() { echo "postgres-server: $*"; exit 1; }

programs() {
  for folder in $(ls -d /usr/lib/postgresql/*/bin /usr/pgsql-*/bin 2>/dev/null | sort -rV) \
    "$(dirname "$(command -v initdb || echo /none/initdb)")"; do
    if [ -x "$folder/initdb" ] && [ -x "$folder/pg_ctl" ]; then echo "$folder"; return; fi
  done
}

# Debian would make and start a server of its own at once.
install_package() {
  command -v apt-get >/dev/null 2>&1 ||
    fail "PostgreSQL (initdb, pg_ctl) is needed for these tests and is not here, nor apt-get to install it: install it"
  [ "$(id -u)" -eq 0 ] ||
    fail "PostgreSQL (initdb, pg_ctl) is needed for these tests: apt-get install postgresql (only root can)"
  if [ ! -e /etc/postgresql-common/createcluster.conf ]; then
    mkdir -p /etc/postgresql-common
    echo 'create_main_cluster = false' > /etc/postgresql-common/createcluster.conf
  fi
  export DEBIAN_FRONTEND=noninteractive
  { apt-get update -qq && apt-get install -y -qq --no-install-recommends postgresql; } >"$home/install" 2>&1 </dev/null ||
    fail "PostgreSQL could not be installed by apt-get: $(tail -n 3 "$home/install" | tr '\n' ' ')"
}

# As the owner of the folder, in the folder, with nothing of our input and output.
quietly() {
  if [ "$(id -u)" -eq 0 ]; then
    (cd "$home" && runuser -u "$owner" -- "$@") >>"$home/said" 2>&1 </dev/null
  else
    (cd "$home" && "$@") >>"$home/said" 2>&1 </dev/null
  fi
}

random() { od -An -N"$1" -tx1 /dev/urandom | tr -d ' \n'; }

start() {
  quietly "$bin/pg_ctl" start -w -t 60 -D "$home/data" -l "$home/log" \
    -o "-c listen_addresses=127.0.0.1 -c port=$port -c unix_socket_directories="
}

# The port is drawn, and drawn again if somebody has it.
start_somewhere() {
  for _ in 1 2 3 4 5 6 7 8 9 10; do
    port=$((20000 + 0x$(random 2) % 12000))
    if start; then return; fi
  done
  fail "PostgreSQL does not start: $(tail -n 3 "$home/log" | tr '\n' ' ')"
}

# Held still first, so that no process is born meanwhile. The file of the main process goes too: where nobody reaps the
# dead, as in some containers, its number would look alive.
crash() {
  main=$(head -n 1 "$home/data/postmaster.pid")
  kill -STOP "$main"
  kill -9 "$main" $(cat "/proc/$main/task/$main/children")
  rm "$home/data/postmaster.pid"
  start || fail "PostgreSQL does not start after the crash: $(tail -n 3 "$home/log" | tr '\n' ' ')"
}

end() {
  [ ! -f "$home/data/postmaster.pid" ] || quietly "$bin/pg_ctl" stop -m immediate -D "$home/data"
  rm -rf "$home"
}

home=$(mktemp -d /tmp/fourpin-postgres.XXXXXX) || fail "there is no room under /tmp"
trap end EXIT
trap 'exit 130' INT TERM HUP

bin=$(programs)
if [ -z "$bin" ]; then
  install_package
  bin=$(programs)
  [ -n "$bin" ] || fail "PostgreSQL was installed, but initdb and pg_ctl are not in /usr/lib/postgresql"
fi
owner=postgres
id "$owner" >/dev/null 2>&1 || owner=nobody
password=$(random 16)
echo "$password" > "$home/password"
[ "$(id -u)" -ne 0 ] || chown -R "$owner" "$home"
quietly "$bin/initdb" -D "$home/data" -U fourpin --pwfile="$home/password" -A scram-sha-256 --no-sync -E UTF8 --locale=C ||
  fail "initdb failed: $(tail -n 3 "$home/said" | tr '\n' ' ')"
start_somewhere
echo "ready $port $password"

while read -r order; do
  [ "$order" != crash ] || { crash; echo "ready $port $password"; }
done
