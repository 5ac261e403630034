package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Sheet;
import tenthmark.measurement.wording.Message;

/**
 * A formula that is nearly the one of its neighbours: with a factor or term more, another number,
 * or a reference to another row.
 */
@AutoService(Rule.class)
public final class CopyDiffers implements Rule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("copy-differs", Severity.WARNING);

  /** Copies that must stand beside a formula for it to be taken for one that was changed. */
  private static final int FEWEST = 2;

  /** What a token of a formula is. */
  private enum Kind {
    NUMBER,
    REFERENCE,
    RANGE,
    SIGN
  }

  private static final Set<Kind> COMPARED = EnumSet.of(Kind.NUMBER, Kind.REFERENCE);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public List<Finding> check(Inspection inspection) {
    List<Finding> findings = new ArrayList<>();
    inspection
        .sheets()
        .forEach(
            sheet ->
                sheet
                    .cells()
                    .filter(cell -> cell.content() instanceof Content.Formula)
                    .forEach(
                        cell ->
                            finding(cell, sheet, inspection.evaluation())
                                .ifPresent(findings::add)));
    return findings;
  }

  private static Optional<Finding> finding(Cell cell, Sheet sheet, Evaluation evaluation) {
    return changed(cell, sheet, evaluation, 0, 1)
        .or(() -> changed(cell, sheet, evaluation, 1, 0))
        .map(
            copy ->
                DECLARATION.finding(
                    cell.address(),
                    Message.of(
                        "copy-differs.found", shown(cell), copy.address().place(), shown(copy)),
                    Message.of("copy-differs.expected", copy.address().place())));
  }

  private static String shown(Cell cell) {
    return ((Content.Formula) cell.content()).shown();
  }

  /** The neighbour whose copy the cell nearly is, along a column or a row. */
  private static Optional<Cell> changed(
      Cell cell, Sheet sheet, Evaluation evaluation, int right, int down) {
    List<Cell> before = copies(cell, sheet, evaluation, -right, -down);
    List<Cell> after = copies(cell, sheet, evaluation, right, down);
    boolean between =
        !before.isEmpty() && !after.isEmpty() && evaluation.areCopies(before.get(0), after.get(0));
    List<Cell> copies = between || before.size() >= after.size() ? before : after;
    int count = between ? before.size() + after.size() : copies.size();
    if (count < FEWEST || evaluation.areCopies(cell, copies.get(0))) {
      return Optional.empty();
    }
    List<String> own = evaluation.relativeTokens(cell);
    List<String> theirs = evaluation.relativeTokens(copies.get(0));
    boolean nearly = hasMore(own, theirs) || between && count > FEWEST && differsInOne(own, theirs);
    return nearly ? Optional.of(copies.get(0)) : Optional.empty();
  }

  /** The cells one after the other in a direction that are copies of the first of them. */
  private static List<Cell> copies(
      Cell from, Sheet sheet, Evaluation evaluation, int right, int down) {
    List<Cell> copies = new ArrayList<>();
    Optional<Cell> next = beside(from, sheet, right, down);
    while (copies.size() < FEWEST
        && next.filter(cell -> cell.content() instanceof Content.Formula).isPresent()
        && (copies.isEmpty() || evaluation.areCopies(copies.get(0), next.get()))) {
      copies.add(next.get());
      next = beside(next.get(), sheet, right, down);
    }
    return copies;
  }

  private static Optional<Cell> beside(Cell cell, Sheet sheet, int right, int down) {
    return sheet.at(cell.address().column() + right, cell.address().row() + down);
  }

  /** Numbers and what is done with them are put to the whole formula, and nothing else. */
  private static boolean hasMore(List<String> own, List<String> theirs) {
    int start = Collections.indexOfSubList(own, theirs);
    if (start < 0 || own.size() == theirs.size() || theirs.size() < FEWEST) {
      return false;
    }
    List<String> more = new ArrayList<>(own.subList(0, start));
    more.addAll(own.subList(start + theirs.size(), own.size()));
    return more.stream().anyMatch(CopyDiffers::isNumber)
        && more.stream()
            .map(CopyDiffers::kind)
            .noneMatch(EnumSet.of(Kind.REFERENCE, Kind.RANGE)::contains);
  }

  /**
   * One number or one reference is another; several are another formula, and ranges that end too
   * early are another rule's concern.
   */
  private static boolean differsInOne(List<String> own, List<String> theirs) {
    List<Integer> differing =
        IntStream.range(0, Math.min(own.size(), theirs.size()))
            .filter(i -> !own.get(i).equals(theirs.get(i)))
            .boxed()
            .toList();
    return own.size() == theirs.size()
        && differing.size() == 1
        && COMPARED.contains(kind(own.get(differing.get(0))))
        && kind(own.get(differing.get(0))) == kind(theirs.get(differing.get(0)));
  }

  private static boolean isNumber(String token) {
    return kind(token) == Kind.NUMBER;
  }

  private static Kind kind(String token) {
    String type = token.substring(0, token.indexOf(' '));
    return switch (type) {
      case "NumberPtg", "IntPtg" -> Kind.NUMBER;
      default ->
          type.contains("Ref") ? Kind.REFERENCE : type.contains("Area") ? Kind.RANGE : Kind.SIGN;
    };
  }
}
