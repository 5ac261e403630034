# Sourced by the scripts here: a real headless Calc with the extension, in a throwaway profile.

root="$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)"
extension="$root/addin/target/tenthmark.oxt"

# install_packages PACKAGES: Debian's.
install_packages() {
  command -v apt-get >/dev/null || return 1
  local become=()
  [ "$(id -u)" = 0 ] || become=(sudo)
  "${become[@]}" apt-get update -qq
  DEBIAN_FRONTEND=noninteractive "${become[@]}" apt-get install -y -qq --no-install-recommends "$@" >/dev/null
}

# Calc with Java support.
need_calc() {
  command -v soffice >/dev/null && [ -d /usr/lib/libreoffice/program/classes ] && return
  install_packages libreoffice-calc libreoffice-java-common && return
  echo "install LibreOffice Calc 7.4 or newer with Java support, then run this again" >&2
  return 1
}

# The languages in which the tests look at Calc.
need_languages() {
  local language
  for language in de fr es; do
    [ -e "/usr/lib/libreoffice/share/registry/res/registry_$language.xcd" ] \
      || install_packages "libreoffice-l10n-$language" \
      || { echo "install LibreOffice in German, French and Spanish, then run this again" >&2; return 1; }
  done
}

# The browser in which the tests look at the pages that the checker writes.
need_chromium() {
  command -v chromium >/dev/null && return
  install_packages chromium && return
  echo "install Chromium, then run this again" >&2
  return 1
}

# Another spreadsheet program, in which the tests look at the samples.
need_gnumeric() {
  command -v ssconvert >/dev/null && return
  install_packages gnumeric && return
  echo "install Gnumeric, then run this again" >&2
  return 1
}

# A screen that nobody sees, with a window manager and keys that are pressed.
need_screen() {
  command -v Xvfb >/dev/null && command -v openbox >/dev/null && command -v xdotool >/dev/null && return
  install_packages xvfb openbox xdotool && return
  echo "install Xvfb, openbox and xdotool, then run this again" >&2
  return 1
}

# unopkg refuses to run as root, so root hands office commands to an unprivileged user.
as_student() {
  if [ "$(id -u)" = 0 ]; then
    HOME="$profile" setpriv --reuid=nobody --regid=nogroup --clear-groups "$@"
  else
    "$@"
  fi
}

# Makes a profile in the folder named, with the extension and with recalculation on load.
new_profile() {
  profile="$1"
  mkdir -p "$profile/user"
  cat > "$profile/user/registrymodifications.xcu" <<'XCU'
<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry">
  <item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="ODFRecalcMode" oor:op="fuse"><value>0</value></prop></item>
  <item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
</oor:items>
XCU
  cp "$extension" "$profile/tenthmark.oxt"
  [ "$(id -u)" != 0 ] || chown -R nobody:nogroup "$profile"
  as_student unopkg add --suppress-license "-env:UserInstallation=file://$profile" "$profile/tenthmark.oxt" \
    >"$profile/unopkg.log" 2>&1 || { cat "$profile/unopkg.log" >&2; return 1; }
}

# recalculate FORMAT FOLDER FILES: Calc computes every formula anew and saves into the folder.
recalculate() {
  local format="$1" folder="$2"
  shift 2
  as_student soffice --headless --norestore "-env:UserInstallation=file://$profile" \
    --convert-to "$format" --outdir "$folder" "$@" >"$profile/soffice.log" 2>&1 \
    || { cat "$profile/soffice.log" >&2; return 1; }
  local file
  for file in "$@"; do
    file="$(basename "$file")"
    [ -s "$folder/${file%.*}.$format" ] || { cat "$profile/soffice.log" >&2; echo "Calc did not save ${file%.*}.$format" >&2; return 1; }
  done
}
