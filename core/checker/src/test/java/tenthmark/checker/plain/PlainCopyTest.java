package tenthmark.checker.plain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Collections;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.opc.PackagingURIHelper;
import org.apache.poi.openxml4j.opc.TargetMode;
import org.apache.poi.xssf.usermodel.XSSFRelation;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.evaluation.Outcome;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Grid;
import tenthmark.checker.workbook.Limits;
import tenthmark.checker.workbook.Sheet;
import tenthmark.checker.workbook.UnreadableFileException;
import tenthmark.checker.workbook.Workbook;
import tenthmark.checker.workbook.WorkbookFile;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.catalogue.Value;

/** On workbooks that a real Calc saved; see the README beside them. */
class PlainCopyTest {

  @TempDir Path folder;

  private Path original(String name) throws IOException {
    return Files.copy(Path.of("src/test/resources/saved-by-calc", name), folder.resolve(name));
  }

  private Path copy(Path original) throws Exception {
    Path copy = folder.resolve("copy-" + original.getFileName());
    PlainCopy.write(original, copy);
    return copy;
  }

  private static List<Cell> cells(Workbook workbook) {
    return workbook.sheets().stream().flatMap(Sheet::cells).toList();
  }

  private static boolean callsLab(Cell cell) {
    return cell.content() instanceof Content.Formula formula && formula.text().contains("LAB_");
  }

  private static Value value(Evaluation evaluation, Cell cell) {
    return ((Outcome.Known) evaluation.at(cell.address())).value();
  }

  @Nested
  class EveryCell {

    @ParameterizedTest
    @ValueSource(
        strings = {
          "lab-table.ods",
          "lab-table.xlsx",
          "faulty-lab-table.ods",
          "faulty-lab-table.xlsx",
          "names.ods",
          "good.ods",
          "good.xlsx",
          "roundtripped-without-extension.ods",
          "roundtripped-without-extension.xlsx"
        })
    void holdsTheRecalculatedValueAndNoLabFunction(String name) throws Exception {
      Path file = original(name);
      byte[] before = Files.readAllBytes(file);
      Workbook source = WorkbookFile.read(file);
      Evaluation expected = Evaluation.of(source, Catalogue.load());

      Workbook plain = WorkbookFile.read(copy(file));

      Evaluation found = Evaluation.of(plain, Catalogue.load());
      assertThat(cells(source)).filteredOn(PlainCopyTest::callsLab).isNotEmpty();
      assertThat(cells(plain)).noneMatch(PlainCopyTest::callsLab);
      for (Cell cell : cells(source)) {
        assertThat(shown(value(found, cell)))
            .as(cell.address().toString())
            .isEqualTo(shown(value(expected, cell)));
        if (!callsLab(cell) && !expected.dependsOnLab(cell.address())) {
          assertThat(plain.at(cell.address())).contains(cell);
        }
      }
      assertThat(file).hasBinaryContent(before);
    }

    /** An error has become the text of its name in an .ods file, which knows no errors. */
    private Object shown(Value value) {
      if (value instanceof Value.Fault fault) {
        return fault.reason();
      }
      return value instanceof Value.Text text ? text.text() : value;
    }
  }

  @Nested
  class FormulasOfOtherFunctions {

    @Test
    void stayAndStoreAValueThatFits() throws Exception {
      Path file =
          Grid.sheet("Records")
              .row(0.5, "=LAB_READING(A1,\"fine\",2)", new Grid.Stored("=B1*2", 99))
              .xlsx(folder.resolve("a.xlsx"));

      Workbook plain = WorkbookFile.read(copy(file));

      Content.Formula formula =
          (Content.Formula) plain.sheets().get(0).at(2, 0).orElseThrow().content();
      assertThat(plain.sheets().get(0).at(1, 0).orElseThrow().content())
          .isEqualTo(new Content.Number(0.25));
      assertThat(formula.text()).isEqualTo("B1*2");
      assertThat(formula.stored()).contains(new Content.Number(0.5));
    }
  }

  @Nested
  class CellsThatCannotBeCalculated {

