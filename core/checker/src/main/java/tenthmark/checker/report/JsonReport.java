package tenthmark.checker.report;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import tenthmark.checker.reading.Areas;
import tenthmark.checker.reading.CoverageSummary;
import tenthmark.checker.reading.NumberRole;
import tenthmark.checker.rules.Cause;
import tenthmark.checker.rules.Finding;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.wording.Sentences;

/** JSON: all files with their findings. */
public final class JsonReport {

  private JsonReport() {}

  private record Document(
      int format,
      String program,
      List<File> files,
      List<String> skippedFolders,
      List<String> notWorkbooks) {}

  @JsonInclude(JsonInclude.Include.NON_NULL)
  private record File(
      String file, boolean checked, String problem, Read reading, List<Entry> findings) {}

  private record Read(
      int records, Map<String, Integer> numbers, int numbersNotRead, List<Unread> notRead) {}

  private record Unread(String sheet, List<String> cells, int numbers, String reason) {}

  private record Follows(String rule, String sheet, String cell) {}

  @JsonInclude(JsonInclude.Include.NON_NULL)
  private record Entry(
      String rule,
      String severity,
      String sheet,
      String cell,
      List<String> also,
      String found,
      String expected,
      String fix,
      double points,
      Follows follows) {}

  /**
   * The whole document.
   *
   * @param texts what is said, in one language; words that programs look for stay English
   */
  public static String write(List<FileReport> reports, Sentences texts) {
    return write(reports, LeftOut.NOTHING, texts);
  }

  /** The whole document, with what was not checked. */
  public static String write(List<FileReport> reports, LeftOut leftOut, Sentences texts) {
    try {
      return new ObjectMapper()
          .enable(SerializationFeature.INDENT_OUTPUT)
          .writeValueAsString(
              new Document(
                  1,
                  Program.stamp(),
                  reports.stream().map(report -> file(report, texts)).toList(),
                  leftOut.skipped().stream().map(Path::toString).toList(),
                  leftOut.strays().stream().map(Path::toString).toList()));
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  private static File file(FileReport report, Sentences texts) {
    return new File(
        report.file().toString(),
        report.problem().isEmpty(),
        report.problem().orElse(null),
        report.problem().isPresent() ? null : read(report.contents(), texts),
        report.findings().stream().map(finding -> entry(finding, texts)).toList());
  }

  private static Read read(Contents contents, Sentences texts) {
    CoverageSummary coverage = contents.coverage();
    Map<String, Integer> numbers = new LinkedHashMap<>();
    numbers.put("record", coverage.inRecords());
    for (NumberRole role : NumberRole.values()) {
      numbers.put(role.name().toLowerCase(Locale.ROOT), coverage.others().getOrDefault(role, 0));
    }
    return new Read(
        contents.records().size(),
        numbers,
        coverage.numbersNotRead(),
        coverage.unread().stream().map(unread -> unread(unread, texts)).toList());
  }

  private static Unread unread(CoverageSummary.Unread unread, Sentences texts) {
    return new Unread(
        unread.first().sheet(),
        unread.ranges().stream().map(CellRange::place).toList(),
        unread.numbers(),
        texts.say(unread.why()));
  }

  private static Follows follows(Cause cause) {
    return new Follows(cause.rule(), cause.cell().sheet(), cause.cell().place());
  }

  private static Entry entry(Finding finding, Sentences texts) {
    return new Entry(
        finding.rule().id(),
        finding.rule().severity().id(),
        finding.cell().sheet(),
        finding.cell().place(),
        finding.also().isEmpty()
            ? null
            : Areas.of(finding.also()).stream().map(CellRange::place).toList(),
        texts.say(finding.said()),
        texts.say(finding.expected()),
        texts.say(finding.rule().fix()),
        finding.points(),
        finding.cause().map(JsonReport::follows).orElse(null));
  }
}
