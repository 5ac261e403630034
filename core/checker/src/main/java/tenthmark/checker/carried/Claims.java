package tenthmark.checker.carried;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import tenthmark.checker.evaluation.Call;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.evaluation.NativeFunctions;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Sheet;
import tenthmark.checker.workbook.Workbook;
import tenthmark.measurement.catalogue.FunctionRole;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.wording.Message;

/**
 * Finds the uncertainties that are stated for calculated values: in the records, in the arguments
 * of LAB_RESULT, and in cells that hold nothing but LAB_CARRY.
 */
final class Claims {

  private static final Pattern NOTHING_BUT_CARRY =
      Pattern.compile(
          "(?:" + String.join("|", NativeFunctions.ours(FunctionRole.CARRIED)) + ")\\([^()]*\\)",
          Pattern.CASE_INSENSITIVE);

  private final Workbook workbook;
  private final Evaluation evaluation;
  private final Map<List<CellAddress>, Claim> found = new LinkedHashMap<>();
  private final Set<CellAddress> ofRecords = new HashSet<>();

  private Claims(Workbook workbook, Evaluation evaluation) {
    this.workbook = workbook;
    this.evaluation = evaluation;
  }

  /** The claims, those of records first. */
  static List<Claim> in(Workbook workbook, Evaluation evaluation, List<MeasurementRecord> records) {
    Claims claims = new Claims(workbook, evaluation);
    records.forEach(claims::ofRecord);
    workbook.sheets().stream()
        .filter(sheet -> !sheet.hidden())
        .flatMap(Sheet::cells)
        .forEach(claims::inCell);
    return List.copyOf(claims.found.values());
  }

  /** A record with contributions of its own was measured, whatever its value's formula says. */
  private void ofRecord(MeasurementRecord record) {
    CellAddress value = record.place(Field.VALUE).orElseThrow();
    ofRecords.add(value);
    boolean measured = record.contributions().values().stream().anyMatch(size -> size != 0);
    if (record.isFormula(Field.VALUE) && evaluation.number(value).isPresent() && !measured) {
      record
          .absoluteUncertainty()
          .ifPresent(size -> put(new Claim(record.name(), value, place(record), size)));
    }
  }

  private static CellAddress place(MeasurementRecord record) {
    return record
        .cell(Field.UNCERTAINTY)
        .map(Cell::address)
        .or(() -> record.stated().flatMap(stated -> record.place(stated.field())))
        .orElseGet(() -> record.placeOrValue(Field.VALUE));
  }

  private void inCell(Cell cell) {
    for (Call call : evaluation.calls(cell)) {
      if (call.is(FunctionRole.RESULT)) {
        claim(cell(call, "value"), cell(call, "uncertainty"));
      } else if (call.is(FunctionRole.CARRIED) && isNothingButCarry(cell)) {
        claim(cell(call, "result"), Optional.of(cell.address()));
      }
    }
  }

  private void claim(Optional<CellAddress> value, Optional<CellAddress> uncertainty) {
    Optional<Double> size = uncertainty.flatMap(evaluation::number);
    if (value.filter(this::isCalculated).isPresent() && size.isPresent()) {
      put(new Claim(name(value.get()), value.get(), uncertainty.orElseThrow(), size.get()));
    }
  }

  private void put(Claim claim) {
    found.putIfAbsent(List.of(claim.value(), claim.place()), claim);
  }

  private static Optional<CellAddress> cell(Call call, String parameter) {
    return call.range(parameter)
        .filter(range -> range.height() == 1 && range.width() == 1)
        .map(CellRange::first);
  }

  private static boolean isNothingButCarry(Cell cell) {
    return NOTHING_BUT_CARRY.matcher(((Content.Formula) cell.content()).text().strip()).matches();
  }

  /** A record's value has its own claim, or contributions of its own. */
  private boolean isCalculated(CellAddress value) {
    return !ofRecords.contains(value)
        && evaluation.number(value).isPresent()
        && workbook
            .at(value)
            .map(Cell::content)
            .filter(Content.Formula.class::isInstance)
            .isPresent();
  }

  /** The first text of the row to the left of the value, else its place. */
  private Message name(CellAddress value) {
    return workbook.sheet(value.sheet()).stream()
        .flatMap(sheet -> sheet.row(value.row()).stream())
        .filter(cell -> cell.address().column() < value.column())
        .flatMap(cell -> text(cell).stream())
        .findFirst()
        .map(text -> Message.of("record.named", text))
        .orElseGet(() -> Message.of("record.at", value.place()));
  }

  private static Optional<String> text(Cell cell) {
    return cell.content() instanceof Content.Text text && !text.text().isBlank()
        ? Optional.of(text.text().strip())
        : Optional.empty();
  }
}
