package tenthmark.checker.submission;

import java.util.Locale;
import java.util.Set;

/** What a file is by its name. */
public enum FileKind {
  /** One that the checker reads. */
  WORKBOOK,
  /** A zip archive, or a workbook under such a name. */
  ARCHIVE,
  /** What office programs and file managers leave beside files. */
  LEFT_BEHIND,
  /** Any other, which is not checked. */
  STRAY;

  private static final Set<String> WORKBOOKS = Set.of("xlsx", "xlsm", "xls", "ods");
  private static final Set<String> LEFT = Set.of("thumbs.db", "desktop.ini");

  /** The kind of a file with this name, without its folders. */
  public static FileKind of(String name) {
    String lower = name.toLowerCase(Locale.ROOT);
    if (name.startsWith("~$") || name.startsWith(".") || LEFT.contains(lower)) {
      return LEFT_BEHIND;
    }
    String ending = lower.substring(lower.lastIndexOf('.') + 1);
    if (WORKBOOKS.contains(ending)) {
      return WORKBOOK;
    }
    return ending.equals("zip") ? ARCHIVE : STRAY;
  }
}
