package tenthmark.checker.workbook;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tenthmark.measurement.formula.CellRange;

/** What a cell of a file holds. */
public sealed interface Content {

  /** A number; a date or a time is a number of days too. */
  record Number(double value) implements Content {}

  /** A number; one that is not finite, as only damaged or contrived files hold, is an error. */
  static Content number(double value) {
    return Double.isFinite(value) ? new Number(value) : new Error("#NUM!");
  }

  /** A text, perhaps empty. */
  record Text(String text) implements Content {}

  /** TRUE or FALSE. */
  record Logical(boolean value) implements Content {}

  /** An error by the name that the file gives it, such as {@code #NAME?} or {@code Err:502}. */
  record Error(String name) implements Content {}

  /**
   * A formula.
   *
   * @param written as the file spells it
   * @param text the same in one notation for every format, without the equals sign: A1 references,
   *     {@code Sheet!A1}, commas between arguments, LAB functions by display name
   * @param stored the value that the program which saved the file computed, if it stored one
   * @param array the cells that one array formula fills, this one included
   */
  record Formula(String written, String text, Optional<Content> stored, Optional<CellRange> array)
      implements Content {

    private static final String YOUNGER = "_XLFN.";

    /** The same formula as if it were typed anew: without a result that a program stored. */
    public Formula typedAnew() {
      return new Formula(text, text, Optional.empty(), array);
    }

    /** The text as a finding shows it. */
    public String shown() {
      return FormulaText.withSemicolons(text);
    }

    /**
     * The functions that it calls, in upper case, without the prefix that a file puts before those
     * which are younger than its format; LAB functions by display name.
     */
    public List<String> functions() {
      return FormulaText.calls(text).stream()
          .map(name -> name.toUpperCase(Locale.ROOT))
          .map(name -> name.startsWith(YOUNGER) ? name.substring(YOUNGER.length()) : name)
          .toList();
    }

    /** Whether LAB functions are spelt as a program writes them that does not know them. */
    public boolean callsLabInLowerCase() {
      return written.contains("lab")
          && FormulaText.calls(written).stream().anyMatch(FormulaText::isLabInLowerCase);
    }
  }
}
