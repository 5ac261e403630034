#!/usr/bin/env bash
# Changes the code of core/measurement in small ways and runs its tests on each change (PIT); fails
# where the tests notice fewer than the part of them that the profile "mutation" asks for.
set -uo pipefail
cd "$(dirname "$0")/.."

report=core/measurement/target/pit-reports
rm -rf "$report"
mvn -B -ntp test -Pmutation -pl core/measurement -Dtest=None -Dsurefire.failIfNoSpecifiedTests=false
status=$?

[ ! -e "$report/mutations.xml" ] || grep -o "<mutation detected='[a-z]*' status='[A-Z_]*'" "$report/mutations.xml" | awk -F"'" '
  $2 == "true" { noticed++ }
  $4 == "TIMED_OUT" { endless++ }
  END { printf "%d of %d changes to core/measurement noticed by its tests, %.1f %% (%d of them because a test ran on and on)\n", noticed, NR, 100 * noticed / NR, endless }'
exit $status
