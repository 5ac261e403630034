package tenthmark.checker.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tenthmark.checker.course.Course;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.reading.block.Block;
import tenthmark.checker.reading.block.Blocks;
import tenthmark.checker.reading.block.Direction;
import tenthmark.checker.reading.block.TypedSheet;
import tenthmark.checker.reading.layout.Contributions;
import tenthmark.checker.reading.layout.Draft;
import tenthmark.checker.reading.layout.Layout;
import tenthmark.checker.reading.layout.Layouts;
import tenthmark.checker.reading.layout.NearbyUnits;
import tenthmark.checker.reading.layout.Proposal;
import tenthmark.checker.reading.layout.RelativeUncertainties;
import tenthmark.checker.reading.layout.Resolver;
import tenthmark.checker.reading.layout.SeriesUnits;
import tenthmark.checker.reading.layout.ShownResults;
import tenthmark.checker.reading.layout.Surroundings;
import tenthmark.checker.reading.reason.Reasons;
import tenthmark.checker.reading.words.HeadingGrammar;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.Rationale;
import tenthmark.checker.record.RecordTable;
import tenthmark.checker.workbook.Sheet;
import tenthmark.checker.workbook.Workbook;
import tenthmark.measurement.formula.CellAddress;

/**
 * Reads a workbook: its sheets fall into blocks, layouts propose what a block holds, and of
 * proposals that overlap the one with most evidence stands.
 */
final class WorkbookReader {

  private final Workbook workbook;
  private final Evaluation evaluation;
  private final List<TypedSheet> sheets;
  private final Surroundings surroundings;
  private final List<Layout> layouts;
  private List<Resolver.Settled> settled = new ArrayList<>();

  WorkbookReader(Workbook workbook, Evaluation evaluation, Course course) {
    this.workbook = workbook;
    this.evaluation = evaluation;
    this.sheets = visible().stream().map(sheet -> new TypedSheet(sheet, evaluation)).toList();
    this.surroundings =
        new Surroundings(
            workbook, evaluation, course, new HeadingGrammar(course.headings()), sheets);
    this.layouts = Layouts.with(course.tables());
  }

  Reading read() {
    for (TypedSheet sheet : sheets) {
      List<Proposal> proposals = new ArrayList<>();
      List<Block> whole = List.of(Block.of(sheet));
      List<Block> parted = Blocks.of(sheet);
      for (Layout layout : layouts) {
        List<Block> blocks = layout.isOfWholeSheet() ? whole : parted;
        blocks.forEach(block -> proposals.addAll(layout.propose(block, surroundings)));
      }
      settled.addAll(Resolver.resolve(proposals));
    }
    settled = ShownResults.join(sheets, evaluation, settled);
    Contributions.join(surroundings, settled);
    NearbyUnits.find(surroundings, settled);
    SeriesUnits.inherit(evaluation, settled);
    RelativeUncertainties.find(surroundings, settled);
    Reasons reasons =
        new Reasons(sheets, surroundings.grammar(), headings().keySet(), parts(), visible());
    List<Found> found = new ArrayList<>();
    for (Resolver.Settled table : settled) {
      if (!table.drafts().isEmpty()) {
        found.add(found(table, reasons));
      }
    }
    found.sort(Comparator.comparing(Found::sheet).thenComparing(Found::row));
    List<RecordTable> tables = found.stream().map(Found::table).toList();
    return new Reading(
        tables,
        new Accounts(
                workbook, evaluation, surroundings, sheets, settled, headings(), reasons.cells())
            .of(tables));
  }

  /** A table with its place among the others. */
  private record Found(RecordTable table, int sheet, int row) {}

  private Found found(Resolver.Settled table, Reasons reasons) {
    Map<Draft, Optional<Rationale>> why = reasons.of(table.proposal(), table.drafts());
    boolean told = reasons.tellsUnits(table.proposal().area().sheet());
    List<MeasurementRecord> records =
        table.drafts().stream()
            .map(
                draft ->
                    new MeasurementRecord(workbook, evaluation, draft.parts(told), why.get(draft)))
            .toList();
    CellAddress first = table.drafts().get(0).place(Field.VALUE).orElseThrow();
    int row =
        table.drafts().stream()
            .mapToInt(draft -> draft.place(Field.VALUE).orElseThrow().row())
            .min()
            .orElse(0);
    return new Found(
        new RecordTable(
            records, table.proposal().area(), table.proposal().direction() == Direction.COLUMNS),
        sheet(first.sheet()),
        row);
  }

  private int sheet(String name) {
    for (int i = 0; i < sheets.size(); i++) {
      if (sheets.get(i).name().equalsIgnoreCase(name)) {
        return i;
      }
    }
    return sheets.size();
  }

  /** The cells of records, and those that name them. */
  private Set<CellAddress> parts() {
    Set<CellAddress> parts = new HashSet<>();
    for (Resolver.Settled table : settled) {
      for (Draft draft : table.drafts()) {
        parts.addAll(draft.places().values());
        parts.addAll(draft.headings());
      }
    }
    return parts;
  }

  /** The headings of the tables that stand. */
  private Map<CellAddress, Field> headings() {
    Map<CellAddress, Field> headings = new HashMap<>();
    for (Resolver.Settled table : settled) {
      if (!table.drafts().isEmpty() || isPrepared(table.proposal())) {
        table.proposal().headings().forEach(headings::putIfAbsent);
      }
    }
    return headings;
  }

  /** A table that waits for its numbers: its lines may be numbered, its formulas stand. */
  private static boolean isPrepared(Proposal proposal) {
    boolean blank =
        Set.of(NumberRole.INDEX, NumberRole.CALCULATED).containsAll(proposal.roles().values())
            && proposal.strange().isEmpty();
    return blank
        && proposal.headings().containsValue(Field.VALUE)
        && proposal.headings().containsValue(Field.UNCERTAINTY);
  }

  private List<Sheet> visible() {
    return workbook.sheets().stream().filter(sheet -> !sheet.hidden()).toList();
  }
}
