#!/usr/bin/env bash
# Takes the pictures of the guides anew, from the real program: build first (mvn package).
# Needs Calc with Java, Xvfb, xdotool, ImageMagick and Chromium. Names as arguments take those alone.
set -euo pipefail
guides="$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)"
. "$guides/../../install-notes/calc.sh"
need_calc
need_chromium
for tool in Xvfb xdotool import convert; do
  command -v "$tool" >/dev/null || { echo "install xvfb, xdotool and imagemagick, then run this again" >&2; exit 1; }
done

workbooks="$root/sample-workbooks/workbooks"
work="$(mktemp -d /tmp/tenthmark-pictures.XXXXXX)"
chmod 755 "$work"
export DISPLAY=":${TENTHMARK_DISPLAY:-97}"
Xvfb "$DISPLAY" -screen 0 1700x1000x24 >/dev/null 2>&1 &
screen=$!
for _ in $(seq 60); do xdotool getdisplaygeometry >/dev/null 2>&1 && break; sleep 0.5; done

# The office forks: whatever runs on the profile of this script is this script's own.
close_office() {
  pkill -f "$work/profile" || true
  for _ in $(seq 20); do pgrep -f "$work/profile" >/dev/null || return 0; sleep 1; done
}

clean_up() {
  close_office
  kill "$screen" 2>/dev/null || true
  rm -rf "$work"
}
trap clean_up EXIT

# open WORKBOOK WIDTH HEIGHT: in a window of that size at the top left.
open() {
  cp "$workbooks/$1" "$work/profile/"
  local file="$work/profile/$(basename "$1")"
  [ "$(id -u)" != 0 ] || chown nobody:nogroup "$file"
  as_student soffice --norestore --nologo --calc "-env:UserInstallation=file://$work/profile" "$file" >/dev/null 2>&1 &
  window=
  for _ in $(seq 120); do
    window="$(xdotool search --onlyvisible --name "$(basename "$1")" 2>/dev/null | head -1)" && [ -n "$window" ] && break
    sleep 1
  done
  [ -n "$window" ] || { echo "Calc did not open $1" >&2; return 1; }
  sleep 8
  xdotool windowmove "$window" 0 0 windowsize "$window" "$2" "$3" windowfocus "$window"
  sleep 3
  keys Escape
}

# keys KEYS: one after the other.
keys() {
  local key
  for key in "$@"; do xdotool key "$key"; sleep 0.7; done
}

# go_to CELL: by the box left of the formula.
go_to() {
  keys ctrl+shift+t ctrl+a
  xdotool type "$1"
  keys Return
}

# menu: opens the menu Tenthmark, the tenth of the menu bar, at its first entry.
menu() {
  keys F10 Right Right Right Right Right Right Right Right Right Down
}

# save NAME GEOMETRY: of the screen, in as few colours as it takes.
save() {
  import -window root -crop "$2" +repage "$work/$1.png"
  reduce "$1"
}

reduce() {
  convert "$work/$1.png" +dither -colors 96 -strip -define png:compression-level=9 "PNG8:$guides/pictures/$1.png"
  echo "$1.png: $(stat -c %s "$guides/pictures/$1.png") bytes"
}

# page NAME ADDRESS WIDTH HEIGHT: a page in a browser.
page() {
  chromium --no-sandbox --test-type --disable-gpu --no-first-run --hide-scrollbars --user-data-dir="$work/chromium" \
    --window-position=0,0 --window-size="$3,$4" --app="file://$2" >/dev/null 2>&1 &
  local browser=$!
  sleep 12
  save "$1" "$3x$4+0+0"
  kill "$browser" 2>/dev/null || true
  wait "$browser" 2>/dev/null || true
}

lab_table() {
  open labs/lab-2-soft-ends-completed.ods 1600 520
  go_to J7
  save lab-table 1600x520+0+0
  close_office
}

function_wizard() {
  open first-lab-table.ods 1200 800
  go_to H5
  keys ctrl+F2
  sleep 6
  save function-wizard 1200x800+0+0
  keys Escape
  close_office
}

tenthmark_menu() {
  open first-lab-table.ods 1200 500
  go_to H5
  menu
  save tenthmark-menu 800x320+0+0
  keys Escape Escape
  close_office
}

explain_dialog() {
  open first-lab-table.ods 1200 800
  go_to M5
  menu
  keys Down Down Return
  sleep 6
  save explain-dialog 1200x800+0+0
  close_office
}

findings_list() {
  cp "$workbooks/class-set/class-set.yaml" "$work/profile/course.yaml"
  open class-set/bench-04.ods 1400 640
  menu
  keys Down Down Down Down Down Return
  sleep "${TENTHMARK_PATIENCE:-30}"
  save findings-list 1400x640+0+0
  close_office
}

reports() {
  [ -d "$work/reports" ] && return
  java -jar "$root/core/checker/target/tenthmark-checker.jar" check "$workbooks/class-set" --quiet \
    --profile "$workbooks/class-set/class-set.yaml" --out "$work/reports" >/dev/null || [ $? = 1 ]
}

student_page() {
  reports
  page student-page "$work/reports/workbooks/bench-04.ods/feedback.html" 900 1000
}

class_page() {
  reports
  page class-page "$work/reports/class.html#quantities" 900 940
}

new_profile "$work/profile"
[ $# -gt 0 ] || set -- lab-table function-wizard tenthmark-menu explain-dialog findings-list student-page class-page
for picture in "$@"; do "${picture//-/_}"; done
