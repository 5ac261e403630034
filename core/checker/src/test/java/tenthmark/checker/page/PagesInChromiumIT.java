package tenthmark.checker.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.output.ReadingFolder;
import tenthmark.checker.output.ReportFolder;
import tenthmark.checker.report.FileChecker;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.rules.Inspection;
import tenthmark.checker.wording.CheckerTexts;
import tenthmark.checker.workbook.Grid;

/** The pages in a real headless Chromium. Students and numbers are invented. */
class PagesInChromiumIT {

  private static final int TAB = 9;
  private static final int ENTER = 13;
  private static final String LONG_NAME = "Length".repeat(40);

  @TempDir static Path folder;

  private static Browser browser;

  @BeforeAll
  static void aClass() throws Exception {
    double[] data = {172.5, 262.4, 131.2, 123.4, 124.1, 122.9};
    List<Path> files = new ArrayList<>();
    for (String name : List.of("ada", "ben", "cleo")) {
      Grid grid =
          Grid.sheet("Bench")
              .row("Quantity", "Symbol", "Value", "Unit", "Uncertainty", "Rationale");
      for (int i = 0; i < data.length; i++) {
        grid.row(i == 0 ? LONG_NAME : "Grip " + i, "L" + i, data[i], null, 0.5, "Fine marks.");
      }
      files.add(grid.xlsx(folder.resolve(name + ".xlsx")));
    }
    write(files);
    browser = Browser.start(folder.resolve("profile"));
  }

  private static void write(List<Path> files) throws Exception {
    FileChecker checker = FileChecker.load();
    ReadingFolder readings = new ReadingFolder(folder.resolve("out/readings"), files);
    for (Path file : files) {
      checker.read(file, file, inspection -> draw(file, inspection, readings));
    }
    ReportFolder reports =
        new ReportFolder(folder.resolve("out"), files, checker, CheckerTexts.english());
    List<FileReport> all = new ArrayList<>();
    for (Path file : files) {
      all.add(checker.check(file));
      reports.write(all.get(all.size() - 1));
    }
    reports.writeClass(all);
  }

  private static void draw(Path file, Inspection inspection, ReadingFolder readings) {
    String page = ReadingPage.of("ada.xlsx", inspection, CheckerTexts.english());
    assertThat(readings.write(file, Optional.of(page))).isEmpty();
  }

  @AfterAll
  static void closeTheBrowser() throws Exception {
    if (browser != null) {
      browser.close();
    }
  }

  private static Path open(String page, int width) throws Exception {
    Path file = folder.resolve("out").resolve(page);
    assertThat(Files.size(file)).isPositive();
    browser.open(file, width);
    return file;
  }

  @ParameterizedTest
  @CsvSource({
    "class.html, 360",
    "class.html, 1280",
    "workbooks/ada.xlsx/feedback.html, 360",
    "workbooks/ada.xlsx/feedback.html, 1280",
    "readings/ada.xlsx.html, 360",
    "readings/ada.xlsx.html, 1280"
  })
  void fitTheWidthOfTheWindow(String page, int width) throws Exception {
    open(page, width);
    browser.evaluate("document.querySelectorAll('details').forEach(d => d.open = true)");

    JsonNode widths = browser.evaluate("[innerWidth, document.documentElement.scrollWidth]");

    assertThat(widths.get(0).asInt()).isEqualTo(width);
    assertThat(widths.get(1).asInt()).isLessThanOrEqualTo(width);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"class.html", "workbooks/ada.xlsx/feedback.html", "readings/ada.xlsx.html"})
  void askForNothingButThemselves(String page) throws Exception {
    Path file = open(page, 1280);

    assertThat(browser.requests()).containsExactly(file.toUri().toString());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"class.html", "workbooks/ada.xlsx/feedback.html", "readings/ada.xlsx.html"})
  void areReachedByKeyboardInTheOrderOfThePageWithTheFocusShown(String page) throws Exception {
    open(page, 360);
    assertThat(browser.tabThrough()).hasSizeGreaterThan(3).doesNotContain(false);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"class.html", "workbooks/ada.xlsx/feedback.html", "readings/ada.xlsx.html"})
  void beginWithALinkToTheContent(String page) throws Exception {
    open(page, 1280);

    browser.press("Tab", TAB);
    assertThat(browser.evaluate("document.activeElement.textContent").asText())
        .isEqualTo("Skip to the content");
    browser.press("Enter", ENTER);

    assertThat(browser.evaluate("document.activeElement.id").asText()).isEqualTo("content");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"class.html", "workbooks/ada.xlsx/feedback.html", "readings/ada.xlsx.html"})
  void showTextWithEnoughContrast(String page) throws Exception {
    open(page, 1280);

    JsonNode contrasts = browser.contrasts();

    assertThat(contrasts).hasSizeGreaterThan(30);
    assertThat(contrasts).allMatch(contrast -> contrast.asDouble() >= 4.5);
  }
}
