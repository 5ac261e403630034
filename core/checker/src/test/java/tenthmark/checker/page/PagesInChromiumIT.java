package tenthmark.checker.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.output.ReportFolder;
import tenthmark.checker.report.FileChecker;
import tenthmark.checker.report.FileReport;
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

  private static void write(List<Path> files) throws IOException {
    FileChecker checker = FileChecker.load();
    ReportFolder reports = new ReportFolder(folder.resolve("out"), files, checker);
    List<FileReport> all = new ArrayList<>();
    for (Path file : files) {
      all.add(checker.check(file));
      reports.write(all.get(all.size() - 1));
    }
    reports.writeClass(all);
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
    "workbooks/ada.xlsx/feedback.html, 1280"
  })
  void fitTheWidthOfTheWindow(String page, int width) throws Exception {
    open(page, width);
    browser.evaluate("document.querySelectorAll('details').forEach(d => d.open = true)");

    JsonNode widths = browser.evaluate("[innerWidth, document.documentElement.scrollWidth]");

    assertThat(widths.get(0).asInt()).isEqualTo(width);
    assertThat(widths.get(1).asInt()).isLessThanOrEqualTo(width);
  }

  @ParameterizedTest
  @ValueSource(strings = {"class.html", "workbooks/ada.xlsx/feedback.html"})
  void askForNothingButThemselves(String page) throws Exception {
    Path file = open(page, 1280);

    assertThat(browser.requests()).containsExactly(file.toUri().toString());
  }

  @ParameterizedTest
  @ValueSource(strings = {"class.html", "workbooks/ada.xlsx/feedback.html"})
  void areReachedByKeyboardInTheOrderOfThePageWithTheFocusShown(String page) throws Exception {
    open(page, 360);
    int stops =
        browser
            .evaluate(
                "(window.stops = [...document.querySelectorAll("
                    + "'a[href], summary, [tabindex=\"0\"]')]"
                    + ".filter(e => e.tagName == 'SUMMARY' || e.checkVisibility())).length")
            .asInt();
    assertThat(stops).isGreaterThan(5);

    for (int stop = 0; stop < stops; stop++) {
      browser.press("Tab", TAB);
      JsonNode focus =
          browser.evaluate(
              "(() => { const e = document.activeElement, r = e.getBoundingClientRect();"
                  + " return {at: stops.indexOf(e), outline: getComputedStyle(e).outlineStyle,"
                  + " seen: r.bottom > 0 && r.top < innerHeight}; })()");
      assertThat(focus.get("at").asInt()).isEqualTo(stop);
      assertThat(focus.get("outline").asText()).isNotEqualTo("none");
      assertThat(focus.get("seen").asBoolean()).isTrue();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"class.html", "workbooks/ada.xlsx/feedback.html"})
  void beginWithALinkToTheContent(String page) throws Exception {
    open(page, 1280);

    browser.press("Tab", TAB);
    assertThat(browser.evaluate("document.activeElement.textContent").asText())
        .isEqualTo("Skip to the content");
    browser.press("Enter", ENTER);

    assertThat(browser.evaluate("document.activeElement.id").asText()).isEqualTo("content");
  }

  /** Contrast as WCAG 2.2, success criterion 1.4.3, defines it, of every text as it is drawn. */
  @ParameterizedTest
  @ValueSource(strings = {"class.html", "workbooks/ada.xlsx/feedback.html"})
  void showTextWithEnoughContrast(String page) throws Exception {
    open(page, 1280);

    JsonNode contrasts =
        browser.evaluate(
            """
            (() => {
              const numbers = colour => colour.match(/[0-9.]+/g).map(Number);
              const channel = c => (c /= 255) <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
              const light = ([r, g, b]) =>
                0.2126 * channel(r) + 0.7152 * channel(g) + 0.0722 * channel(b);
              const behind = e => {
                for (; e; e = e.parentElement) {
                  const c = numbers(getComputedStyle(e).backgroundColor);
                  if (c.length == 3 || c[3] > 0) return c;
                }
                return [255, 255, 255];
              };
              return [...document.querySelectorAll('body *')]
                .filter(e => [...e.childNodes].some(n => n.nodeType == 3 && n.data.trim()))
                .map(e => {
                  const style = getComputedStyle(e);
                  const own = e.namespaceURI.endsWith('svg') ? style.fill : style.color;
                  const pair = [light(numbers(own)), light(behind(e))].sort((a, b) => b - a);
                  return (pair[0] + 0.05) / (pair[1] + 0.05);
                });
            })()
            """);

    assertThat(contrasts).hasSizeGreaterThan(30);
    assertThat(contrasts).allMatch(contrast -> contrast.asDouble() >= 4.5);
  }
}
