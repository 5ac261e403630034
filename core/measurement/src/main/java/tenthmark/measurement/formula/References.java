package tenthmark.measurement.formula;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tenthmark.measurement.formula.Expression.CellReference;
import tenthmark.measurement.formula.Expression.RangeReference;
import tenthmark.measurement.formula.Expression.Reference;

/** Reads cells and ranges as formulas write them. */
final class References {

  private static final int COLUMNS = SheetSize.LARGE.columns();
  private static final int ROWS = SheetSize.LARGE.rows();

  private static final Pattern CORNER =
      Pattern.compile(
          "(?<column>(?<fixed>\\$?)(?<letters>[A-Za-z]{1,3}))?"
              + "(?<row>(?<still>\\$?)(?<digits>[1-9][0-9]{0,6}))?");

  private final Displacement displacement;

  References(Displacement displacement) {
    this.displacement = displacement;
  }

  /** One corner of a range; a whole column or row has only one part. */
  private record Corner(int column, int row) {

    private static final int NONE = -1;

    boolean isCell() {
      return column != NONE && row != NONE;
    }
  }

  /** The cell that a word such as {@code $B$4} stands for, if it does. */
  Optional<CellReference> cell(String sheet, String word) {
    return corner(word)
        .filter(Corner::isCell)
        .map(corner -> new CellReference(sheet, corner.column(), corner.row()));
  }

  /** The range between two words such as {@code B4} and {@code $C$9}, if they are corners. */
  Optional<Reference> range(String sheet, String from, String to) {
    Optional<Corner> first = corner(from);
    Optional<Corner> last = corner(to);
    if (first.isEmpty()
        || last.isEmpty()
        || (first.get().column() < 0) != (last.get().column() < 0)
        || (first.get().row() < 0) != (last.get().row() < 0)) {
      return Optional.empty();
    }
    return Optional.of(between(sheet, first.get(), last.get()));
  }

  private static Reference between(String sheet, Corner first, Corner last) {
    boolean rowsOnly = first.column() < 0;
    boolean columnsOnly = first.row() < 0;
    return new RangeReference(
        sheet,
        rowsOnly ? 0 : Math.min(first.column(), last.column()),
        columnsOnly ? 0 : Math.min(first.row(), last.row()),
        rowsOnly ? COLUMNS - 1 : Math.max(first.column(), last.column()),
        columnsOnly ? ROWS - 1 : Math.max(first.row(), last.row()));
  }

  /** What stands in the brackets of OpenFormula: {@code .B4}, {@code $'My sheet'.B4:.B9}. */
  Optional<Reference> bracketed(String content) {
    int colon = outsideQuotes(content, ':');
    if (colon < 0) {
      Part part = Part.of(content);
      return cell(sheetOf(part, content), part.corner()).map(Reference.class::cast);
    }
    Part from = Part.of(content.substring(0, colon));
    Part to = Part.of(content.substring(colon + 1));
    if (to.sheet() != null && !to.sheet().equals(from.sheet())) {
      return Optional.empty();
    }
    return range(sheetOf(from, content), from.corner(), to.corner());
  }

  private String sheetOf(Part part, String content) {
    return part.sheet() == null || content.startsWith("$")
        ? part.sheet()
        : displacement.relative(part.sheet());
  }

  /** The sheet before a dot as the reader of the formula sees it. */
  String sheet(String written) {
    String name = sheetName(written);
    return written.startsWith("$") ? name : displacement.relative(name);
  }

  /** The sheet by a name that is not marked as fixed. */
  String relative(String name) {
    return displacement.relative(name);
  }

  /** The sheet and the corner of {@code Sheet1.A1}, or of {@code .A1} with no sheet. */
  record Part(String sheet, String corner) {

    static Part of(String text) {
      int dot = text.lastIndexOf('.');
      return dot <= 0
          ? new Part(null, text.substring(dot + 1))
          : new Part(sheetName(text.substring(0, dot)), text.substring(dot + 1));
    }
  }

  /** A sheet's name without dollar sign and quotes. */
  static String sheetName(String written) {
    String name = written.startsWith("$") ? written.substring(1) : written;
    boolean quoted = name.length() > 1 && name.startsWith("'") && name.endsWith("'");
    return quoted ? name.substring(1, name.length() - 1).replace("''", "'") : name;
  }

  private static int outsideQuotes(String text, char wanted) {
    boolean inQuotes = false;
    for (int i = 0; i < text.length(); i++) {
      inQuotes ^= text.charAt(i) == '\'';
      if (text.charAt(i) == wanted && !inQuotes) {
        return i;
      }
    }
    return -1;
  }

  private Optional<Corner> corner(String word) {
    Matcher matcher = CORNER.matcher(word);
    if (!matcher.matches() || word.isEmpty()) {
      return Optional.empty();
    }
    String letters = matcher.group("letters");
    String digits = matcher.group("digits");
    int column = letters == null ? Corner.NONE : column(letters);
    int row = digits == null ? Corner.NONE : Integer.parseInt(digits) - 1;
    return column < COLUMNS && row < ROWS
        ? Optional.of(
            new Corner(
                column < 0 ? column : displacement.column(column, matcher.group("fixed").isEmpty()),
                row < 0 ? row : displacement.row(row, matcher.group("still").isEmpty())))
        : Optional.empty();
  }

  private static int column(String letters) {
    int column = 0;
    for (char letter : letters.toUpperCase(Locale.ROOT).toCharArray()) {
      column = column * 26 + letter - 'A' + 1;
    }
    return column - 1;
  }
}
