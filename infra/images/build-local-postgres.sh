#!/usr/bin/env bash
# Makes the image garboard-postgres:local out of Debian's own PostgreSQL package, for machines on which no registry of
# images can be reached. It understands POSTGRES_USER, POSTGRES_PASSWORD and POSTGRES_DB as the public image does.
# Needs: Debian or a kin of it, a container engine, the package postgresql (installed here when run as root).
set -euo pipefail

image=garboard-postgres:local
here=$(cd "$(dirname "$0")" && pwd)
# What the entry point, the health check and the wait for the port use inside the container.
programs=(sh bash cat awk mkdir chown setpriv locale)

say() { echo "build-local-postgres: $*" >&2; }

newest_postgresql() { find /usr/lib/postgresql -mindepth 1 -maxdepth 1 2>/dev/null | sort -V | tail -n 1; }

[ -n "$(newest_postgresql)" ] || { say 'installing postgresql'; apt-get install --yes --no-install-recommends postgresql >&2; }
server=$(newest_postgresql)
version=$(basename "$server")

root=$(mktemp -d)
trap 'rm -rf "$root"' EXIT
mkdir -p "$root"/{bin,etc,tmp,run,usr/bin,usr/local/bin,var/lib/postgresql/data}
chmod 1777 "$root/tmp"
ln -s usr/lib "$root/lib"
ln -s usr/lib64 "$root/lib64"

# Copies files to the same place below the root, links followed.
put() { tar --create --dereference --directory / "${@#/}" | tar --extract --directory "$root"; }

# The shared libraries that the given programs load.
libraries_of() { ldd "$@" 2>/dev/null | grep -F '(0x' | grep -oE '/[^ ]+' | sort -u; }

say "PostgreSQL $version"
put "$server" "/usr/share/postgresql/$version" /usr/share/zoneinfo /usr/lib/locale/C.utf8
# Just-in-time compilation would bring a compiler three times the size of the server.
rm -f "$root$server"/lib/llvmjit*
for program in "${programs[@]}"; do
  file=$(readlink -f "$(command -v "$program")")
  cp "$file" "$root/usr/bin/$program"
  ln -sf "/usr/bin/$program" "$root/bin/$program"
done
mapfile -t loaded < <(libraries_of "$root$server"/bin/* "$root$server"/lib/*.so "$root"/usr/bin/*)
for library in "${loaded[@]}"; do
  target="$root$(readlink -m "$(dirname "$library")")/$(basename "$library")"
  mkdir -p "$(dirname "$target")"
  cp --dereference "$library" "$target"
done

printf 'root:x:0:0::/:/bin/sh\npostgres:x:999:999::/var/lib/postgresql:/bin/sh\n' >"$root/etc/passwd"
printf 'root:x:0:\npostgres:x:999:\n' >"$root/etc/group"
install -m 755 "$here/local-postgres-entrypoint.sh" "$root/usr/local/bin/docker-entrypoint.sh"

tar --create --directory "$root" . | docker import \
  --change "ENV PATH=$server/bin:/usr/local/bin:/usr/bin:/bin PGDATA=/var/lib/postgresql/data LANG=C.UTF-8" \
  --change 'ENTRYPOINT ["/usr/local/bin/docker-entrypoint.sh"]' \
  --change 'CMD ["postgres"]' \
  --change 'EXPOSE 5432' \
  - "$image" >/dev/null
say "$image is ready"
