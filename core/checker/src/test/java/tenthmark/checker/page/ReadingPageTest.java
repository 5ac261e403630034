package tenthmark.checker.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.course.Course;
import tenthmark.checker.rules.Inspection;
import tenthmark.checker.wording.CheckerTexts;
import tenthmark.checker.workbook.Grid;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.wording.Language;

/** Students and numbers are invented. */
class ReadingPageTest {

  private static Document page(Grid grid) {
    return page(grid, Language.ENGLISH);
  }

  private static Document page(Grid grid, Language language) {
    Inspection inspection = Inspection.of(grid.workbook(), Catalogue.load(), Course.PLAIN);
    return Jsoup.parse(ReadingPage.of("ada.ods", inspection, CheckerTexts.in(language)));
  }

  private static Grid bench() {
    return Grid.sheet("Bench")
        .row("Ada, Tuesday")
        .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
        .row("Crank arm", 172.5, "mm", 0.5, "Fine marks, two ends.")
        .row("Spoke", 262.5, "mm", 0.5, "Fine marks, two ends.")
        .row()
        .row()
        .row(null, 7.25);
  }

  /** The cell that is drawn in a column and the row with this number. */
  private static Element cell(Document page, String column, int row) {
    Element table = page.selectFirst("table.grid");
    int index = table.select("thead th").eachText().indexOf(column);
    Element line =
        table.select("tbody tr").stream()
            .filter(tr -> tr.selectFirst("th").text().equals(String.valueOf(row)))
            .findFirst()
            .orElseThrow();
    return line.child(index);
  }

  @Nested
  class ACell {

    @Test
    void saysWhichPartOfWhichRecordItWasTakenFor() {
      Document page = page(bench());

      assertThat(cell(page, "B", 3).select("span").eachText()).containsExactly("172.5", "1: value");
      assertThat(cell(page, "D", 4).select("span").eachText())
          .containsExactly("0.5", "2: uncertainty");
      assertThat(page.select(".records li").eachText())
          .containsExactly("1: \"Crank arm\", value in B3", "2: \"Spoke\", value in B4");
    }

    @Test
    void thatWasNotReadBearsTheNumberOfItsReason() {
      Document page = page(bench());

      assertThat(cell(page, "B", 7).className()).isEqualTo("mark-unread");
      assertThat(cell(page, "B", 7).selectFirst(".taken").text()).isEqualTo("not read (1)");
      assertThat(page.selectFirst("#unread ol > li").text())
          .startsWith("nothing on the sheet says what this number is")
          .endsWith("Sheet Bench: B7");
    }

    @Test
    void withoutMeaningHasNoMark() {
      Element title = cell(page(bench()), "A", 1);

      assertThat(title.text()).isEqualTo("Ada, Tuesday");
      assertThat(title.className()).isEmpty();
    }

    @Test
    void withAFormulaShowsWhatItGives() {
      Document page = page(Grid.sheet("Bench").row(2, "=A1*3.5"));

      assertThat(cell(page, "B", 1).select("span").eachText()).containsExactly("7", "calculated");
    }
  }

  @Nested
  class AGrid {

    @Test
    void hasHeadersForItsColumnsAndRows() {
      Element table = page(bench()).selectFirst("table.grid");

      assertThat(table.select("thead th[scope=col]").eachText())
          .containsExactly("Row", "A", "B", "C", "D", "E");
      assertThat(table.select("tbody th[scope=row]").eachText())
          .containsExactly("1", "2", "3", "4", "…", "7");
      assertThat(table.selectFirst("caption").text()).isEqualTo("What was read on the sheet Bench");
    }

    @Test
    void namesTheRowsThatHoldNothing() {
      assertThat(page(bench()).select("td[colspan]").eachText())
          .containsExactly("Rows 5 to 6 hold nothing.");
    }

    @Test
    void isCutWhereASheetIsLongAndSaysSo() {
      Grid grid = Grid.sheet("Long");
      for (int row = 0; row < 1000; row++) {
        grid.row(row, row + 0.5);
      }

      Document page = page(grid);

      assertThat(page.select("tbody tr")).hasSize(300);
      assertThat(page.selectFirst("#sheet-1").text())
          .contains("drawn are the first 300 of 1000 rows and the first 2 of 2 columns");
    }

    @Test
    void isCutWhereAWorkbookHasManySheets() {
      Grid grid = Grid.sheet("First");
      for (int sheet = 0; sheet < 12; sheet++) {
        Object[] row = new Object[40];
        java.util.Arrays.fill(row, 1);
        for (int i = 0; i < 200; i++) {
          grid.row(row);
        }
        grid.andSheet("Sheet " + sheet);
      }

      Document page = page(grid);

      assertThat(page.select("table.grid tbody td").size()).isLessThanOrEqualTo(12_000);
      assertThat(page.text()).contains("drawn are the first 0 of 200 rows");
    }
  }

  @Test
  void aHiddenSheetIsNamedAndNotDrawn() {
    Document page = page(bench().andHiddenSheet("Lists").row(1, 2, 3));

    assertThat(page.select("table.grid")).hasSize(1);
    assertThat(page.selectFirst("#sheet-2").text()).contains("hidden and was left alone");
  }

  @Test
  void explainsEveryMarkInWords() {
    assertThat(page(bench()).select(".legend .mark"))
        .hasSize(Mark.values().length)
        .allMatch(mark -> !mark.text().isBlank());
  }

  @Test
  void linksOnlyToPlacesThatExist() {
    Document page = page(bench());

    assertThat(page.select("a").eachAttr("href"))
        .startsWith("#content")
        .allSatisfy(link -> assertThat(page.select(link)).hasSize(1));
  }

  @ParameterizedTest
  @EnumSource
  void isWrittenInEachLanguage(Language language) {
    Document page = page(bench(), language);

    assertThat(page.selectFirst("html").attr("lang")).isEqualTo(language.code());
    assertThat(page.selectFirst("h1").text())
        .isEqualTo(CheckerTexts.in(language).say("read.title", "ada.ods"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<script>alert(1)</script>",
        "\"><img src=x onerror=alert(1)>",
        "</title></style><svg onload=alert(1)>"
      })
  void showsWhatAStudentTypesAndNeverRunsIt(String text) {
    Document page =
        page(Grid.sheet("x" + text).row("Quantity", "Value", "Uncertainty").row(text, 172.5, 0.5));

    assertThat(page.select("script, img, svg, [onload], [onerror]")).isEmpty();
    assertThat(cell(page, "A", 2).selectFirst(".shown").wholeText()).isEqualTo(text);
  }
}
