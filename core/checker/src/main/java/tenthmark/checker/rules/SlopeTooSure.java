package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.evaluation.NativeFunctions;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.catalogue.FunctionRole;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.line.FitException;
import tenthmark.measurement.line.Line;
import tenthmark.measurement.line.LineFit;
import tenthmark.measurement.line.Point;
import tenthmark.measurement.wording.Message;

/** A slope whose uncertainty is smaller than the scatter of its points allows. */
@AutoService(Rule.class)
public final class SlopeTooSure implements RecordRule {

  private static final Pattern SLOPE =
      Pattern.compile(
          "(?:SLOPE|LINEST)\\([^(),]+,[^(),]+\\)|(?:"
              + String.join("|", NativeFunctions.ours(FunctionRole.SLOPE))
              + ")\\([^(),]+,[^(),]+(?:,[^(),]*){0,2}\\)",
          Pattern.CASE_INSENSITIVE);

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("slope-too-sure", Severity.WARNING);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public Optional<Finding> check(MeasurementRecord measurement, Inspection inspection) {
    Optional<Double> stated = measurement.absoluteUncertainty();
    Optional<Line> line =
        measurement
            .cell(Field.VALUE)
            .filter(SlopeTooSure::isSlope)
            .flatMap(cell -> line(cell, inspection.evaluation()));
    return line.isPresent() && stated.filter(size -> isTooSmall(size, line.get())).isPresent()
        ? Optional.of(
            DECLARATION.finding(
                measurement.placeOrValue(Field.UNCERTAINTY),
                Message.of("slope-too-sure.found", measurement.name(), Numbers.show(stated.get())),
                Message.of(
                    "slope-too-sure.expected",
                    Numbers.showBriefly(line.get().slopeUncertainty()),
                    line.get().freedom() + 2,
                    Numbers.show(line.get().slope()))))
        : Optional.empty();
  }

  private static boolean areEqual(CellRange bars, Evaluation evaluation) {
    return bars.cells().stream()
            .flatMap(cell -> evaluation.number(cell).stream())
            .distinct()
            .count()
        == 1;
  }

  private static boolean isTooSmall(double stated, Line line) {
    double scatter = line.slopeUncertainty();
    return stated < scatter && !Numbers.agreesAsUncertainty(stated, scatter);
  }

  private static boolean isSlope(Cell cell) {
    return cell.content() instanceof Content.Formula formula
        && SLOPE.matcher(formula.text().strip()).matches();
  }

  /** The line through two ranges; error bars that differ would weigh the points otherwise. */
  private static Optional<Line> line(Cell slope, Evaluation evaluation) {
    List<CellRange> ranges = evaluation.references(slope);
    if (ranges.size() < 2
        || !ranges.stream().skip(2).allMatch(bars -> areEqual(bars, evaluation))
        || ranges.get(0).height() != ranges.get(1).height()
        || ranges.get(0).width() != ranges.get(1).width()) {
      return Optional.empty();
    }
    boolean xFirst =
        ((Content.Formula) slope.content())
            .functions().stream().anyMatch(NativeFunctions.ours(FunctionRole.SLOPE)::contains);
    List<CellAddress> xs = ranges.get(xFirst ? 0 : 1).cells();
    List<CellAddress> ys = ranges.get(xFirst ? 1 : 0).cells();
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < xs.size(); i++) {
      Optional<Double> x = evaluation.number(xs.get(i));
      Optional<Double> y = evaluation.number(ys.get(i));
      if (x.isPresent() && y.isPresent()) {
        points.add(new Point(x.get(), y.get(), 0, 0));
      }
    }
    if (points.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(LineFit.byScatter(points, false));
    } catch (FitException noLine) {
      // The cell's own error says so.
      return Optional.empty();
    }
  }
}
