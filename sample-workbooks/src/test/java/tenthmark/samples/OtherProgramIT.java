package tenthmark.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tenthmark.checker.plain.PlainCopy;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.WorkbookFile;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.wording.Sentences;

/**
 * The workbooks in another spreadsheet program: opened and saved by Gnumeric (Debian: gnumeric),
 * and what is in their cells then. It keeps stored values, except that it computes anew each
 * formula that shows an empty text, and what depends on one; there it finds that the functions are
 * missing.
 */
class OtherProgramIT {

  private static final double RELATIVE = 1e-12;
  private static final String MISSING = Sentences.english().say("functions.missing");

  @TempDir private Path folder;

  static Stream<Path> all() {
    return files(file -> true);
  }

  /** Those in which nothing depends on a formula that shows an empty text. */
  static Stream<Path> independent() {
    return files(file -> !file.toString().matches(".*(record-table|full-report).*"));
  }

  private static Stream<Path> files(Predicate<Path> wanted) {
    try (Stream<Path> files = Files.walk(Saved.WORKBOOKS)) {
      return files
          .filter(file -> file.toString().matches(".*\\.(xlsx|xltx)"))
          .filter(file -> !file.startsWith(Saved.WORKBOOKS.resolve("class-set")))
          .filter(wanted)
          .sorted()
          .toList()
          .stream();
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  @ParameterizedTest
  @MethodSource("independent")
  void keepTheirValues(Path file) throws Exception {
    assertThat(differences(values(file), values(savedByGnumeric(file)))).isEmpty();
  }

  /** Where a value cannot be kept it goes, and never becomes another. */
  @ParameterizedTest
  @MethodSource("all")
  void neverShowAnotherValueAndSayThatTheFunctionsAreMissing(Path file) throws Exception {
    Map<CellAddress, Content> there = values(savedByGnumeric(file));
    assertThat(there).containsValue(new Content.Text(MISSING));
    assertThat(differences(values(file), there).values())
        .allMatch(difference -> difference.endsWith(" has gone"));
  }

  @ParameterizedTest
  @MethodSource("all")
  void keepEveryValueInAPlainCopy(Path file) throws Exception {
    Path plain = folder.resolve("plain.xlsx");
    PlainCopy.write(file, plain);
    Map<CellAddress, Content> values = values(file);
    assertThat(values).hasSizeGreaterThan(10);
    assertThat(differences(values, values(savedByGnumeric(plain)))).isEmpty();
  }

  /** What the cells that show something hold; of formulas the values. */
  private static Map<CellAddress, Content> values(Path file) throws Exception {
    Map<CellAddress, Content> values = new LinkedHashMap<>();
    WorkbookFile.read(file).sheets().stream()
        .flatMap(sheet -> sheet.cells())
        .forEach(cell -> values.put(cell.address(), value(cell)));
    values.values().removeIf(new Content.Text("")::equals);
    return values;
  }

  private static Content value(Cell cell) {
    return cell.content() instanceof Content.Formula formula
        ? formula.stored().orElse(new Content.Text(""))
        : cell.content();
  }

  private static Map<CellAddress, String> differences(
      Map<CellAddress, Content> here, Map<CellAddress, Content> there) {
    Map<CellAddress, String> differences = new LinkedHashMap<>();
    here.forEach(
        (cell, value) -> {
          Content other = there.getOrDefault(cell, new Content.Text(""));
          if (!areSame(value, other)) {
            boolean gone =
                other.equals(new Content.Text("")) || other.equals(new Content.Error("#NAME?"));
            differences.put(cell, value + (gone ? " has gone" : " has become " + other));
          }
        });
    return differences;
  }

  private static boolean areSame(Content here, Content there) {
    return here instanceof Content.Number number && there instanceof Content.Number other
        ? Math.abs(number.value() - other.value()) <= RELATIVE * Math.abs(number.value())
        : here.equals(there);
  }

  private Path savedByGnumeric(Path file) throws Exception {
    Path saved = folder.resolve("saved.xlsx");
    Path log = folder.resolve("log");
    ProcessBuilder builder =
        new ProcessBuilder("ssconvert", file.toAbsolutePath().toString(), saved.toString())
            .redirectErrorStream(true)
            .redirectOutput(log.toFile());
    builder.environment().put("HOME", folder.toString());
    try {
      Process process = builder.start();
      assertThat(process.waitFor(3, TimeUnit.MINUTES)).isTrue();
    } catch (IOException missing) {
      throw new IllegalStateException("this test needs Gnumeric (Debian: gnumeric)", missing);
    }
    assertThat(saved).as(Files.readString(log)).exists();
    return saved;
  }
}
