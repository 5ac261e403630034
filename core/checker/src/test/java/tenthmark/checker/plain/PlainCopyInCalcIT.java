package tenthmark.checker.plain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.evaluation.Outcome;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Workbook;
import tenthmark.checker.workbook.WorkbookFile;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.catalogue.Value;

/** Plain copies opened, recalculated and saved by a real headless Calc without the extension. */
class PlainCopyInCalcIT {

  private static final double RELATIVE = 1e-12;

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "saved-by-calc/lab-table.ods",
        "saved-by-calc/lab-table.xlsx",
        "saved-by-calc/faulty-lab-table.ods",
        "saved-by-calc/faulty-lab-table.xlsx"
      })
  void openWithEveryValue(String name) throws Exception {
    Path original = Path.of("src/test/resources", name);
    Path plain = folder.resolve("plain" + name.substring(name.lastIndexOf('.')));
    PlainCopy.write(original, plain);
    Workbook source = WorkbookFile.read(original);
    Evaluation expected = Evaluation.of(source, Catalogue.load());

    Workbook saved = WorkbookFile.read(savedByCalc(plain));

    List<Cell> formulas =
        source.sheets().stream()
            .flatMap(sheet -> sheet.cells())
            .filter(cell -> cell.content() instanceof Content.Formula)
            .toList();
    assertThat(formulas).hasSizeGreaterThan(10);
    for (Cell cell : formulas) {
      Value value = ((Outcome.Known) expected.at(cell.address())).value();
      assertSame(
          cell, saved.at(cell.address()).map(Cell::content).orElse(new Content.Text("")), value);
    }
  }

  private static void assertSame(Cell cell, Content saved, Value value) {
    Content shown =
        saved instanceof Content.Formula formula ? formula.stored().orElseThrow() : saved;
    if (value instanceof Value.Numeric number) {
      assertThat(shown).as(cell.toString()).isInstanceOf(Content.Number.class);
      assertThat(((Content.Number) shown).value())
          .as(cell.toString())
          .isCloseTo(number.number(), offset(Math.abs(number.number()) * RELATIVE));
    } else if (value instanceof Value.Fault fault) {
      assertThat(shown)
          .as(cell.toString())
          .isIn(new Content.Error(fault.reason()), new Content.Text(fault.reason()));
    } else {
      assertThat(shown)
          .as(cell.toString())
          .isEqualTo(new Content.Text(value instanceof Value.Text text ? text.text() : ""));
    }
  }

  /** Converts in a throwaway profile; the office refuses root, so root runs it as nobody. */
  private Path savedByCalc(Path workbook) throws IOException, InterruptedException {
    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxrwxrwx"));
    List<String> command = new ArrayList<>();
    if (System.getProperty("user.name").equals("root")) {
      command.addAll(List.of("setpriv", "--reuid=nobody", "--regid=nogroup", "--clear-groups"));
    }
    command.addAll(
        List.of(
            "soffice",
            "--headless",
            "--norestore",
            "-env:UserInstallation=file://" + folder.resolve("profile"),
            "--convert-to",
            "ods",
            "--outdir",
            folder.resolve("saved").toString(),
            workbook.toString()));
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.environment().put("HOME", folder.toString());
    Process process = builder.redirectOutput(folder.resolve("log").toFile()).start();
    assertThat(process.waitFor(5, TimeUnit.MINUTES)).isTrue();
    Path saved = folder.resolve("saved/plain.ods");
    assertThat(saved).as(Files.readString(folder.resolve("log"))).exists();
    return saved;
  }
}
