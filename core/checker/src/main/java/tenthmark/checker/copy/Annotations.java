package tenthmark.checker.copy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.report.Program;
import tenthmark.checker.report.TextReport;
import tenthmark.checker.rules.Finding;
import tenthmark.checker.wording.CheckerTexts;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.wording.Sentences;

/**
 * What an annotated copy adds to a workbook, whatever its format.
 *
 * @param preface lines at the top of the findings sheet
 * @param rows a row for each finding, under the headings
 * @param comments the text of the comment on each cell that has findings
 */
record Annotations(
    List<String> preface, List<List<String>> rows, Map<CellAddress, String> comments) {

  /** The headings of the findings sheet. */
  static final List<String> HEADINGS =
      List.of("Sheet", "Cell", "Severity", "Found", "Expected", "Why it matters", "How to fix it");

  /** Who wrote the comments. */
  static final String AUTHOR = "Tenthmark checker";

  private static final Sentences TEXTS = CheckerTexts.english();

  private static final String SHEET = "Findings";

  /** Far less than a cell or a comment can hold in any format. */
  private static final int LONGEST = 2000;

  /** What XML 1.0 (clause 2.2) cannot hold. */
  private static final Pattern UNWRITABLE =
      Pattern.compile("[^\\t\\n\\x{20}-\\x{D7FF}\\x{E000}-\\x{FFFD}\\x{10000}-\\x{10FFFF}]");

  static Annotations of(FileReport report) {
    Map<CellAddress, String> comments = new LinkedHashMap<>();
    for (Finding finding : report.findings()) {
      comments.merge(finding.cell(), comment(finding), (one, other) -> one + "\n\n" + other);
    }
    comments.replaceAll((cell, text) -> writable(text));
    return new Annotations(
        preface(report), report.findings().stream().map(Annotations::row).toList(), comments);
  }

  private static List<String> preface(FileReport report) {
    List<String> lines = new ArrayList<>();
    lines.add("Findings in " + writable(report.name()));
    if (report.findings().isEmpty()) {
      lines.add("Well done: none of the rules found anything to mend.");
    }
    lines.add(
        "Every other sheet is as you handed it in, but for comments on its cells; a cell that has a"
            + " comment of your own keeps that alone.");
    lines.add(Program.CAUTION);
    lines.add("Written by " + Program.stamp() + ".");
    return lines;
  }

  private static List<String> row(Finding finding) {
    return Stream.of(
            finding.cell().sheet(),
            finding.cell().place(),
            TextReport.word(finding.rule().severity()),
            TEXTS.say(finding.found()),
            TEXTS.say(finding.expected()),
            TEXTS.say(finding.rule().why()),
            TEXTS.say(finding.rule().fix()))
        .map(Annotations::writable)
        .toList();
  }

  private static String comment(Finding finding) {
    return AUTHOR
        + ": "
        + TextReport.word(finding.rule().severity())
        + " "
        + finding.rule().id()
        + "\nFound: "
        + TEXTS.say(finding.found())
        + "\nExpected: "
        + TEXTS.say(finding.expected())
        + "\nHow to fix it: "
        + TEXTS.say(finding.rule().fix());
  }

  private static String writable(String text) {
    String clean = UNWRITABLE.matcher(text).replaceAll(" ");
    int length = clean.codePointCount(0, clean.length());
    return length <= LONGEST
        ? clean
        : clean.substring(0, clean.offsetByCodePoints(0, LONGEST - 1)) + "…";
  }

  /** A name for the findings sheet that no sheet of the workbook has, in any letter case. */
  static String sheetName(List<String> taken) {
    Set<String> names = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
    names.addAll(taken);
    String name = SHEET;
    for (int number = 2; names.contains(name); number++) {
      name = SHEET + " " + number;
    }
    return name;
  }
}
