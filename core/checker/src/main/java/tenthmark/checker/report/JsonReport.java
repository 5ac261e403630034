package tenthmark.checker.report;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.util.List;
import tenthmark.checker.rules.Finding;
import tenthmark.checker.wording.CheckerTexts;
import tenthmark.measurement.wording.Sentences;

/** JSON: all files with their findings. */
public final class JsonReport {

  private static final Sentences TEXTS = CheckerTexts.english();

  private JsonReport() {}

  private record Document(int format, String program, List<File> files) {}

  @JsonInclude(JsonInclude.Include.NON_NULL)
  private record File(String file, boolean checked, String problem, List<Entry> findings) {}

  private record Entry(
      String rule,
      String severity,
      String sheet,
      String cell,
      String found,
      String expected,
      String fix,
      double points) {}

  /** The whole document. */
  public static String write(List<FileReport> reports) {
    try {
      return new ObjectMapper()
          .enable(SerializationFeature.INDENT_OUTPUT)
          .writeValueAsString(
              new Document(1, Program.stamp(), reports.stream().map(JsonReport::file).toList()));
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  private static File file(FileReport report) {
    return new File(
        report.file().toString(),
        report.problem().isEmpty(),
        report.problem().orElse(null),
        report.findings().stream().map(JsonReport::entry).toList());
  }

  private static Entry entry(Finding finding) {
    return new Entry(
        finding.rule().id(),
        TextReport.word(finding.rule().severity()),
        finding.cell().sheet(),
        finding.cell().place(),
        TEXTS.say(finding.found()),
        TEXTS.say(finding.expected()),
        TEXTS.say(finding.rule().fix()),
        finding.points());
  }
}
