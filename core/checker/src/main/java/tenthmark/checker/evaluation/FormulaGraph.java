package tenthmark.checker.evaluation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.poi.ss.formula.ptg.AbstractFunctionPtg;
import org.apache.poi.ss.formula.ptg.Area3DPxg;
import org.apache.poi.ss.formula.ptg.AreaPtgBase;
import org.apache.poi.ss.formula.ptg.NamePtg;
import org.apache.poi.ss.formula.ptg.NameXPxg;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.formula.ptg.Ref3DPxg;
import org.apache.poi.ss.formula.ptg.RefPtgBase;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.OutOfTimeException;
import tenthmark.checker.workbook.Sheet;
import tenthmark.checker.workbook.Workbook;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;

/** Which cells a formula refers to. */
final class FormulaGraph {

  private static final Set<String> VOLATILE =
      Set.of("RAND", "RANDBETWEEN", "RANDARRAY", "NOW", "TODAY", "INFO", "CELL");

  /** How often a name may stand for a name: at most 2 to this power for a name used twice. */
  private static final int DEEPEST_NAME = 8;

  private final Workbook workbook;
  private final ModelWorkbook model;
  private final Map<CellAddress, List<CellRange>> rangesOfCells = new HashMap<>();

  FormulaGraph(Workbook workbook, ModelWorkbook model) {
    this.workbook = workbook;
    this.model = model;
  }

  /** The ranges that a cell's formula names; none for a cell without a formula. */
  List<CellRange> ranges(Cell cell) {
    return cell.content() instanceof Content.Formula formula
        ? rangesOfCells.computeIfAbsent(
            cell.address(), address -> ranges(model.tokens(address, formula), address.sheet()))
        : List.of();
  }

  /** The range that a defined name stands for, if it stands for a range and nothing else. */
  Optional<CellRange> named(String name, String sheet) {
    return workbook
        .name(name, sheet)
        .map(defined -> model.definition(defined, sheet))
        .filter(tokens -> tokens.length == 1)
        .map(tokens -> ranges(tokens, sheet))
        .filter(ranges -> ranges.size() == 1)
        .map(ranges -> ranges.get(0));
  }

  /** The tokens of a formula and of what its names stand for, each name once. */
  List<Ptg> withNames(Ptg[] tokens) {
    List<Ptg> all = new ArrayList<>(List.of(tokens));
    Set<Integer> seen = new HashSet<>();
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i) instanceof NamePtg name && seen.add(name.getIndex())) {
        all.addAll(List.of(model.getName(name).getNameDefinition()));
      }
    }
    return all;
  }

  /** What a token means: of a name that stands for one token alone, that one. */
  Ptg meaning(Ptg token) {
    Ptg meaning = token;
    for (int depth = 0; meaning instanceof NamePtg name; depth++) {
      requireDepth(depth);
      Ptg[] definition = model.getName(name).getNameDefinition();
      if (definition.length != 1) {
        return token;
      }
      meaning = definition[0];
    }
    return meaning;
  }

  private static void requireDepth(int depth) {
    OutOfTimeException.ifInterrupted();
    if (depth > DEEPEST_NAME) {
      throw NotCheckableException.of("reason.names");
    }
  }

  /** The cells with content that a cell's formula refers to, found while they are walked over. */
  Iterable<Cell> precedents(Cell cell) {
    List<CellRange> ranges = ranges(cell);
    return () -> new Precedents(workbook, ranges.iterator());
  }

  /** Whether a token makes a formula's value change without any cell being changed. */
  static boolean isVolatile(Ptg token) {
    if (token instanceof AbstractFunctionPtg function && !function.isExternalFunction()) {
      return VOLATILE.contains(function.getName());
    }
    return token instanceof NameXPxg name
        && VOLATILE.contains(name.getNameName().toUpperCase(Locale.ROOT));
  }

  /** The ranges that tokens on a sheet name. */
  List<CellRange> ranges(Ptg[] tokens, String sheet) {
    return List.copyOf(ranges(tokens, sheet, 0));
  }

  /** No range twice: names that each stand for others twice would double at each step. */
  private Set<CellRange> ranges(Ptg[] tokens, String sheet, int depth) {
    requireDepth(depth);
    Set<CellRange> ranges = new LinkedHashSet<>();
    for (Ptg token : tokens) {
      if (token instanceof Area3DPxg area) {
        sheets(area.getSheetName(), area.getLastSheetName())
            .forEach(name -> ranges.add(range(name, area)));
      } else if (token instanceof Ref3DPxg cell) {
        sheets(cell.getSheetName(), cell.getLastSheetName())
            .forEach(name -> ranges.add(range(name, cell)));
      } else if (token instanceof AreaPtgBase area) {
        ranges.add(range(sheet, area));
      } else if (token instanceof RefPtgBase cell) {
        ranges.add(range(sheet, cell));
      } else if (token instanceof NamePtg name) {
        ranges.addAll(ranges(model.getName(name).getNameDefinition(), sheet, depth + 1));
      }
    }
    return ranges;
  }

  private Stream<String> sheets(String first, String last) {
    int from = model.getSheetIndex(first);
    int to = last == null ? from : model.getSheetIndex(last);
    return from < 0 || to < 0
        ? Stream.empty()
        : workbook.sheets().subList(Math.min(from, to), Math.max(from, to) + 1).stream()
            .map(Sheet::name);
  }

  private static CellRange range(String sheet, AreaPtgBase area) {
    return new CellRange(
        sheet, area.getFirstColumn(), area.getFirstRow(), area.getLastColumn(), area.getLastRow());
  }

  private static CellRange range(String sheet, RefPtgBase cell) {
    return new CellRange(sheet, cell.getColumn(), cell.getRow(), cell.getColumn(), cell.getRow());
  }
}
