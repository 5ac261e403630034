#!/usr/bin/env bash
# Builds the release of the last commit twice, each in a fresh clone, and compares every byte.
set -euo pipefail
cd "$(dirname "$0")/.."
work="$(mktemp -d /tmp/tenthmark-reproducible.XXXXXX)"
trap 'rm -rf "$work"' EXIT
for clone in one another; do
  git clone -q . "$work/$clone"
  "$work/$clone/install-notes/release.sh" >/dev/null
done
diff -r "$work/one/target/release" "$work/another/target/release"
rm -rf target/release
mkdir -p target
mv "$work/one/target/release" target/release
echo "Two builds are the same, byte for byte; one is in target/release:"
cat target/release/SHA256SUMS