    @Test
    void takeTheStoredValueAndAreNamed() throws Exception {
      Path file =
          Grid.sheet("Records")
              .row(new Grid.Stored("=LAB_READING(NOVEL(1))", 0.25), "=LAB_READING(NOVEL(1))")
              .xlsx(folder.resolve("a.xlsx"));

      PlainCopy written = PlainCopy.write(file, folder.resolve("b.xlsx"));

      Sheet plain = WorkbookFile.read(folder.resolve("b.xlsx")).sheets().get(0);
      assertThat(plain.at(0, 0).orElseThrow().content()).isEqualTo(new Content.Number(0.25));
      assertThat(plain.at(1, 0).orElseThrow().content()).isEqualTo(new Content.Error("#N/A"));
      assertThat(written.replaced()).isEqualTo(2);
      assertThat(written.notes())
          .containsExactly(
              "Records.A1: cannot be calculated here (the checker does not know the function"
                  + " NOVEL); the value that the file stores was taken",
              "Records.B1: cannot be calculated here (the checker does not know the function"
                  + " NOVEL); it became #N/A");
    }
  }

  @Nested
  class AnOdsFile {

    @Test
    void keepsEveryOtherPartByteForByte() throws Exception {
      Path file = original("lab-table.ods");

      try (ZipFile source = new ZipFile(file.toFile());
          ZipFile plain = new ZipFile(copy(file).toFile())) {
        assertThat(Collections.list(plain.entries()))
            .extracting(ZipEntry::getName)
            .containsExactlyElementsOf(
                Collections.list(source.entries()).stream().map(ZipEntry::getName).toList());
        assertThat(Collections.list(plain.entries()).get(0).getName()).isEqualTo("mimetype");
        for (ZipEntry entry : Collections.list(source.entries())) {
          ZipEntry copied = plain.getEntry(entry.getName());
          assertThat(copied.getMethod()).isEqualTo(entry.getMethod());
          if (!entry.getName().equals("content.xml")) {
            assertThat(plain.getInputStream(copied).readAllBytes())
                .as(entry.getName())
                .isEqualTo(source.getInputStream(entry).readAllBytes());
          }
        }
      }
    }
  }

  @Nested
  class NoCopyIsWritten {

    @Test
    void overAFile() throws Exception {
      Path file = original("good.ods");
      Path present = Files.writeString(folder.resolve("present.ods"), "mine");

      assertThatThrownBy(() -> PlainCopy.write(file, present))
          .isInstanceOf(FileAlreadyExistsException.class);
      assertThatThrownBy(() -> PlainCopy.write(file, file))
          .isInstanceOf(FileAlreadyExistsException.class);

      assertThat(present).hasContent("mine");
    }

    @Test
    void ofAnXlsFile() throws Exception {
      Path file = original("lab-table.xls");

      assertThatThrownBy(() -> copy(file))
          .isInstanceOf(UnreadableFileException.class)
          .hasMessage("an .xls workbook cannot be copied; save it as .xlsx or .ods first");
      assertThat(folder).isDirectoryNotContaining("glob:**copy-*");
    }

    /** POI copies the whole chain of calculation for each formula that leaves it. */
    @Test
    @Timeout(60)
    void thatTakesLongerThanTheLimit() throws Exception {
      Path file = folder.resolve("long.xlsx");
      try (XSSFWorkbook workbook = new XSSFWorkbook();
          OutputStream output = Files.newOutputStream(file)) {
        XSSFSheet sheet = workbook.createSheet("Spokes");
        for (int row = 0; row < 5_000; row++) {
          sheet.createRow(row).createCell(0).setCellFormula("LAB_READING(1)");
        }
        PackagePart part =
            workbook
                .getPackage()
                .createPart(
                    PackagingURIHelper.createPartName("/xl/calcChain.xml"),
                    XSSFRelation.CALC_CHAIN.getContentType());
        workbook
            .getPackagePart()
            .addRelationship(
                part.getPartName(), TargetMode.INTERNAL, XSSFRelation.CALC_CHAIN.getRelation());
        try (OutputStream chain = part.getOutputStream()) {
          chain.write(
              ("<calcChain xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">"
                      + "<c r=\"B1\" i=\"1\"/>".repeat(200_000)
                      + "</calcChain>")
                  .getBytes(StandardCharsets.UTF_8));
        }
        workbook.write(output);
      }
      Path copy = folder.resolve("copy-long.xlsx");
      Limits limits = Limits.DEFAULT.withTime(Duration.ofSeconds(10));

      assertThatThrownBy(() -> PlainCopy.write(file, copy, limits))
          .isInstanceOf(UnreadableFileException.class)
          .hasMessage("it takes longer than 10.0 s and was stopped");
      assertThat(folder).isDirectoryNotContaining("glob:**copy-*");
    }

    @Test
    void ofSomethingElse() throws Exception {
      Path file = Files.writeString(folder.resolve("a.ods"), "spokes");

      assertThatThrownBy(() -> copy(file)).isInstanceOf(UnreadableFileException.class);
      assertThat(folder).isDirectoryNotContaining("glob:**copy-*");
    }
  }
}
