package tenthmark.checker.evaluation;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.apache.poi.ss.formula.ptg.AbstractFunctionPtg;
import org.apache.poi.ss.formula.ptg.ControlPtg;
import org.apache.poi.ss.formula.ptg.IntPtg;
import org.apache.poi.ss.formula.ptg.MissingArgPtg;
import org.apache.poi.ss.formula.ptg.NamePtg;
import org.apache.poi.ss.formula.ptg.NameXPxg;
import org.apache.poi.ss.formula.ptg.NumberPtg;
import org.apache.poi.ss.formula.ptg.OperationPtg;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.formula.ptg.StringPtg;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.catalogue.WorksheetFunction;
import tenthmark.measurement.formula.CellRange;

/** Finds the calls of LAB functions in a formula's tokens. */
final class CallFinder {

  private final Catalogue catalogue;
  private final UnaryOperator<Ptg> meaning;
  private final Function<Ptg, List<CellRange>> ranges;
  private final Function<CellRange, Value> valueOf;
  private final List<Call> calls = new ArrayList<>();

  /**
   * A finder.
   *
   * @param catalogue the LAB functions
   * @param meaning what a token means that may be a name
   * @param ranges the cells that a token refers to
   * @param valueOf the value of a range of one cell
   */
  CallFinder(
      Catalogue catalogue,
      UnaryOperator<Ptg> meaning,
      Function<Ptg, List<CellRange>> ranges,
      Function<CellRange, Value> valueOf) {
    this.catalogue = catalogue;
    this.meaning = meaning;
    this.ranges = ranges;
    this.valueOf = valueOf;
  }

  /** The calls, inner ones before those around them. */
  List<Call> find(Ptg[] tokens) {
    Deque<Optional<Ptg>> operands = new ArrayDeque<>();
    for (Ptg token : tokens) {
      if (token instanceof OperationPtg operation) {
        List<Optional<Ptg>> taken = new ArrayList<>();
        for (int i = 0; i < operation.getNumberOfOperands(); i++) {
          taken.add(0, operands.pop());
        }
        call(operation, taken);
        operands.push(Optional.empty());
      } else if (!(token instanceof ControlPtg)) {
        operands.push(Optional.of(token));
      }
    }
    return List.copyOf(calls);
  }

  private void call(OperationPtg operation, List<Optional<Ptg>> operands) {
    if (operation instanceof AbstractFunctionPtg function
        && function.isExternalFunction()
        && operands.get(0).orElse(null) instanceof NameXPxg name) {
      catalogue
          .find(name.getNameName())
          .map(WorksheetFunction::declaration)
          .ifPresent(
              called ->
                  calls.add(
                      new Call(called, operands.stream().skip(1).map(this::argument).toList())));
    }
  }

  private Call.Argument argument(Optional<Ptg> written) {
    Optional<Ptg> operand = written.map(meaning);
    Optional<CellRange> range =
        operand
            .filter(token -> !(token instanceof NamePtg))
            .map(ranges)
            .filter(found -> found.size() == 1)
            .map(found -> found.get(0));
    Optional<Value> value =
        operand
            .flatMap(CallFinder::literal)
            .or(
                () ->
                    range.filter(cells -> cells.height() == 1 && cells.width() == 1).map(valueOf));
    return new Call.Argument(value, range);
  }

  private static Optional<Value> literal(Ptg token) {
    if (token instanceof IntPtg number) {
      return Optional.of(Value.of(number.getValue()));
    }
    if (token instanceof NumberPtg number) {
      return Optional.of(Value.of(number.getValue()));
    }
    if (token instanceof StringPtg text) {
      return Optional.of(Value.of(text.getValue()));
    }
    return token instanceof MissingArgPtg ? Optional.of(Value.BLANK) : Optional.empty();
  }
}
