#!/usr/bin/env bash
# Sets up a second, newer LibreOffice (Debian's next release) in a folder of its own, for the tests
# that carry files from one office version to the other. Prints the command that runs it, for the
# environment variable TENTHMARK_SECOND_OFFICE. Needs root, a Debian machine, about 1 GB and some
# minutes; a folder that is complete is used again.
set -euo pipefail
release=trixie
folder="${1:-/var/tmp/tenthmark-second-office}"
root="$folder/$release"
launch="$folder/launch"

say() { echo "second office: $*" >&2; }

if [ -e "$root/complete" ]; then
  echo "$launch"
  exit 0
fi
[ "$(id -u)" = 0 ] || { say "not set up, because that needs root"; exit 1; }
command -v apt-get >/dev/null || { say "not set up, because this is no Debian machine"; exit 1; }
command -v debootstrap >/dev/null || { apt-get update -qq; apt-get install -y -qq debootstrap >/dev/null; }

mkdir -p "$folder"
cat > "$launch" <<'LAUNCH'
#!/bin/sh
# launch PROGRAM ARGUMENTS...: runs a program in the folder beside this file, which shares this
# machine's /tmp. The mounts end with the program. As nobody, or as root if AS_ROOT is set.
root="$(dirname "$(readlink -f "$0")")/trixie"
export root
exec unshare --mount sh -c '
  mount --bind /tmp "$root/tmp" && mount -t proc proc "$root/proc" && mount --rbind /dev "$root/dev" || exit 1
  [ -n "${AS_ROOT:-}" ] && exec chroot "$root" "$@"
  exec chroot "$root" setpriv --reuid=65534 --regid=65534 --clear-groups "$@"' launch "$@"
LAUNCH
chmod +x "$launch"

# What an earlier try left.
[ ! -e "$root" ] || rm -rf --one-file-system "$root"

log="$folder/setup.log"
if ! {
  debootstrap --variant=minbase --include=ca-certificates "$release" "$root" \
    && AS_ROOT=yes DEBIAN_FRONTEND=noninteractive "$launch" sh -c \
      'apt-get update -qq && apt-get install -y -qq --no-install-recommends libreoffice-calc libreoffice-java-common default-jre-headless && apt-get clean'
} >"$log" 2>&1; then
  say "could not be set up; the end of $log:"
  tail -5 "$log" >&2
  exit 1
fi
touch "$root/complete"
echo "$launch"
