#!/bin/sh
# Entry point of garboard-postgres:local: makes the cluster when there is none, then becomes the server.
set -eu

user=${POSTGRES_USER:-postgres}
database=${POSTGRES_DB:-$user}

as_postgres() { setpriv --reuid=999 --regid=999 --clear-groups "$@"; }

if [ ! -s "$PGDATA/PG_VERSION" ]; then
  mkdir -p "$PGDATA"
  chown -R postgres:postgres "$PGDATA"
  echo "${POSTGRES_PASSWORD:?a password is needed}" >/tmp/password
  as_postgres initdb --pgdata "$PGDATA" --username "$user" --pwfile /tmp/password --auth scram-sha-256 \
    --encoding UTF8 --locale C.UTF-8 --no-sync --no-instructions
  echo 'host all all all scram-sha-256' >>"$PGDATA/pg_hba.conf"
  [ "$database" = postgres ] || echo "create database \"$database\"" | as_postgres postgres --single -D "$PGDATA" postgres
fi

exec setpriv --reuid=999 --regid=999 --clear-groups "$@" -c 'listen_addresses=*' -c unix_socket_directories=/tmp
