#!/usr/bin/env bash
# Makes in target/release all that people download, and tries the checker that brings its own Java.
#
# To release, once install-notes/test.sh passes:
#   1. say in install-notes/changelog.md what is new, under the number and the day: ## 0.1.0, 25 November 2026
#   2. mvn -Prelease versions:set -DnewVersion=0.1.0 -DgenerateBackupPoms=false
#      (the time stamp in all archives changes with it)
#   3. commit, run install-notes/reproducible.sh, tag, and publish its target/release
#   4. mvn -Prelease versions:set -DnewVersion=0.2.0-SNAPSHOT -DgenerateBackupPoms=false, commit
set -euo pipefail
cd "$(dirname "$0")/.."
mvn -q -B -ntp clean package -Prelease -DskipTests
cd target/release

# The list of libraries and the bill of materials hold what Maven resolves and nothing else, at the same versions.
libraries="$(sed -nE 's/^ +([^:]+):([^:]+):jar:([^:]+):(compile|runtime).*/\1:\2 \3/p' \
  ../../install-notes/release/target/libraries.txt | sort)"
[ -n "$libraries" ]
diff <(echo "$libraries") <(grep -E '^[^ :]+:[^ :]+ [^ ]+$' tenthmark-*-third-party.txt | sort)
diff <(echo "$libraries") <(sed -nE 's|.*"purl" : "pkg:maven/([^/]+)/([^@]+)@([^?]+)\?.*|\1:\2 \3|p' \
  tenthmark-*-sbom.json | grep -v '^org\.tenthmark:' | sort)

# A number of its own has a date, which the changelog and the list of libraries agree on.
release="$(basename tenthmark-*.oxt .oxt)"
version="${release#tenthmark-}"
built="$(sed -nE '1s/^Tenthmark [^,]+, (.{10})T.*/\1/p' "$release-third-party.txt")"
case "$version" in
  *-SNAPSHOT) ;;
  *) grep -qx "## $version, $(LC_ALL=C date -d "$built" '+%-d %B %Y')" ../../install-notes/changelog.md \
       || { echo "install-notes/changelog.md has no heading '## $version, ' with the day $built of this release" >&2; exit 1; } ;;
esac

# The checker with its own Java, where no other Java is found, reports what it does with the one that built it.
try="$(mktemp -d /tmp/tenthmark-release.XXXXXX)"
trap 'rm -rf "$try"' EXIT
mkdir "$try/tools"
for tool in sh sed head dirname readlink; do
  ln -s "$(command -v "$tool")" "$try/tools/$tool"
done
tar -xzf tenthmark-*-checker-*-*.tar.gz -C "$try"
set -- check ../../sample-workbooks/workbooks/class-set \
  --profile ../../sample-workbooks/workbooks/class-set/class-set.yaml
java -jar ../../core/checker/target/tenthmark-checker.jar "$@" --out "$try/out-1" >"$try/report-1" || [ $? = 1 ]
env -i PATH="$try/tools" "$try"/tenthmark-*-checker/tenthmark-checker "$@" --out "$try/out-2" >"$try/report-2" || [ $? = 1 ]
diff -r "$try/out-1" "$try/out-2"
diff <(sed s/out-1/out-2/ "$try/report-1") "$try/report-2"
grep -q "30 files checked" "$try/report-2"

sha256sum -- * > SHA256SUMS
cat SHA256SUMS
