package tenthmark.checker.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tenthmark.checker.cli.CommandLines;
import tenthmark.checker.remark.Remark;
import tenthmark.checker.remark.RemarksFile;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.workbook.Grid;

/** The instructor's buttons in a real headless Chromium. Students and numbers are invented. */
class RemarksInChromiumIT {

  @TempDir static Path folder;

  private static Browser browser;
  private static Path page;

  @BeforeAll
  static void aSection() throws Exception {
    Path workbooks = Files.createDirectory(folder.resolve("lab"));
    for (String id : List.of("10001", "10002")) {
      Grid.sheet("Bench")
          .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
          .row("Crank arm", 172.5, null, 0.5, "Fine marks, two ends.")
          .xlsx(workbooks.resolve(id + ".xlsx"));
    }
    Path profile = Files.writeString(folder.resolve("lab.yaml"), "submissions: \"{id}\"\n");
    Path remarks =
        Files.writeString(
            folder.resolve("remarks.csv"),
            RemarksFile.headings() + "10002,,,0.25,\"Late, by \"\"a day\"\"\"\r\n");
    StringWriter said = new StringWriter();
    CommandLines.run(
        new PrintWriter(said),
        "check",
        workbooks,
        "--profile",
        profile,
        "--remarks",
        remarks,
        "--out",
        folder.resolve("reports"));
    page = folder.resolve("reports/students.html");
    browser = Browser.start(folder.resolve("profile"));
  }

  @AfterAll
  static void closeTheBrowser() {
    if (browser != null) {
      browser.close();
    }
  }

  @BeforeEach
  void open() throws Exception {
    browser.open(page, 360);
    browser.evaluate(
        "(() => { const make = URL.createObjectURL; URL.createObjectURL ="
            + " (blob) => { window.written = blob; return make.call(URL, blob); }; })()");
  }

  private static String said() throws Exception {
    return browser.evaluate("document.getElementById('remarks-said').textContent").asText();
  }

  @Test
  void writeWhatIsFilledInAndWhatIsThere() throws Exception {
    browser.evaluate(
        "(() => { const box = document.querySelector(\".remark[data-rule='unit-missing']\");"
            + " box.querySelector('button.waive').click();"
            + " box.querySelector('[name=because]').value = 'Said on the bench.';"
            + " document.getElementById('remarks-write').click(); })()");

    assertThat(said()).startsWith("2 remarks were written");
    browser.evaluate("window.written.text().then((text) => { window.table = text; })");
    String table = browser.evaluate("window.table").asText();
    Path file = Files.writeString(folder.resolve("downloaded.csv"), table);
    assertThat(RemarksFile.read(file, RuleCatalogue.load().ids()))
        .extracting(Remark::student, one -> one.rule().orElse(""), Remark::because)
        .containsExactlyInAnyOrder(
            tuple("10001", "unit-missing", "Said on the bench."),
            tuple("10002", "", "Late, by \"a day\""));
  }

  @Test
  void askForTheSentenceThatIsMissing() throws Exception {
    browser.evaluate(
        "(() => { document.querySelector('.remark button.waive').click();"
            + " document.getElementById('remarks-write').click(); })()");

    assertThat(said()).startsWith("A remark needs points");
    assertThat(browser.evaluate("document.activeElement.name").asText()).isEqualTo("because");
    assertThat(browser.evaluate("typeof window.written").asText()).isEqualTo("undefined");
  }

  @Test
  void fetchNothingAndFitIntoANarrowWindow() throws Exception {
    assertThat(browser.requests()).allMatch(address -> address.startsWith("file:"));
    assertThat(browser.evaluate("document.documentElement.scrollWidth <= 360").asBoolean())
        .isTrue();
  }
}
