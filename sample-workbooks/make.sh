#!/usr/bin/env bash
# Makes the workbooks folder anew: code writes the tables, a real Calc computes and saves them.
set -euo pipefail
cd "$(dirname "$0")/.."
. install-notes/calc.sh
need_calc
mvn -q -B -ntp package -DskipTests -Pmake-templates
work="$(mktemp -d /tmp/tenthmark-samples.XXXXXX)"
trap 'rm -rf "$work"' EXIT
chmod 755 "$work"
mkdir "$work/saved" "$work/first" "$work/plain"
cp -r sample-workbooks/target/raw "$work/raw"
new_profile "$work/profile"
[ "$(id -u)" != 0 ] || chown -R nobody:nogroup "$work"
cd "$work"
recalculate ods saved raw/*.xlsx raw/labs/*.xlsx
recalculate xlsx saved saved/*.ods
# A submission comes in one format: what its student's program saves.
recalculate ods saved raw/class-set/ods/*.xlsx
recalculate xlsx saved raw/class-set/xlsx/*.xlsx
# One was saved again by an office without the extension, one had a number typed in at last.
recalculate ods first raw/class-set/ods-without-extension/*.xlsx
(profile="$work/plain" && recalculate ods saved first/*.ods)
java -cp "$root/sample-workbooks/target/classes:$root/core/checker/target/tenthmark-checker.jar" \
  tenthmark.samples.classset.Retyping saved
cd "$root/sample-workbooks/workbooks"
rm -f first-lab-table*.{ods,xlsx} labs/*.{ods,xlsx} class-set/*.{ods,xlsx} templates/*
mkdir -p labs class-set templates
mv "$work"/saved/first-lab-table*.* .
mv "$work"/saved/lab-*.* labs/
mv "$work"/saved/*.* class-set/
cp "$work"/raw/labs/*.{md,yaml} labs/
cp "$work"/raw/class-set/*.{md,yaml} class-set/
cp "$work"/raw/guides/rules.md ../guides/
cp "$root"/sample-workbooks/target/templates/* templates/
