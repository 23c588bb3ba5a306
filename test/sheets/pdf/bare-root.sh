#!/bin/sh
# Proves that a copy of the repository prints on a bare Debian 12 (minbase and node, nothing else), as root and as nobody, and that both make the same bytes.
#
#   test/sheets/pdf/bare-root.sh [REPOSITORY [COMMAND]]
#
# REPOSITORY  a built copy with node_modules; default: the repository of this script
# COMMAND     run in the copy; must put one PDF or more into the folder `out`
# BARE_ROOT   a root file system made earlier, kept and used again; default: made anew and removed
# BARE_MIRROR a Debian mirror
# Ends with 0 where it prints or must be skipped, 1 where it does not print.
set -eu

repository=$(cd "${1:-$(dirname "$0")/../../..}" && pwd)
command=${2:-node dist/command.js issue examples/kelder-lock/kelder-lock.md --out out}
mirror=${BARE_MIRROR:-http://deb.debian.org/debian}

skip() {
  echo "SKIPPED: $1"
  exit 0
}

[ "$(id -u)" = 0 ] || skip 'only root can make and enter a root file system'
[ "$(uname -sm)" = 'Linux x86_64' ] || skip 'the packed browser is for Linux on x64'
command -v debootstrap >/dev/null || skip 'debootstrap is not installed (apt-get install debootstrap)'
command -v chroot >/dev/null || skip 'there is no chroot here'

work=$(mktemp -d)
root=${BARE_ROOT:-$work/root}
copy=$root/opt/undercroft
proc=
# `one-file-system`: were a mount left behind, it must not be emptied.
leave() {
  [ -z "$proc" ] || umount "$root/proc" || true
  rm -rf --one-file-system "$copy" "$work"
}
trap leave EXIT
trap 'exit 1' INT TERM HUP

if [ ! -x "$root/bin/sh" ]; then
  debootstrap --variant=minbase bookworm "$root" "$mirror" >"$work/debootstrap.log" 2>&1 ||
    skip "debootstrap could not make the root: $(tail -n 1 "$work/debootstrap.log")"
fi
chroot "$root" /bin/true || skip 'this system does not let chroot in'
mount -t proc proc "$root/proc" 2>/dev/null && proc=yes || echo 'no /proc in the root (mounting is not allowed here)'

rm -rf "$copy"
mkdir -p "$copy"
tar -C "$repository" --exclude=./.git --exclude=./out -cf - . | tar -C "$copy" --no-same-owner -xf -
cp "$(command -v node)" "$root/usr/bin/node"

print_as() {
  user=$1
  home=$2
  rm -rf "$copy/out" "$root/tmp"/undercroft-* "$root/root/.cache/undercroft"
  install -d -o "$user" "$copy/out"
  if ! chroot --userspec="$user" "$root" /usr/bin/env -i PATH=/usr/bin:/bin HOME="$home" sh -c "cd /opt/undercroft && $command" >"$work/$user.log" 2>&1; then
    echo "FAILED as $user:"
    tail -n 20 "$work/$user.log"
    exit 1
  fi
  found=$(find "$copy/out" -name '*.pdf' -size +1k | sort)
  [ -n "$found" ] || { echo "FAILED as $user: no PDF in out"; exit 1; }
  cat "$work/$user.log"
  for pdf in $found; do sha256sum <"$pdf"; done >"$work/$user.sums"
  cat $found >"$work/$user.pdf"
  echo "printed as $user: $(tr -d '\n-' <"$work/$user.sums")"
}

print_as root /root
print_as nobody /nonexistent
if ! cmp -s "$work/root.sums" "$work/nobody.sums"; then
  echo "FAILED: root and nobody made different bytes; $(cmp "$work/root.pdf" "$work/nobody.pdf" 2>&1 || true)"
  cp "$work/root.pdf" "$work/nobody.pdf" "${TMPDIR:-/tmp}"
  exit 1
fi
echo 'PROVED: the same PDF as root and as nobody on a bare Debian'
