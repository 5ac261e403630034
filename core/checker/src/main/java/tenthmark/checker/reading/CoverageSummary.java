package tenthmark.checker.reading;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.wording.Message;

/**
 * How many numbers of a workbook were taken for what, small enough to be kept for a whole class.
 *
 * @param inRecords how many numbers are parts of records
 * @param others how many other numbers have each role that is there
 * @param unread what was not read, sheet by sheet and reason by reason
 * @param headings how many headings were understood
 */
public record CoverageSummary(
    int inRecords, Map<NumberRole, Integer> others, List<Unread> unread, int headings) {

  /** Of a workbook without numbers. */
  public static final CoverageSummary NONE = new CoverageSummary(0, Map.of(), List.of(), 0);

  /**
   * What was not read on one sheet for one reason.
   *
   * @param why a sentence that names what was not understood
   * @param numbers how many; none where only a heading was not understood
   * @param ranges where
   */
  public record Unread(Message why, int numbers, List<CellRange> ranges) {

    /** Copies the ranges. */
    public Unread {
      ranges = List.copyOf(ranges);
    }

    /** So many ranges are named; of more it is said how many they are. */
    private static final int NAMED = 12;

    /** The ranges as a sentence names them, without the sheet. */
    public Message places() {
      Message named =
          Message.joined(
              "list.next",
              ranges.stream().limit(NAMED).map(CellRange::place).map(Message::verbatim).toList());
      int more = ranges.size() - NAMED;
      return more > 0 ? Message.counted("reading.ranges", more, named) : named;
    }

    /** The first of the cells. */
    public CellAddress first() {
      return ranges.get(0).first();
    }
  }

  private record Cause(String sheet, Message why) {}

  /** Copies what it holds. */
  public CoverageSummary {
    others = Map.copyOf(others);
    unread = List.copyOf(unread);
  }

  /** Counts what was read in a recalculated workbook. */
  public static CoverageSummary of(Coverage coverage, Evaluation evaluation) {
    int inRecords = 0;
    int headings = 0;
    Map<NumberRole, Integer> others = new EnumMap<>(NumberRole.class);
    Map<Cause, List<CellAddress>> unread = new LinkedHashMap<>();
    for (Map.Entry<CellAddress, Taken> entry : coverage.cells().entrySet()) {
      CellAddress cell = entry.getKey();
      if (entry.getValue() instanceof Taken.NotRead notRead) {
        unread
            .computeIfAbsent(new Cause(cell.sheet(), notRead.why()), cause -> new ArrayList<>())
            .add(cell);
      } else if (entry.getValue() instanceof Taken.Heading) {
        headings++;
      } else if (evaluation.number(cell).isPresent()) {
        if (entry.getValue() instanceof Taken.Part) {
          inRecords++;
        } else {
          others.merge(role(entry.getValue()), 1, Integer::sum);
        }
      }
    }
    return new CoverageSummary(
        inRecords,
        others,
        unread.entrySet().stream()
            .map(entry -> unread(entry.getKey(), entry.getValue(), evaluation))
            .toList(),
        headings);
  }

  /** A number within a text of reasons only names something. */
  private static NumberRole role(Taken taken) {
    return taken instanceof Taken.Other other ? other.role() : NumberRole.LABEL;
  }

  private static Unread unread(Cause cause, List<CellAddress> cells, Evaluation evaluation) {
    long numbers = cells.stream().filter(cell -> evaluation.number(cell).isPresent()).count();
    return new Unread(cause.why(), (int) numbers, Areas.of(cells));
  }

  /** How many numbers were not read. */
  public int numbersNotRead() {
    return unread.stream().mapToInt(Unread::numbers).sum();
  }

  /**
   * Whether nothing was read in a workbook with numbers, so that nothing was checked. A table whose
   * headings were understood and in which nothing is written down yet was read.
   *
   * @param records how many were read
   */
  public boolean isNothing(int records) {
    boolean blankTable = headings > 0 && numbersNotRead() == 0;
    return records == 0 && numbers() > 0 && !blankTable;
  }

  /** How many numbers there are in all. */
  public int numbers() {
    return inRecords
        + others.values().stream().mapToInt(Integer::intValue).sum()
        + numbersNotRead();
  }
}
