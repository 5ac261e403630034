package tenthmark.addin.notice;

import static com.sun.star.uno.UnoRuntime.queryInterface;
import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.frame.DispatchResultEvent;
import com.sun.star.frame.DispatchResultState;
import com.sun.star.frame.XInfobarProvider;
import com.sun.star.sheet.XSheetCellRange;
import com.sun.star.util.XProtectable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tenthmark.addin.office.Office;
import tenthmark.addin.office.OfficeExtension;
import tenthmark.addin.office.Patience;
import tenthmark.addin.office.Profile;
import tenthmark.addin.office.Workbook;
import tenthmark.addin.office.Workbook.Format;

/** The notice in a workbook whose functions somebody typed by hand. */
@ExtendWith(OfficeExtension.class)
class NoticeIT {

  private static final String BAR = "tenthmark.notice";
  private static final String FUNCTION = "=TENTHMARK.LAB.READING(B2;\"fine\";2)";

  private Office office;
  private Workbook workbook;

  @BeforeEach
  void type(Office running) throws Exception {
    office = running;
    workbook = office.show();
    workbook.set("B1", "Division").set("C1", "Reading").set("B2", 1);
  }

  @AfterEach
  void close() throws Exception {
    workbook.close();
  }

  @Nested
  class IsOffered {

    @ParameterizedTest
    @EnumSource
    void whenTheWorkbookIsSaved(Format format) throws Exception {
      workbook.set("C2", FUNCTION);
      assertThat(bars(workbook).hasInfobar(BAR)).isFalse();
      workbook.saveAs("offered", format);
      awaitOffer(workbook);
    }

    @Test
    void onceForEachDocument() throws Exception {
      workbook.set("C2", FUNCTION).saveAs("once", Format.ODS);
      awaitOffer(workbook);
      bars(workbook).removeInfobar(BAR);
      workbook.set("B2", 2).saveAgain();
      thereIsNone();
    }

    @Test
    void toNobodyWhoUsesNoneOfTheFunctions() throws Exception {
      workbook.set("C2", "=SQRT(B2)").saveAs("none", Format.ODS);
      thereIsNone();
    }

    @Test
    void toNobodyWhoHasOne() throws Exception {
      workbook.select("A5").dispatch("tenthmark:new-table");
      workbook.saveAs("table", Format.ODS);
      thereIsNone();
    }

    /**
     * Documents are told of in the order in which they were saved: another one's offer is later.
     */
    private void thereIsNone() throws Exception {
      try (Workbook another = office.show().set("A1", FUNCTION)) {
        another.saveAs("another", Format.ODS);
        awaitOffer(another);
      }
      assertThat(bars(workbook).hasInfobar(BAR)).isFalse();
    }
  }

  @Nested
  class IsAdded {

    @Test
    void belowAllThatIsOnTheSheetAsOneStep() throws Exception {
      workbook.set("C2", FUNCTION);
      done();
      assertThat(workbook.cursor()).isEqualTo("B4");
      assertThat(workbook.formula("B4"))
          .startsWith(
              "=IF(ISERROR(TENTHMARK.LAB.HANDTIMED());\"The LAB functions are missing here");
      assertThat(workbook.shown("B4")).isEmpty();
      assertThat(workbook.undo().getCurrentUndoActionTitle()).isEqualTo("Add Notice for Others");
      workbook.undo().undo();
      assertThat(workbook.formula("B4")).isEmpty();
    }

    @Test
    void onTheFirstSheetThatUsesAFunction() throws Exception {
      workbook.addSheet("Notes").addSheet("Data").set("Data.A3", FUNCTION);
      done();
      assertThat(workbook.formula("Data.A5")).contains("ISERROR");
    }

    @Test
    void andTheOfferIsGone() throws Exception {
      workbook.set("C2", FUNCTION).saveAs("added", Format.ODS);
      awaitOffer(workbook);
      done();
      assertThat(bars(workbook).hasInfobar(BAR)).isFalse();
    }

    @Test
    void andTheCheckerTakesItForNoRecord() throws Exception {
      workbook.set("A1", "Quantity").set("A2", "Foam grip").set("C2", FUNCTION);
      Object before = workbook.dispatch("tenthmark:check").Result;
      done();
      assertThat(workbook.dispatch("tenthmark:check").Result).isEqualTo(before);
    }

    private void done() throws Exception {
      DispatchResultEvent result = add();
      assertThat(result.State).isEqualTo(DispatchResultState.SUCCESS);
      assertThat(result.Result)
          .isEqualTo(
              "The notice is in the selected cell, which shows nothing as long as the functions"
                  + " work. Save the workbook again.");
    }
  }

  @Nested
  class IsRefused {

    @Test
    void whereThereIsOne() throws Exception {
      workbook.set("C2", FUNCTION);
      add();
      isRefused("This workbook has its notice already.");
    }

    @Test
    void whereNoneOfTheFunctionsIsUsed() throws Exception {
      isRefused("This workbook uses no LAB function, so it needs no notice.");
    }

    @Test
    void onAProtectedSheet() throws Exception {
      workbook.set("C2", FUNCTION);
      queryInterface(
              XProtectable.class,
              queryInterface(XSheetCellRange.class, workbook.range("A1")).getSpreadsheet())
          .protect("");
      isRefused("This sheet is protected. Unprotect it or go to another sheet.");
    }

    @Test
    void whereTheSheetIsFullToItsEnd() throws Exception {
      workbook.set("C2", FUNCTION).set("A1048576", 1);
      isRefused("The notice does not fit here: the sheet is full to its end.");
    }

    private void isRefused(String sentence) throws Exception {
      DispatchResultEvent result = add();
      assertThat(result.State).isEqualTo(DispatchResultState.FAILURE);
      assertThat(result.Result).isEqualTo(sentence);
    }
  }

  @Nested
  class Speaks {

    @ParameterizedTest
    @EnumSource
    void whereTheExtensionIsMissing(Format format) throws Exception {
      speaksIn(Profile.plain(), format);
    }

    @ParameterizedTest
    @EnumSource
    void whereJavaIsMissing(Format format) throws Exception {
      speaksIn(Profile.withExtension().withoutJava(), format);
    }

    private void speaksIn(Profile profile, Format format) throws Exception {
      workbook.set("C2", FUNCTION);
      add();
      try (Office elsewhere = Office.start(profile);
          Workbook opened = elsewhere.open(workbook.save("elsewhere", format))) {
        opened.recalculateHard();
        assertThat(opened.shown("B4"))
            .isEqualTo(
                "The LAB functions are missing here: they need LibreOffice Calc with the extension"
                    + " tenthmark.oxt, and Java 17 or newer switched on in Tools, Options,"
                    + " LibreOffice, Advanced.");
      }
    }
  }

  private DispatchResultEvent add() throws Exception {
    return workbook.dispatch("tenthmark:add-notice");
  }

  private static void awaitOffer(Workbook saved) throws Exception {
    Patience.until("the offer of a notice", () -> bars(saved).hasInfobar(BAR));
  }

  private static XInfobarProvider bars(Workbook window) {
    return queryInterface(XInfobarProvider.class, window.frame().getController());
  }
}
