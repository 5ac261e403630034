package tenthmark.checker.output;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import tenthmark.checker.report.Contents;
import tenthmark.checker.report.FileChecker;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.report.JsonReport;
import tenthmark.checker.wording.CheckerTexts;
import tenthmark.checker.workbook.Grid;
import tenthmark.measurement.wording.Sentences;

/** Students and numbers are invented. */
class ClassReportsTest {

  private static final Sentences ENGLISH = CheckerTexts.english();

  @TempDir Path folder;

  private FileReport faulty(String quantity) {
    return FileChecker.load()
        .check(
            Grid.sheet("Bench")
                .row("Quantity", "Symbol", "Value", "Unit", "Uncertainty", "Rationale")
                .row(quantity, "L", 172.5, null, 0.5, "Fine marks, two ends.")
                .row("Offset", "d", 0.1, "mm", 0.5, "Fine marks, two ends.")
                .xlsx(folder.resolve("ada.xlsx")));
  }

  private static FileReport unchecked() {
    return FileReport.unchecked(Path.of("=ben.ods"), "the file is damaged, or \"cut short\"");
  }

  @Nested
  class InAGradebook {

    private String csv(FileReport... reports) {
      return Gradebook.write(List.of(reports), file -> file.getFileName().toString());
    }

    @Test
    void isOneLineForEachWorkbook() {
      assertThat(csv(faulty("Crank arm"), unchecked()))
          .isEqualTo(
              "\"workbook\",\"checked\",\"records\",\"numbers not"
                  + " read\",\"errors\",\"warnings\",\"notes\",\"points lost\",\"problem\"\r\n"
                  + "\"ada.xlsx\",\"yes\",\"2\",\"0\",\"1\",\"0\",\"1\",\"0\",\"\"\r\n"
                  + "\"'=ben.ods\",\"no\",\"0\",\"0\",\"0\",\"0\",\"0\",\"0\",\"the file is"
                  + " damaged, or \"\"cut short\"\"\"\r\n");
    }

    @Test
    void aWorkbookInWhichNothingWasReadWasNotChecked() {
      FileReport unread =
          FileChecker.load()
              .check(
                  Grid.sheet("Bench")
                      .row("A")
                      .row(172.5)
                      .row(262.5)
                      .xlsx(folder.resolve("b.xlsx")));

      assertThat(csv(unread).lines().toList().get(1))
          .isEqualTo(
              "\"b.xlsx\",\"no\",\"0\",\"2\",\"1\",\"0\",\"1\",\"0\","
                  + "\"no measurement record was recognised\"");
    }

    @ParameterizedTest
    @CsvSource({"=1+1.ods", "+1.ods", "-1.ods", "@SUM(A1).ods", "＝1.ods"})
    void noNameIsAFormula(String name) {
      FileReport report = FileReport.checked(Path.of(name), Contents.NONE, List.of());

      assertThat(csv(report).lines().toList().get(1)).startsWith("\"'" + name + "\"");
    }
  }

  @Nested
  class AsTests {

    private Document xml(FileReport... reports) throws Exception {
      Path file =
          Files.writeString(
              folder.resolve("junit.xml"),
              TestReport.write(
                  List.of(reports), FileChecker.load().rules(), ENGLISH, path -> path.toString()));
      return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile());
    }

    private static List<Element> all(Document document, String name) {
      List<Element> found = new ArrayList<>();
      for (int i = 0; i < document.getElementsByTagName(name).getLength(); i++) {
        found.add((Element) document.getElementsByTagName(name).item(i));
      }
      return found;
    }

    @Test
    void isASuiteForEachWorkbookWithACaseForEachRule() throws Exception {
      Document document = xml(faulty("Crank arm"), unchecked());

      List<Element> suites = all(document, "testsuite");
      int rules = FileChecker.load().rules().rules().size();
      assertThat(suites).hasSize(2);
      assertThat(suites.get(0).getAttribute("tests")).isEqualTo(String.valueOf(rules));
      assertThat(suites.get(0).getElementsByTagName("testcase").getLength()).isEqualTo(rules);
      assertThat(suites.get(0).getAttribute("failures")).isEqualTo("1");
      assertThat(suites.get(1).getAttribute("errors")).isEqualTo("1");
      assertThat(all(document, "error").get(0).getAttribute("message")).contains("\"cut short\"");
    }

    @Test
    void aNoteIsNoFailure() throws Exception {
      Document document = xml(faulty("Crank arm"));

      assertThat(all(document, "failure"))
          .singleElement()
          .satisfies(
              failure ->
                  assertThat(((Element) failure.getParentNode()).getAttribute("name"))
                      .isEqualTo("unit-missing"));
      assertThat(all(document, "system-out")).hasSize(1);
    }

    @Test
    void whateverAStudentTypesStaysText() throws Exception {
      Document document = xml(faulty("</failure><testcase name=\"x\"/>]]>&\u0007<![CDATA["));

      assertThat(all(document, "failure").get(0).getTextContent())
          .contains("</failure><testcase name=\"x\"/>]]>&");
      assertThat(all(document, "testcase")).hasSize(FileChecker.load().rules().rules().size());
    }
  }

  @Nested
  class AsJson {

    private final Schema schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(read());

    private static JsonNode read() {
      try (InputStream file = JsonReport.class.getResourceAsStream("findings.schema.json")) {
        return new ObjectMapper().readTree(file);
      } catch (IOException problem) {
        throw new AssertionError(problem);
      }
    }

    private List<?> errors(String json) throws IOException {
      return schema.validate(new ObjectMapper().readTree(json));
    }

    @Test
    void followsThePublishedSchema() throws Exception {
      assertThat(errors(JsonReport.write(List.of(faulty("Crank arm"), unchecked()), ENGLISH)))
          .isEmpty();
      assertThat(errors(JsonReport.write(List.of(), ENGLISH))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "\"checked\" : true | \"checked\" : false",
          "\"format\" : 1 | \"format\" : 2",
          "\"severity\" : \"error\" | \"severity\" : \"grave\"",
          "\"cell\" : \"D2\" | \"cell\" : \"2D\"",
          "\"rule\" : | \"colour\" :"
        })
    void theSchemaRefusesWhatIsOtherwise(String written, String changed) throws Exception {
      String json = JsonReport.write(List.of(faulty("Crank arm")), ENGLISH);

      assertThat(json).contains(written);
      assertThat(errors(json.replace(written, changed))).isNotEmpty();
    }
  }
}
