package tenthmark.checker.workbook;

import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;

/** Places of cells as {@code B4}, areas as {@code B4:C9}. */
final class A1 {

  private A1() {}

  /** The cell or area; both ends within the largest sheet. */
  static CellRange range(String sheet, String reference) {
    int colon = reference.indexOf(':');
    int[] first = cell(colon < 0 ? reference : reference.substring(0, colon));
    int[] last = colon < 0 ? first : cell(reference.substring(colon + 1));
    return new CellRange(
        sheet,
        Math.min(first[0], last[0]),
        Math.min(first[1], last[1]),
        Math.max(first[0], last[0]),
        Math.max(first[1], last[1]));
  }

  private static int[] cell(String place) {
    int end = 0;
    while (end < place.length() && Character.isLetter(place.charAt(end))) {
      end++;
    }
    int column = column(place.substring(0, end));
    int row = Integer.parseInt(place.substring(end)) - 1;
    if (row < 0 || row >= Limits.ROWS) {
      throw new IllegalArgumentException("no cell: " + place);
    }
    return new int[] {column, row};
  }

  /** Whether a sheet has a column with these letters. */
  static boolean isColumn(String letters) {
    int column = number(letters);
    return column >= 1 && column <= Limits.COLUMNS;
  }

  /** The column with these letters, counted from 0. */
  static int column(String letters) {
    if (!isColumn(letters)) {
      throw new IllegalArgumentException("no column: " + letters);
    }
    return number(letters) - 1;
  }

  private static int number(String letters) {
    int number = 0;
    for (int i = 0; i < letters.length(); i++) {
      int digit = Character.toUpperCase(letters.charAt(i)) - 'A';
      if (digit < 0 || digit > 25 || number > Limits.COLUMNS) {
        return 0;
      }
      number = number * 26 + digit + 1;
    }
    return number;
  }

  /** The letters of a column, counted from 0. */
  static String letters(int column) {
    String place = new CellAddress("", column, 0).place();
    return place.substring(0, place.length() - 1);
  }
}
