package tenthmark.checker.copy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import tenthmark.checker.report.Excerpt;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.report.Program;
import tenthmark.checker.report.Provenance;
import tenthmark.checker.report.ReadingText;
import tenthmark.checker.rules.Finding;
import tenthmark.checker.workbook.Sheet;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.wording.Message;
import tenthmark.measurement.wording.Sentences;

/**
 * What an annotated copy adds to a workbook, whatever its format.
 *
 * @param title of the findings sheet
 * @param preface lines at its top
 * @param headings of its columns
 * @param rows a row for each finding, under the headings
 * @param comments the text of the comment on each cell that has findings
 */
record Annotations(
    String title,
    List<String> preface,
    List<String> headings,
    List<List<String>> rows,
    Map<CellAddress, String> comments) {

  /** Who wrote the comments. */
  static final String AUTHOR = Sheet.CHECKER;

  private static final List<String> HEADINGS =
      List.of(
          "heading.sheet",
          "heading.cell",
          "heading.severity",
          "heading.found",
          "heading.expected",
          "heading.why",
          "heading.fix");

  /** Far less than a cell or a comment can hold in any format. */
  private static final int LONGEST = 2000;

  /** What XML 1.0 (clause 2.2) cannot hold. */
  private static final Pattern UNWRITABLE =
      Pattern.compile("[^\\t\\n\\x{20}-\\x{D7FF}\\x{E000}-\\x{FFFD}\\x{10000}-\\x{10FFFF}]");

  static Annotations of(FileReport report, Optional<Provenance> provenance, Sentences texts) {
    Map<CellAddress, String> comments = new LinkedHashMap<>();
    Excerpt excerpt = report.excerpt();
    for (Finding finding : excerpt.findings()) {
      String said = texts.say(comment(finding));
      finding.cells().stream()
          .limit(Excerpt.MOST)
          .forEach(cell -> comments.merge(cell, said, (one, other) -> one + "\n\n" + other));
    }
    comments.replaceAll((cell, text) -> writable(text));
    return new Annotations(
        texts.say("report.findings"),
        preface(report, provenance, texts),
        HEADINGS.stream().map(heading -> texts.say(heading)).toList(),
        Stream.concat(
                excerpt.findings().stream().map(finding -> row(finding, texts)),
                excerpt.rest().stream().map(rest -> row(texts.say(rest))))
            .toList(),
        comments);
  }

  private static List<String> preface(
      FileReport report, Optional<Provenance> provenance, Sentences texts) {
    List<String> lines = new ArrayList<>();
    lines.add(texts.say("copy.title", writable(report.name())));
    if (report.findings().isEmpty()) {
      boolean none = report.contents().records().isEmpty();
      lines.add(texts.say(none ? "page.no-findings" : "report.well-done"));
    }
    lines.add(
        texts.say(
            Message.of(
                "copy.read",
                ReadingText.brief(List.of(report)),
                ReadingText.numbers(report.contents().coverage()))));
    report.contents().coverage().unread().stream()
        .limit(Excerpt.MOST)
        .map(unread -> writable(texts.say(ReadingText.unread(unread))))
        .forEach(lines::add);
    lines.add(texts.say("copy.same"));
    lines.add(Program.caution(texts));
    lines.add(Program.written(texts));
    provenance.map(origin -> writable(texts.say(origin.line()))).ifPresent(lines::add);
    return lines;
  }

  private static List<String> row(Finding finding, Sentences texts) {
    return Stream.of(
            finding.cell().sheet(),
            finding.cell().place(),
            texts.say(finding.rule().severity().inWords()),
            texts.say(finding.said()),
            texts.say(finding.expected()),
            texts.say(finding.rule().why()),
            texts.say(finding.rule().fix()))
        .map(Annotations::writable)
        .toList();
  }

  /** Under what was found. */
  private static List<String> row(String found) {
    return HEADINGS.stream().map(column -> column.equals("heading.found") ? found : "").toList();
  }

  private static Message comment(Finding finding) {
    return Message.of(
        "copy.comment",
        AUTHOR,
        finding.rule().severity().inWords(),
        finding.rule().id(),
        finding.said(),
        finding.expected(),
        finding.rule().fix());
  }

  private static String writable(String text) {
    String clean = UNWRITABLE.matcher(text).replaceAll(" ");
    int length = clean.codePointCount(0, clean.length());
    return length <= LONGEST
        ? clean
        : clean.substring(0, clean.offsetByCodePoints(0, LONGEST - 1)) + "…";
  }

  /** A name for the findings sheet that no sheet of the workbook has, in any letter case. */
  String sheetName(List<String> taken) {
    Set<String> names = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
    names.addAll(taken);
    String name = title;
    for (int number = 2; names.contains(name); number++) {
      name = title + " " + number;
    }
    return name;
  }
}
