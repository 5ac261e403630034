package tenthmark.checker.grade;

import java.util.List;
import java.util.stream.Collectors;

/** Comma-separated values as RFC 4180 describes them. */
public final class Csv {

  /** A text that begins so may be taken for a formula by the program that opens the table. */
  private static final String FORMULA_BEGINS = "=+-@\t\r\n＝＋－＠";

  private Csv() {}

  /** One row, its end included. */
  public static String row(List<String> values) {
    return values.stream().map(Csv::quoted).collect(Collectors.joining(",")) + "\r\n";
  }

  private static String quoted(String text) {
    boolean formula = !text.isEmpty() && FORMULA_BEGINS.indexOf(text.charAt(0)) >= 0;
    return '"' + (formula ? "'" : "") + text.replace("\"", "\"\"") + '"';
  }
}
