package tenthmark.checker.page;

import static j2html.TagCreator.a;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.header;
import static j2html.TagCreator.iff;
import static j2html.TagCreator.li;
import static j2html.TagCreator.nav;
import static j2html.TagCreator.ol;
import static j2html.TagCreator.p;
import static j2html.TagCreator.section;
import static j2html.TagCreator.span;
import static j2html.TagCreator.text;
import static j2html.TagCreator.ul;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import tenthmark.checker.reading.CoverageSummary.Unread;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.report.ReadingText;
import tenthmark.checker.rules.Inspection;
import tenthmark.checker.workbook.Sheet;
import tenthmark.measurement.wording.Message;
import tenthmark.measurement.wording.Sentences;

/** The page that shows how a workbook was read: what every cell was taken for. */
public final class ReadingPage {

  /** So many cells are drawn on a page, whatever a workbook holds. */
  private static final int ROOM = 12_000;

  private final String name;
  private final Inspection inspection;
  private final Wording wording;
  private final Map<MeasurementRecord, Integer> records = new LinkedHashMap<>();
  private final Map<Message, Integer> reasons = new LinkedHashMap<>();
  private int room = ROOM;

  private ReadingPage(String name, Inspection inspection, Wording wording) {
    this.name = name;
    this.inspection = inspection;
    this.wording = wording;
    inspection.records().forEach(entry -> records.put(entry, records.size() + 1));
    inspection
        .coverage()
        .unread()
        .forEach(unread -> reasons.putIfAbsent(unread.why(), reasons.size() + 1));
  }

  /**
   * The page as one HTML file.
   *
   * @param name how the workbook is called
   * @param texts what the page says, in one language
   */
  public static String of(String name, Inspection inspection, Sentences texts) {
    ReadingPage page = new ReadingPage(name, inspection, new Wording(texts));
    return Page.of(page.title(), page.top(), page.main(), Optional.empty(), texts);
  }

  private String title() {
    return wording.say("read.title", name);
  }

  private DomContent top() {
    Message read = ReadingText.brief(inspection.records().size(), inspection.coverage());
    return header(h1(title()), p(wording.say("read.summary", read)));
  }

  private DomContent main() {
    List<Sheet> sheets = inspection.workbook().sheets();
    return div(
        nav(ul(
                li(a(wording.say("read.legend")).withHref("#legend")),
                each(
                    numbers(sheets),
                    index ->
                        li(
                            a(wording.say("page.sheet", sheets.get(index).name()))
                                .withHref("#" + id(index)))),
                iff(!reasons.isEmpty(), li(a(wording.say("read.why")).withHref("#unread")))))
            .attr("aria-label", wording.say("page.contents")),
        legend(),
        each(numbers(sheets), index -> sheet(sheets.get(index), id(index))),
        iff(!reasons.isEmpty(), unread()));
  }

  private static List<Integer> numbers(List<?> things) {
    return IntStream.range(0, things.size()).boxed().toList();
  }

  private static String id(int sheet) {
    return "sheet-" + (sheet + 1);
  }

  private DomContent legend() {
    return section(
            h2(wording.say("read.legend")),
            p(wording.say("page.numbers", ReadingText.numbers(inspection.coverage()))),
            ul(each(
                    Arrays.asList(Mark.values()),
                    mark ->
                        li(span(wording.say(mark.meaning())).withClasses("mark", mark.style()))))
                .withClass("legend"),
            p(wording.say("read.numbers")),
            p(wording.say("read.mend")))
        .withId("legend");
  }

  private DomContent sheet(Sheet sheet, String id) {
    return section(h2(wording.say("page.sheet", sheet.name())), content(sheet)).withId(id);
  }

  private DomContent content(Sheet sheet) {
    if (sheet.hidden()) {
      return p(wording.say("read.hidden"));
    }
    if (sheet.cells().findAny().isEmpty()) {
      return p(wording.say("read.empty"));
    }
    GridPart part = GridPart.of(sheet, room);
    room -= part.size();
    return div(
        part.rows().isEmpty()
            ? text("")
            : new SheetGrid(inspection, sheet, part, records, reasons, wording).draw(),
        iff(part.isCut(), p(cut(part))),
        recordsOf(sheet));
  }

  private String cut(GridPart part) {
    return wording.say(
        "read.cut", part.rows().size(), part.allRows(), part.columns().size(), part.allColumns());
  }

  private DomContent recordsOf(Sheet sheet) {
    List<MeasurementRecord> here =
        inspection.records().stream()
            .filter(entry -> entry.placeOrValue(Field.VALUE).sheet().equals(sheet.name()))
            .toList();
    return here.isEmpty()
        ? p(wording.say("read.records.none"))
        : div(
            p(wording.say("read.records")),
            ul(each(here, entry -> li(record(entry)))).withClass("records"));
  }

  private String record(MeasurementRecord entry) {
    return wording.say(
        "read.record", records.get(entry), entry.name(), entry.placeOrValue(Field.VALUE).place());
  }

  private DomContent unread() {
    List<Unread> unread = new ArrayList<>(inspection.coverage().unread());
    return section(
            h2(wording.say("read.why")),
            ol(
                each(
                    List.copyOf(reasons.keySet()),
                    why -> li(text(wording.say(why)), places(why, unread)))))
        .withId("unread");
  }

  private DomContent places(Message why, List<Unread> unread) {
    return ul(
        each(
            unread.stream().filter(entry -> entry.why().equals(why)).toList(),
            entry -> li(wording.say("read.place", entry.first().sheet(), entry.places()))));
  }
}
