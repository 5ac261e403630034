#!/usr/bin/env bash
# corpus.sh [SET [FOLDER]]: draws the workbooks of a set of families anew (tenthmark.samples.corpus.SET) into a
# folder, each saved by the program that its drawing names: Apache POI, a real Calc, Gnumeric. The set "mistaken"
# is that of twins with mistakes.
set -euo pipefail
cd "$(dirname "$0")/.."
. install-notes/calc.sh
set="${1:-open}"
folder="$(realpath "${2:-sample-workbooks/corpus}")"
need_calc
need_gnumeric
mvn -q -B -ntp package -DskipTests
work="$(mktemp -d /tmp/tenthmark-corpus.XXXXXX)"
trap 'rm -rf "$work"' EXIT
chmod 755 "$work"
mkdir "$work/raw" "$work/saved"
maker=MakeCorpus
[ "$set" != mistaken ] || maker=mistaken.MakeMistaken
java -cp "sample-workbooks/target/classes:core/checker/target/tenthmark-checker.jar" \
  "tenthmark.samples.corpus.$maker" "$work/raw" "$set"
new_profile "$work/profile"
[ "$(id -u)" != 0 ] || chown -R nobody:nogroup "$work"
cd "$work"
for format in ods xlsx xls; do
  if [ -d "raw/calc-$format" ]; then
    recalculate "$format" saved "raw/calc-$format"/*
  fi
  if [ -d "raw/gnumeric-$format" ]; then
    for file in "raw/gnumeric-$format"/*; do
      as_student ssconvert --recalc "$file" "saved/$(basename "${file%.*}").$format" 2>>"$work/gnumeric.log" \
        || { cat "$work/gnumeric.log" >&2; exit 1; }
    done
  fi
done
mkdir -p "$folder"
find "$folder" -maxdepth 1 -regex '.*\.\(xlsx\|xls\|ods\|truth\.yaml\|mistakes\.yaml\)' -delete
mv raw/*.yaml raw/poi-*/* saved/* "$folder"
[ "$(id -u)" != 0 ] || chown root:root "$folder"/*
