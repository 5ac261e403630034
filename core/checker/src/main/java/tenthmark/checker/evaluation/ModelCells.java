package tenthmark.checker.evaluation;

import java.util.List;
import java.util.Optional;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.DefinedName;
import tenthmark.checker.workbook.Sheet;
import tenthmark.checker.workbook.Workbook;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellContent;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.formula.Cells;
import tenthmark.measurement.formula.Effort;
import tenthmark.measurement.formula.NamedFormula;

/** A workbook as the formula engine of the measurement module reads it. */
record ModelCells(Workbook workbook, Evaluation evaluation, Effort effort) implements Cells {

  private static final CellContent EMPTY = new CellContent.Empty();

  @Override
  public boolean hasSheet(String name) {
    return workbook.sheet(name).isPresent();
  }

  @Override
  public CellContent at(CellAddress address) {
    return workbook.at(address).map(Cell::content).map(ModelCells::content).orElse(EMPTY);
  }

  @Override
  public List<List<CellContent>> rows(CellRange range) {
    int last = workbook.sheet(range.sheet()).map(Sheet::lastRow).orElse(-1);
    int bottom = Math.max(range.top(), Math.min(range.bottom(), last));
    return Cells.super.rows(
        new CellRange(range.sheet(), range.left(), range.top(), range.right(), bottom));
  }

  @Override
  public Optional<NamedFormula> named(String name, String sheet) {
    return workbook.name(name, sheet).map(DefinedName::meaning);
  }

  @Override
  public Optional<CellContent> shown(CellAddress address) {
    return evaluation.at(address) instanceof Outcome.Known known
        ? Optional.of(content(known.value()))
        : Optional.empty();
  }

  private static CellContent content(Value value) {
    if (value instanceof Value.Numeric number) {
      return new CellContent.Number(number.number());
    }
    if (value instanceof Value.Text text) {
      return new CellContent.Text(text.text());
    }
    return value instanceof Value.Fault fault ? new CellContent.Fault(fault.reason()) : EMPTY;
  }

  private static CellContent content(Content content) {
    if (content instanceof Content.Number number) {
      return new CellContent.Number(number.value());
    }
    if (content instanceof Content.Logical logical) {
      return new CellContent.Number(logical.value() ? 1 : 0);
    }
    if (content instanceof Content.Text text) {
      return new CellContent.Text(text.text());
    }
    if (content instanceof Content.Formula formula) {
      return new CellContent.Formula(
          formula.array().isPresent() ? "{=" + formula.text() + "}" : "=" + formula.text(),
          formula.array());
    }
    return new CellContent.Fault(((Content.Error) content).name());
  }
}
