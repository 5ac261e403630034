package tenthmark.checker.report;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.util.List;
import tenthmark.checker.reading.Taken;
import tenthmark.checker.reading.TakenArea;
import tenthmark.checker.rules.Inspection;
import tenthmark.measurement.wording.Sentences;

/** JSON: what every cell of some workbooks was taken for. */
public final class ReadingJson {

  private ReadingJson() {}

  private record Document(int format, String program, List<File> files) {}

  /**
   * One file.
   *
   * @param problem why it could not be read; null if it could
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record File(
      String file,
      boolean read,
      String problem,
      int records,
      int numbersNotRead,
      List<Cells> cells) {

    /** A file that was read. */
    public static File of(String file, Inspection inspection, Sentences texts) {
      return new File(
          file,
          true,
          null,
          inspection.records().size(),
          inspection.coverage().numbersNotRead(),
          TakenArea.of(inspection.reading().coverage()).stream()
              .map(area -> Cells.of(area, texts))
              .toList());
    }

    /** A file that could not be read. */
    public static File unread(String file, String problem) {
      return new File(file, false, problem, 0, 0, List.of());
    }
  }

  private record Cells(String sheet, String cells, boolean read, String taken) {

    static Cells of(TakenArea area, Sentences texts) {
      return new Cells(
          area.range().sheet(),
          area.range().place(),
          !(area.taken() instanceof Taken.NotRead),
          texts.say(TakenText.of(area.taken())));
    }
  }

  /** The whole document. */
  public static String write(List<File> files) {
    try {
      return new ObjectMapper()
          .enable(SerializationFeature.INDENT_OUTPUT)
          .writeValueAsString(new Document(1, Program.stamp(), files));
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
