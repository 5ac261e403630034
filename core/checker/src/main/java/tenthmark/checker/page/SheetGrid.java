package tenthmark.checker.page;

import static j2html.TagCreator.caption;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.span;
import static j2html.TagCreator.table;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.td;
import static j2html.TagCreator.th;
import static j2html.TagCreator.thead;
import static j2html.TagCreator.tr;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tenthmark.checker.evaluation.Outcome;
import tenthmark.checker.reading.Taken;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.report.TakenText;
import tenthmark.checker.rules.Inspection;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Sheet;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.wording.Message;

/**
 * A sheet drawn as a grid, in which each cell says what it was taken for.
 *
 * @param sheet which
 * @param part what of it is drawn
 * @param records their numbers on the page
 * @param reasons the numbers of the reasons why something was not read
 */
record SheetGrid(
    Inspection inspection,
    Sheet sheet,
    GridPart part,
    Map<MeasurementRecord, Integer> records,
    Map<Message, Integer> reasons,
    Wording wording) {

  private static final int LONGEST = 80;

  DomContent draw() {
    String title = wording.say("read.grid", sheet.name());
    return div(table(
                caption(title),
                thead(
                    tr(
                        th(wording.say("read.corner")).attr("scope", "col"),
                        each(part.columns(), column -> th(letters(column)).attr("scope", "col")))),
                tbody(each(rows(), row -> row)))
            .withClass("grid"))
        .withClass("scroll")
        .attr("role", "region")
        .attr("aria-label", title)
        .attr("tabindex", "0");
  }

  private String letters(int column) {
    return new CellAddress(sheet.name(), column, 0).place().replaceAll("\\d", "");
  }

  private List<DomContent> rows() {
    List<DomContent> rows = new ArrayList<>();
    int next = 0;
    for (int row : part.rows()) {
      if (row > next) {
        rows.add(gap(next, row - 1));
      }
      rows.add(row(row));
      next = row + 1;
    }
    return rows;
  }

  /** Rows that hold nothing. */
  private DomContent gap(int first, int last) {
    Message blank = Message.counted("read.blank", last - first + 1L, first + 1, last + 1);
    return tr(
        th("…").attr("scope", "row"),
        td(wording.say(blank)).attr("colspan", String.valueOf(part.columns().size())));
  }

  private DomContent row(int row) {
    return tr(
        th(String.valueOf(row + 1)).attr("scope", "row"),
        each(
            part.columns(), column -> sheet.at(column, row).map(this::cell).orElseGet(() -> td())));
  }

  private DomContent cell(Cell cell) {
    String shown = shown(cell);
    return inspection
        .reading()
        .coverage()
        .at(cell.address())
        .<DomContent>map(
            taken ->
                td(span(shown).withClass("shown"), span(label(taken)).withClass("taken"))
                    .withClass(Mark.of(taken).style()))
        .orElseGet(() -> td(span(shown).withClass("shown")));
  }

  private String label(Taken taken) {
    if (taken instanceof Taken.Part part && records.containsKey(part.record())) {
      return wording.say("read.part", records.get(part.record()), TakenText.of(taken));
    }
    return taken instanceof Taken.NotRead notRead
        ? wording.say("read.unread", reasons.get(notRead.why()))
        : wording.say(TakenText.of(taken));
  }

  /** What the cell shows, recalculated. */
  private String shown(Cell cell) {
    if (!(inspection.evaluation().at(cell.address()) instanceof Outcome.Known known)) {
      return formula(cell).orElse("");
    }
    if (known.value() instanceof Value.Numeric number) {
      return wording.number(number.number());
    }
    if (known.value() instanceof Value.Text text) {
      return brief(text.text());
    }
    return known.value() instanceof Value.Fault fault ? brief(fault.reason()) : "";
  }

  private static Optional<String> formula(Cell cell) {
    return cell.content() instanceof Content.Formula formula
        ? Optional.of(brief("=" + formula.shown()))
        : Optional.empty();
  }

  private static String brief(String text) {
    return text.codePointCount(0, text.length()) <= LONGEST
        ? text
        : text.substring(0, text.offsetByCodePoints(0, LONGEST - 1)) + "…";
  }
}
