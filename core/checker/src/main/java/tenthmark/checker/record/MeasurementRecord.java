package tenthmark.checker.record;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import tenthmark.checker.evaluation.Call;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.evaluation.NativeFunctions;
import tenthmark.checker.evaluation.Outcome;
import tenthmark.checker.unit.MeasurementUnit;
import tenthmark.checker.unit.UnitReader;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Workbook;
import tenthmark.measurement.catalogue.FunctionRole;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.wording.Message;

/** One measurement as a student wrote it down, read by its parts. */
public final class MeasurementRecord {

  private static final String PERCENT = "%";
  private static final String PURE = "1";
  private static final Predicate<Value> BLANK = Value.BLANK::equals;

  private final Workbook workbook;
  private final Evaluation evaluation;
  private final Parts parts;
  private final Map<Field, Value> values = new EnumMap<>(Field.class);
  private final Map<Field, Optional<Amount>> amounts = new EnumMap<>(Field.class);
  private final List<Call> calls;
  private final Optional<Rationale> rationale;
  private final Optional<StatedResult> stated;
  private final Optional<ScaleClaim> scale;

  /** A record of these parts. */
  public MeasurementRecord(
      Workbook workbook, Evaluation evaluation, Parts parts, Optional<Rationale> rationale) {
    this.workbook = workbook;
    this.evaluation = evaluation;
    this.parts = parts;
    parts.places().forEach(this::readValue);
    this.calls = calls(parts.beside());
    this.rationale = rationale;
    this.stated = statedIn(Field.RESULT).or(() -> statedIn(Field.VALUE));
    this.scale = ScaleClaim.of(this);
  }

  private void readValue(Field field, CellAddress place) {
    if (evaluation.at(place) instanceof Outcome.Known known) {
      values.put(field, known.value());
    }
  }

  /**
   * A call whose first argument is a blank cell says nothing of this record: in a table that is
   * prepared for records of any kind it stands in every row.
   */
  private List<Call> calls(List<Cell> row) {
    return row.stream()
        .flatMap(cell -> evaluation.calls(cell).stream())
        .filter(call -> call.first().flatMap(Call.Argument::value).filter(BLANK).isEmpty())
        .toList();
  }

  /** How a sentence names the record: by quantity, else by symbol, else by its value's cell. */
  public Message name() {
    return text(Field.QUANTITY)
        .or(() -> text(Field.SYMBOL))
        .map(text -> Message.of("record.named", text))
        .orElseGet(() -> Message.of("record.at", valuePlace().place()));
  }

  /** Where a part stands, if the table has a place for it. */
  public Optional<CellAddress> place(Field field) {
    return Optional.ofNullable(parts.places().get(field));
  }

  /** Where all its parts stand that the table has a place for. */
  public Stream<CellAddress> places() {
    return parts.places().values().stream();
  }

  /** Whether a cell stands in the record's row or column, and is none of its parts. */
  public boolean isBesideParts(CellAddress cell) {
    return !parts.places().containsValue(cell)
        && (places().allMatch(place -> isInRow(place, cell))
            || places().allMatch(place -> isInColumn(place, cell)));
  }

  private static boolean isInRow(CellAddress one, CellAddress other) {
    return one.sheet().equals(other.sheet()) && one.row() == other.row();
  }

  private static boolean isInColumn(CellAddress one, CellAddress other) {
    return one.sheet().equals(other.sheet()) && one.column() == other.column();
  }

  /** Where a part stands, or the record's value where there is no place for the part. */
  public CellAddress placeOrValue(Field field) {
    return place(field).orElseGet(this::valuePlace);
  }

  private CellAddress valuePlace() {
    return place(Field.VALUE).orElseGet(() -> parts.places().values().iterator().next());
  }

  /** The cell of a part, if it holds something; an empty text counts as nothing. */
  public Optional<Cell> cell(Field field) {
    return isBlank(field) ? Optional.empty() : place(field).flatMap(workbook::at);
  }

  private boolean isBlank(Field field) {
    Value value = values.get(field);
    return value instanceof Value.Blank
        || (value instanceof Value.Text text && text.text().isBlank());
  }

  /** Whether a part is a formula. */
  public boolean isFormula(Field field) {
    return cell(field).map(Cell::content).filter(Content.Formula.class::isInstance).isPresent();
  }

  /** The text of a part. */
  public Optional<String> text(Field field) {
    return known(field)
        .filter(Value.Text.class::isInstance)
        .map(text -> ((Value.Text) text).text().strip())
        .filter(text -> !text.isEmpty())
        .or(() -> Optional.ofNullable(parts.said().get(field)));
  }

  /** The number of a part and the unit beside it: a number, or a text such as 0,5 mm. */
  public Optional<Amount> amount(Field field) {
    return amounts.computeIfAbsent(
        field, unread -> known(unread).flatMap(Amount::of).or(() -> given(unread)));
  }

  /** The one uncertainty that is stated for this record and others. */
  private Optional<Amount> given(Field field) {
    return field == Field.UNCERTAINTY
        ? parts.given().map(common -> new Amount(common.size(), common.unit()))
        : Optional.empty();
  }

  /** Whether a text on its sheet tells the units of all values. */
  public boolean isUnitTold() {
    return parts.unitTold();
  }

  /** Whether its uncertainty is one that is stated for others as well. */
  public boolean hasCommonUncertainty() {
    return parts.given().isPresent();
  }

  /** The number of a part. */
  public Optional<Double> number(Field field) {
    return amount(field).map(Amount::number);
  }

