package tenthmark.samples.corpus;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * States what records a range of values holds. Ranges beside it have a cell for each value, or one
 * cell for all.
 */
public final class Records {

  private final String sheet;
  private final String quantity;
  private final String unit;
  private final Kind kind;
  private final List<String> values;
  private final Map<String, List<String>> contributions = new LinkedHashMap<>();
  private final List<List<String>> parameters = new ArrayList<>();
  private List<String> numbers = List.of();
  private List<? extends Object> uncertainties = List.of();
  private List<String> rationales = List.of();

  Records(String sheet, Kind kind, String quantity, String unit, String values) {
    this.sheet = sheet;
    this.kind = kind;
    this.quantity = quantity;
    this.unit = unit;
    this.values = Cells.of(values);
  }

  /** The values of formulas and of texts, each to the places that are certain. */
  public Records number(String... each) {
    if (each.length != values.size()) {
      throw new IllegalArgumentException(values + " have numbers " + Arrays.toString(each));
    }
    numbers = List.of(each);
    return this;
  }

  /** Cells that hold the uncertainties. */
  public Records uncertainty(String cells) {
    uncertainties = Cells.forEach(values, cells);
    return this;
  }

  /** Uncertainties without a cell: given in common, in percent, or inside a text. */
  public Records uncertaintyOf(double... each) {
    uncertainties =
        IntStream.range(0, values.size())
            .mapToObj(at -> BigDecimal.valueOf(each[each.length == 1 ? 0 : at]))
            .toList();
    return this;
  }

  /** Cells of contributions: reading, physical, instrument, timing, repeat. */
  public Records contribution(String name, String cells) {
    contributions.put(name, Cells.forEach(values, cells));
    return this;
  }

  /** Cells of a division, a percentage, a reaction time. */
  public Records parameter(String cells) {
    parameters.add(Cells.forEach(values, cells));
    return this;
  }

  /** Cells where the reasons stand. */
  public Records because(String cells) {
    rationales = Cells.forEach(values, cells);
    return this;
  }

  /** The reasons stand in comments on these cells. */
  public Records becauseOfComment(String cells) {
    rationales = Cells.forEach(values, cells).stream().map(cell -> "comment " + cell).toList();
    return this;
  }

  /** The reason stands in a text box on the sheet. */
  public Records becauseOfBox() {
    rationales = values.stream().map(value -> "box").toList();
    return this;
  }

  /** Each record; the numbers of typed cells are those that were drawn. */
  List<Stated> stated(Function<String, Optional<BigDecimal>> typed) {
    return IntStream.range(0, values.size()).mapToObj(at -> stated(at, typed)).toList();
  }

  private Stated stated(int at, Function<String, Optional<BigDecimal>> typed) {
    Optional<BigDecimal> number =
        numbers.isEmpty()
            ? typed.apply(values.get(at))
            : Optional.of(new BigDecimal(numbers.get(at)));
    Map<String, String> parts = new LinkedHashMap<>();
    contributions.forEach((name, cells) -> parts.put(name, cells.get(at)));
    return new Stated(
        sheet,
        values.get(at),
        quantity,
        unit,
        number,
        at(at, uncertainties),
        parts,
        parameters.stream().map(cells -> cells.get(at)).toList(),
        at(at, rationales),
        kind);
  }

  private static <T> Optional<T> at(int at, List<? extends T> each) {
    return each.isEmpty() ? Optional.empty() : Optional.of(each.get(at));
  }
}
