#!/usr/bin/env bash
# From a fresh Debian machine with a JDK and Maven to a checked lab table: builds, installs the
# extension into a throwaway profile, has Calc compute the sample table, and checks two copies.
set -euo pipefail
cd "$(dirname "$0")/.."
. install-notes/calc.sh

echo "1. Calc with Java support"
need_calc
echo "2. Building (tests are left to install-notes/test.sh)"
mvn -q -B -ntp package -DskipTests
echo "3. A throwaway office profile with the extension"
work="$(mktemp -d /tmp/tenthmark-demo.XXXXXX)"
chmod 755 "$work"
new_profile "$work/profile"
echo "4. Calc computes the sample table and its faulty copy"
mkdir "$work/tables"
cp sample-workbooks/workbooks/first-lab-table*.ods "$work/profile/"
[ "$(id -u)" != 0 ] || chown -R nobody:nogroup "$work/profile" "$work/tables"
recalculate ods "$work/tables" "$work"/profile/first-lab-table*.ods
recalculate xlsx "$work/tables" "$work"/profile/first-lab-table*.ods

check() {
  local expected="$1" status=0
  shift
  echo "   tenthmark-checker check $(basename "$1")"
  java -jar core/checker/target/tenthmark-checker.jar check "$@" || status=$?
  [ "$status" = "$expected" ] || { echo "   exit status $status, expected $expected" >&2; exit 1; }
}
echo "5. The correct table: nothing to find"
check 0 "$work/tables/first-lab-table.ods"
check 0 "$work/tables/first-lab-table.xlsx"
echo "6. The faulty copy: every planted mistake is found"
check 1 "$work/tables/first-lab-table-faulty.ods"
check 1 "$work/tables/first-lab-table-faulty.xlsx"
echo
echo "Tables:      $work/tables"
echo "Extension:   $PWD/addin/target/tenthmark.oxt"
echo "Checker:     $PWD/core/checker/target/tenthmark-checker.jar"
