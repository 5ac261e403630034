#!/usr/bin/env bash
# Makes in target/release all that people download, and tries the checker that brings its own Java.
#
# To release, once install-notes/test.sh passes:
#   1. say in install-notes/changelog.md what is new, under the number and its date
#   2. mvn -Prelease versions:set -DnewVersion=0.1.0 -DgenerateBackupPoms=false
#      (the time stamp in all archives changes with it)
#   3. commit, run install-notes/reproducible.sh, tag, and publish its target/release
#   4. mvn -Prelease versions:set -DnewVersion=0.2.0-SNAPSHOT -DgenerateBackupPoms=false, commit
set -euo pipefail
cd "$(dirname "$0")/.."
mvn -q -B -ntp clean package -Prelease -DskipTests
cd target/release

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