  private Optional<Value> known(Field field) {
    return Optional.ofNullable(values.get(field));
  }

  /** The text in the result's cell that states a result, or the one in place of a bare value. */
  public Optional<StatedResult> stated() {
    return stated;
  }

  private Optional<StatedResult> statedIn(Field field) {
    return text(field)
        .flatMap(
            shown ->
                Amount.stated(shown)
                    .filter(text -> text.uncertainty().isPresent())
                    .or(() -> isFormula(field) ? Amount.inSentence(shown) : Optional.empty())
                    .map(text -> new StatedResult(field, shown, text)));
  }

  /** The uncertainty: of its own cell, else of the record text. */
  public Optional<Double> uncertainty() {
    return number(Field.UNCERTAINTY)
        .or(() -> stated().flatMap(result -> result.text().uncertainty()).map(Number::doubleValue));
  }

  /**
   * The uncertainty in the unit of the value; empty if it is missing or stands in a unit that
   * cannot be converted, as a bare number under a heading with % cannot.
   */
  public Optional<Double> absoluteUncertainty() {
    Optional<Amount> own = amount(Field.UNCERTAINTY);
    if (own.isEmpty()) {
      return uncertainty().map(Math::abs);
    }
    double size = Math.abs(own.get().number());
    String unit = unit(Field.UNCERTAINTY);
    if (unit.equals(PERCENT) && !unit().equals(PERCENT)) {
      return number(Field.VALUE)
          .map(value -> Math.abs(value) * size / 100)
          .filter(Double::isFinite);
    }
    if (unit.equals(PURE) && !unit().equals(PURE)) {
      return number(Field.VALUE).map(value -> Math.abs(value) * size).filter(Double::isFinite);
    }
    return unit.isEmpty() || unit.equals(unit()) || size == 0
        ? Optional.of(size)
        : converted(size, unit);
  }

  private Optional<Double> converted(double size, String unit) {
    UnitReader reader = UnitReader.STANDARD;
    Optional<MeasurementUnit> target = reader.read(unit()).known();
    return reader
        .read(unit)
        .known()
        .flatMap(from -> target.flatMap(from::to))
        .map(conversion -> Math.abs(conversion.difference(size)))
        .filter(Double::isFinite);
  }

  /**
   * The unit: of its own cell, the heading, the value's or the result's text, or after the name of
   * the quantity; empty for none.
   */
  public String unit() {
    return text(Field.UNIT)
        .or(() -> Optional.ofNullable(parts.units().get(Field.VALUE)))
        .or(() -> amount(Field.VALUE).map(Amount::unit).filter(unit -> !unit.isEmpty()))
        .or(() -> Optional.ofNullable(parts.units().get(Field.UNCERTAINTY)).filter(u -> !isPart(u)))
        .or(() -> stated().map(result -> result.text().unit()).filter(unit -> !unit.isEmpty()))
        .orElse("");
  }

  private static boolean isPart(String unit) {
    return unit.equals(PERCENT) || unit.equals(PURE);
  }

  /** The unit that a part's own cell or heading states; empty for none. */
  public String unit(Field field) {
    return amount(field)
        .map(Amount::unit)
        .filter(unit -> !unit.isEmpty())
        .or(() -> Optional.ofNullable(parts.units().get(field)))
        .orElse("");
  }

  /** The contributions that are numbers, in the order of the fields. */
  public Map<Field, Double> contributions() {
    Map<Field, Double> contributions = new LinkedHashMap<>();
    for (Field field : Field.CONTRIBUTIONS) {
      number(field).ifPresent(number -> contributions.put(field, number));
    }
    return contributions;
  }

  /** Whether every contribution that holds something is a number, so that they can be added. */
  public boolean contributionsAreNumbers() {
    return Field.CONTRIBUTIONS.stream()
        .allMatch(field -> cell(field).isEmpty() || number(field).isPresent());
  }

  /**
   * The calls of LAB functions with one role in the record's row, in columns without a heading too.
   */
  public List<Call> calls(FunctionRole role) {
    return calls.stream().filter(call -> call.is(role)).toList();
  }

  /** The reading off a scale, if the record tells the division. */
  public Optional<ScaleClaim> scale() {
    return scale;
  }

  /** The text that says why, if the record has a place for it. */
  public Optional<Rationale> rationale() {
    return rationale;
  }

  /** The quantity, the instrument and the rationale in one, for words that tell how it was done. */
  public String wording() {
    return String.join(
        " ",
        text(Field.QUANTITY).orElse(""),
        text(Field.INSTRUMENT).orElse(""),
        text(Field.APPARATUS).orElse(""),
        rationale.map(Rationale::text).orElse(""));
  }

  /** Whether the value is the slope of a line through points. */
  public boolean isSlope() {
    return cell(Field.VALUE).filter(NativeFunctions::isOfLine).isPresent();
  }

  /** Whether the value is calculated from other cells that are values of records, or will be. */
  public boolean isCalculatedFrom(Set<CellAddress> values) {
    return evaluation.dependsOn(valuePlace(), values)
        || workbook.at(valuePlace()).stream()
            .flatMap(cell -> evaluation.references(cell).stream())
            .anyMatch(range -> containsOneOf(range, values));
  }

  private static boolean containsOneOf(CellRange range, Set<CellAddress> cells) {
    return range.width() == 1 && range.height() == 1
        ? cells.contains(range.first())
        : cells.stream().anyMatch(range::contains);
  }
}
