package tenthmark.checker.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.profile.Profile;
import tenthmark.checker.report.FileChecker;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.report.Program;
import tenthmark.checker.rules.Finding;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.wording.CheckerTexts;
import tenthmark.checker.workbook.Grid;

/** Students and numbers are invented. */
class StudentPageTest {

  @TempDir Path folder;

  private static Grid table(String sheet) {
    return Grid.sheet(sheet).row("Quantity", "Value", "Unit", "Uncertainty", "Rationale");
  }

  private String html(Grid grid) {
    return html(FileChecker.load().check(grid.xlsx(folder.resolve("ada.xlsx"))));
  }

  private static String html(FileReport report) {
    return StudentPage.of(
        report, Profile.NONE, RuleCatalogue.load(), Feedback.NONE, CheckerTexts.english());
  }

  private Document page(Grid grid) {
    return Jsoup.parse(html(grid));
  }

  private static Grid faulty() {
    return table("Bench")
        .row("Crank arm", 172.5, null, 0.5, "Fine marks, two ends.")
        .row("Spoke", 262.5, "mm", null, "Fine marks, two ends.");
  }

  @Nested
  class Findings {

    @Test
    void standByTheirSheetWithCellAndEverythingThatHelps() {
      Document page = page(faulty());

      Element finding = page.selectFirst("article.finding");
      assertThat(page.select("h3").eachText()).containsExactly("Sheet Bench");
      assertThat(finding.selectFirst("h4").text()).isEqualTo("C2: error unit-missing");
      assertThat(finding.select("dt").eachText())
          .containsExactly("Found", "Expected", "Why it matters", "How to fix it");
      assertThat(finding.select("dd").eachText())
          .startsWith("the record \"Crank arm\" has no unit")
          .allSatisfy(text -> assertThat(text).isNotBlank());
    }

    @Test
    void sayWhatTheyCostWhereTheCourseGivesPoints() {
      FileReport report = FileChecker.load().check(faulty().xlsx(folder.resolve("ada.xlsx")));
      Finding first = report.findings().get(0);
      Finding graded =
          new Finding(
              first.rule(),
              first.cell(),
              List.of(),
              first.found(),
              first.expected(),
              0.5,
              List.of(),
              first.effects(),
              first.record(),
              Optional.empty());

      Element finding =
          Jsoup.parse(html(FileReport.checked(report.file(), report.contents(), List.of(graded))))
              .selectFirst("article.finding");

      assertThat(finding.select("dt").last().text()).isEqualTo("Points lost");
      assertThat(finding.select("dd").last().text()).isEqualTo("0.5");
    }

    @Test
    void areCountedAtTheTop() {
      assertThat(page(faulty()).selectFirst("header").text())
          .contains("Feedback on ada.xlsx", "2 errors, 0 warnings, 0 notes in 2 measurement");
    }

    @Test
    void areMissedKindlyWhereThereAreNone() {
      Document page = page(table("Bench").row("Spoke", 262.5, "mm", 0.5, "Fine marks, two ends."));

      assertThat(page.select(".finding")).isEmpty();
      assertThat(page.selectFirst(".kind").text()).startsWith("Well done");
    }

    @Test
    void areNotPraisedWhereNothingWasRecognised() {
      Document page = page(Grid.sheet("Notes").row("nothing here"));

      assertThat(page.selectFirst(".kind").text()).contains("no measurement record was recognised");
    }
  }

  @Test
  void showsTheRecordsAsTheyWereUnderstood() {
    Element row = page(faulty()).select("#records tbody tr").get(1);

    assertThat(row.select("td"))
        .extracting(Element::text)
        .containsExactly("Bench", "B3", "Spoke", "", "262.5", "", "mm", "");
  }

  @Test
  void saysWhatItsNumbersWereTakenForAndWhatWasNotRead() {
    Document page = page(faulty().row().row(null, 7.5).row(null, 8.5));

    assertThat(page.selectFirst("#records").text())
        .contains("taken for: 3 in records, 2 numbers not read.");
    assertThat(page.select("#records .scroll").last().select("td").eachText())
        .startsWith("Bench", "B5:B6");
  }

  @Test
  void saysWhatWasChecked() {
    assertThat(page(faulty()).selectFirst("#checked").text())
        .contains("Sheet Bench: 13 cells, of which 0 formulas.", "The convention is bench");
  }

  @Test
  void saysWhatItIsNotForAndWhichProgramWroteIt() {
    assertThat(page(faulty()).selectFirst("footer").text())
        .contains(Program.caution(CheckerTexts.english()), Program.stamp());
  }

  @Test
  void saysWhyAWorkbookCouldNotBeChecked() throws Exception {
    Path file = Files.writeString(folder.resolve("ben.xlsx"), "no workbook");

    Document page = Jsoup.parse(html(FileChecker.load().check(file)));

    assertThat(page.selectFirst("main").text()).contains("not a workbook", "save it again");
  }

  @Test
  void isTheSameEveryTime() {
    assertThat(html(faulty())).isEqualTo(html(faulty()));
  }

  @Test
  void namesNoFolderOfTheInstructor() {
    assertThat(html(faulty())).doesNotContain(folder.toString(), folder.getFileName().toString());
  }

  @Nested
  class WhatAStudentTypes {

    @ParameterizedTest
    @ValueSource(
        strings = {
          "<script>alert(1)</script>",
          "\"><img src=x onerror=alert(1)>",
          "' onmouseover='alert(1)",
          "</title></style><svg onload=alert(1)>",
          "<a href=\"javascript:alert(1)\">x</a>",
          "<!-- --><iframe src=//example.org></iframe>",
          "&lt;b&gt; &amp; ]]>"
        })
    void isShownAndNeverRun(String text) {
      Document page = page(table("Bench").row(text, 172.5, text, null, text));

      assertThat(page.select("script, img, svg, iframe, [onload], [onerror], [onmouseover]"))
          .isEmpty();
      assertThat(page.select("a[href]").eachAttr("href")).allMatch(link -> link.startsWith("#"));
      assertThat(page.select("style")).hasSize(1);
      assertThat(page.select("#records td").get(2).wholeText()).isEqualTo(text);
    }

    @Test
    void asASheetNameIsShownAndNeverRun() {
      Document page =
          page(table("\"><b id='x'>&").row("Crank arm", 172.5, null, 0.5, "Fine marks."));

      assertThat(page.selectFirst("h3").text()).isEqualTo("Sheet \"><b id='x'>&");
      assertThat(page.select("b")).isEmpty();
    }
  }

  @Nested
  class Itself {

    @Test
    void isOneFileWithoutScriptOrRequest() {
      String html = html(faulty());

      assertThat(Jsoup.parse(html).select("[src], link, script, base, form, object, embed"))
          .isEmpty();
      assertThat(html).doesNotContain("url(", "@import", "http:", "https:");
    }

    @Test
    void linksOnlyToPlacesThatExist() {
      Document page = page(faulty());

      assertThat(page.select("a").eachAttr("href"))
          .startsWith("#content")
          .allSatisfy(link -> assertThat(page.select(link)).hasSize(1));
    }

    @Test
    void hasALanguageATitleAndHeadingsWithoutGaps() {
      Document page = page(faulty());
      int last = 0;

      assertThat(page.selectFirst("html").attr("lang")).isEqualTo("en");
      assertThat(page.title()).isEqualTo("Feedback on ada.xlsx");
      for (Element heading : page.select("h1, h2, h3, h4")) {
        int level = heading.tagName().charAt(1) - '0';
        assertThat(level).isLessThanOrEqualTo(last + 1);
        last = level;
      }
    }
  }
}
