package tenthmark.measurement.explanation;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tenthmark.measurement.catalogue.ArgumentException;
import tenthmark.measurement.catalogue.Breakdown;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.catalogue.WorksheetFunction;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.formula.Expression.ForeignCall;
import tenthmark.measurement.formula.Expression.Reference;
import tenthmark.measurement.formula.FormulaException;
import tenthmark.measurement.rounding.Decimals;
import tenthmark.measurement.rounding.PowerOfTen;
import tenthmark.measurement.wording.Sentences;

/**
 * What makes up an uncertainty, ready to be shown.
 *
 * @param function the LAB function that gives it
 * @param headings one for each column
 * @param rows texts and rounded numbers; the total in the last row
 */
public record Contributions(String function, List<String> headings, List<List<String>> rows) {

  private static final int DIGITS = 4;
  private static final BigDecimal PERCENT = BigDecimal.valueOf(100);
  private static final int DIGITS_OF_SHARE = 3;

  /** The contributions behind a call; none where the function has none or cannot be computed. */
  static Optional<Contributions> of(
      ForeignCall call, Calculation calculation, Words words, Sentences sentences) {
    try {
      return calculation
          .function(call)
          .flatMap(
              function ->
                  function
                      .breakdown(
                          calculation.arguments(function, call), sentences, calculation::convention)
                      .map(known -> shown(known, function, call, calculation, words, sentences)));
    } catch (ArgumentException | FormulaException | NotComputableException unknown) {
      // The diagnosis says what is wrong; there is no table then.
      return Optional.empty();
    }
  }

  private static Contributions shown(
      Breakdown breakdown,
      WorksheetFunction function,
      ForeignCall call,
      Calculation calculation,
      Words words,
      Sentences sentences) {
    List<CellAddress> cells = cells(breakdown, function, call, calculation);
    List<List<String>> rows = new ArrayList<>();
    for (List<Value> values : breakdown.rows().rows()) {
      List<String> row = new ArrayList<>();
      for (int column = 0; column < values.size(); column++) {
        boolean share = breakdown.columns().get(column).equals(Breakdown.SHARE);
        row.add(share ? share(values.get(column), sentences) : text(values.get(column), sentences));
      }
      if (rows.size() < cells.size()) {
        row.set(0, words.cell(cells.get(rows.size())));
      }
      rows.add(row);
    }
    return new Contributions(
        function.declaration().displayName(),
        breakdown.columns().stream().map(key -> sentences.say(key)).toList(),
        rows);
  }

  /** The cells that the rows stand for, if they stand for cells. */
  private static List<CellAddress> cells(
      Breakdown breakdown, WorksheetFunction function, ForeignCall call, Calculation calculation) {
    return breakdown
        .cells()
        .map(
            parameter ->
                call.arguments().get(function.declaration().parameters().indexOf(parameter)))
        .filter(Reference.class::isInstance)
        .map(argument -> calculation.rangeOf((Reference) argument))
        .map(range -> breakdown.places().stream().map(place -> cell(range, place)).toList())
        .orElse(List.of());
  }

  private static CellAddress cell(CellRange range, int place) {
    return new CellAddress(
        range.sheet(), range.left() + place % range.width(), range.top() + place / range.width());
  }

  private static String text(Value value, Sentences sentences) {
    if (value instanceof Value.Numeric numeric) {
      return number(Decimals.shortest(numeric.number()), DIGITS, sentences);
    }
    return value instanceof Value.Text text ? text.text() : "";
  }

  private static String share(Value value, Sentences sentences) {
    BigDecimal share = Decimals.shortest(((Value.Numeric) value).number());
    return number(share.multiply(PERCENT), DIGITS_OF_SHARE, sentences) + " %";
  }

  private static String number(BigDecimal number, int digits, Sentences sentences) {
    return PowerOfTen.show(number, digits, sentences.decimalSign());
  }
}
