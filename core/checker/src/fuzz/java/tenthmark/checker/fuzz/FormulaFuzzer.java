package tenthmark.checker.fuzz;

import java.nio.charset.StandardCharsets;

/** Formulas, one a line, down the first column of a sheet with some measurements beside it. */
public final class FormulaFuzzer {

  private FormulaFuzzer() {}

  /** Called by Jazzer. */
  public static void fuzzerTestOneInput(byte[] input) {
    StringBuilder rows = new StringBuilder();
    int row = 0;
    for (String line : new String(input, StandardCharsets.UTF_8).split("\n")) {
      rows.append("<row><c><f>").append(escaped(line)).append("</f></c><c><v>");
      rows.append(172.5 + row++).append("</v></c><c><v>0.5</v></c></row>");
    }
    String sheet = "<worksheet><sheetData>" + rows + "</sheetData></worksheet>";
    Target.check(Part.XLSX_SHEET.fileWith(sheet.getBytes(StandardCharsets.UTF_8)));
  }

  private static String escaped(String text) {
    StringBuilder escaped = new StringBuilder();
    text.codePoints()
        .filter(point -> point >= ' ' && point < 0xD800)
        .forEach(
            point -> {
              switch (point) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                default -> escaped.appendCodePoint(point);
              }
            });
    return escaped.toString();
  }
}
