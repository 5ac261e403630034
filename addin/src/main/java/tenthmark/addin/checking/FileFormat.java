package tenthmark.addin.checking;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;

/** A format that Calc writes and the checker reads. */
enum FileFormat {
  ODS(".ods", "calc8"),
  XLSX(".xlsx", "Calc MS Excel 2007 XML");

  private final String ending;
  private final String filter;

  FileFormat(String ending, String filter) {
    this.ending = ending;
    this.filter = filter;
  }

  /** The format of a file; the office's own if it is none of these. */
  static FileFormat of(Path file) {
    String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
    return Arrays.stream(values())
        .filter(format -> name.endsWith(format.ending))
        .findFirst()
        .orElse(ODS);
  }

  String ending() {
    return ending;
  }

  /** The name of the office's filter. */
  String filter() {
    return filter;
  }
}
