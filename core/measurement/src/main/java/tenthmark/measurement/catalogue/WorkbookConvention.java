package tenthmark.measurement.catalogue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellContent;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.formula.Cells;
import tenthmark.measurement.formula.Formulas;
import tenthmark.measurement.formula.Names;
import tenthmark.measurement.recording.Combine;
import tenthmark.measurement.recording.Convention;
import tenthmark.measurement.rounding.DigitsRule;
import tenthmark.measurement.wording.Message;

/**
 * The convention that a workbook holds, in the cells that the name {@value #NAME} stands for: a
 * word in the first column, its value in the second. What is left out is as in {@code bench}.
 */
public final class WorkbookConvention {

  /** The name of the cells, for the whole workbook. */
  public static final String NAME = "LAB_CONVENTION";

  /** A name may stand for a whole column. */
  private static final int MOST_ROWS = 100;

  private static final Kind<String> TEXT = Kinds.text();
  private static final Kind<Double> FRACTION = Kinds.fraction();
  private static final Kind<Combine> COMBINE = Kinds.choice(Combine.class);
  private static final Kind<DigitsRule> DIGITS = Kinds.digits();
  private static final Kind<Double> REACTION = Kinds.positive();
  private static final Kind<Double> COVERAGE =
      Kinds.numberThat(Message.of("allowed.coverage"), factor -> factor >= 1 && factor <= 10);

  /** The words of the first column. */
  private enum Word {
    CONVENTION,
    WIDE,
    FINE,
    COMBINE,
    DIGITS,
    REACTION,
    COVERAGE;

    String shown() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  private final Map<String, Value> said = new LinkedHashMap<>();

  private WorkbookConvention() {}

  /**
   * The convention of a workbook; {@code bench} where it holds none.
   *
   * @throws ArgumentException if a word or a value is none, or the name stands for no cells
   */
  public static Convention in(Cells cells) {
    if (cells.named(NAME, "").isEmpty()) {
      return Convention.BENCH;
    }
    return range(cells)
        .map(range -> read(cells, range))
        .orElseThrow(() -> ArgumentException.of("convention.no.cells", NAME));
  }

  /** The cells that hold the convention, if the workbook has the name and it stands for cells. */
  public static Optional<CellRange> range(Cells cells) {
    return new Names(cells, new Formulas()).range(NAME);
  }

  private static Convention read(Cells cells, CellRange whole) {
    CellRange range =
        new CellRange(
            whole.sheet(),
            whole.left(),
            whole.top(),
            Math.min(whole.right(), whole.left() + 1),
            Math.min(whole.bottom(), whole.top() + MOST_ROWS - 1));
    WorkbookConvention table = new WorkbookConvention();
    List<List<CellContent>> rows = cells.rows(range);
    for (int row = 0; row < rows.size(); row++) {
      List<Value> values = new ArrayList<>();
      for (int column = 0; column < rows.get(row).size(); column++) {
        CellAddress place =
            new CellAddress(range.sheet(), range.left() + column, range.top() + row);
        values.add(value(cells, place, rows.get(row).get(column)));
      }
      table.add(values);
    }
    return table.convention();
  }

  private static Value value(Cells cells, CellAddress place, CellContent content) {
    CellContent shown =
        content instanceof CellContent.Formula
            ? cells.shown(place).orElseGet(CellContent.Empty::new)
            : content;
    if (shown instanceof CellContent.Number number) {
      return Value.of(number.value());
    }
    if (shown instanceof CellContent.Text text) {
      return Value.of(text.text());
    }
    return shown instanceof CellContent.Fault fault ? new Value.Fault(fault.name()) : Value.BLANK;
  }

  /** A row without a value says nothing. */
  private void add(List<Value> row) {
    if (row.size() < 2 || row.get(1) instanceof Value.Blank) {
      return;
    }
    String word = row.get(0) instanceof Value.Text text ? uniform(text.text()) : "";
    List<String> words = Arrays.stream(Word.values()).map(Word::shown).toList();
    if (!words.contains(word)) {
      throw ArgumentException.notAllowed(
          NAME,
          Argument.inWords(row.get(0)),
          Message.of("allowed.choice", words.stream().collect(Collectors.joining(", "))));
    }
    said.put(word, row.get(1));
  }

  private static String uniform(String text) {
    return text.strip().toLowerCase(Locale.ROOT);
  }

  private Convention convention() {
    Convention bench = Convention.BENCH;
    return new Convention(
        find(Word.CONVENTION, TEXT).orElse("own"),
        find(Word.WIDE, FRACTION).orElse(bench.wideFraction()),
        find(Word.FINE, FRACTION).orElse(bench.fineFraction()),
        find(Word.COMBINE, COMBINE).orElse(bench.combine()),
        find(Word.DIGITS, DIGITS).orElse(bench.digits()),
        find(Word.REACTION, REACTION).orElse(bench.reactionSeconds()),
        find(Word.COVERAGE, COVERAGE).orElse(bench.coverageFactor()));
  }

  private <T> Optional<T> find(Word word, Kind<T> kind) {
    return Optional.ofNullable(said.get(word.shown()))
        .map(value -> kind.read(new Argument(NAME + ", " + word.shown(), value, kind.allowed())));
  }

  /**
   * A convention as the rows of such a table, a word and its value in each.
   *
   * @return numbers and texts
   */
  public static List<List<Value>> rows(Convention convention) {
    return List.of(
        row(Word.CONVENTION, Value.of(convention.name())),
        row(Word.WIDE, Value.of(convention.wideFraction())),
        row(Word.FINE, Value.of(convention.fineFraction())),
        row(Word.COMBINE, Value.of(uniform(convention.combine().name()))),
        row(Word.DIGITS, digits(convention.digits())),
        row(Word.REACTION, Value.of(convention.reactionSeconds())),
        row(Word.COVERAGE, Value.of(convention.coverageFactor())));
  }

  private static List<Value> row(Word word, Value value) {
    return List.of(Value.of(word.shown()), value);
  }

  private static Value digits(DigitsRule rule) {
    if (rule instanceof DigitsRule.Fixed fixed) {
      return Value.of(fixed.digits());
    }
    return Value.of(rule instanceof DigitsRule.ParticleData ? "pdg" : "bench");
  }
}
