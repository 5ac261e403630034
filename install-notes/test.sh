#!/usr/bin/env bash
# Runs every test of the project, those in a real Calc, Chromium and Gnumeric included.
set -uo pipefail
cd "$(dirname "$0")/.."
. install-notes/calc.sh
need_calc || exit 1
need_languages || exit 1
need_chromium || exit 1
need_gnumeric || exit 1
need_screen || exit 1

# A second office version, for the tests that carry files between versions; without it they are skipped.
TENTHMARK_SECOND_OFFICE="$(bash install-notes/second-office.sh)" || echo "no second office: its tests are skipped" >&2
export TENTHMARK_SECOND_OFFICE

mvn -B -ntp clean verify -Preal-calc,quality
status=$?

# Lines that the unit tests of each module reach, from the reports of JaCoCo.
echo "Line coverage"
find . -path '*/target/site/jacoco/jacoco.csv' -exec cat {} + | awk -F, '
  $8 ~ /^[0-9]+$/ { lines[$1] += $8 + $9; reached[$1] += $9 }
  END { for (module in lines) printf "  %-40s %5.1f %% of %5d lines\n", module, 100 * reached[module] / lines[module], lines[module] }' | sort

# One line over all modules, from the reports of Surefire and Failsafe.
find . -path '*/target/*-reports/TEST-*.xml' -exec grep -ho '<testsuite [^>]*>' {} + | awk '
  function count(name) { return match($0, " " name "=\"[0-9]+\"") ? substr($0, RSTART + length(name) + 3, RLENGTH - length(name) - 4) : 0 }
  { run += count("tests"); bad += count("errors") + count("failures"); skipped += count("skipped") }
  END { printf "%d passed, %d failed, %d skipped\n", run - bad - skipped, bad, skipped }'
exit $status
