package tenthmark.addin.checking;

import static com.sun.star.uno.UnoRuntime.queryInterface;
import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.container.XIndexAccess;
import com.sun.star.frame.DispatchResultEvent;
import com.sun.star.frame.DispatchResultState;
import com.sun.star.frame.XModel;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XSheetAnnotations;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.text.XSimpleText;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import tenthmark.addin.office.Office;
import tenthmark.addin.office.OfficeExtension;
import tenthmark.addin.office.Patience;
import tenthmark.addin.office.WindowOnScreen;
import tenthmark.addin.office.Workbook;

/** The shipped checker, run from the menu on the open document. */
@ExtendWith(OfficeExtension.class)
class CheckIT {

  private static final Path SAMPLES = Path.of("../sample-workbooks/workbooks");

  private Office office;
  private Workbook workbook;

  @BeforeEach
  void open(Office running) throws Exception {
    office = running;
    workbook = office.open(SAMPLES.resolve("first-lab-table-faulty.ods"));
  }

  @AfterEach
  void close() throws Exception {
    workbook.close();
  }

  @Nested
  class Findings {

    /** Which faults the sample holds is said in FirstLabTableTest of the samples. */
    @Test
    void areThoseOfTheOpenDocument() throws Exception {
      assertThat(places(said("check")))
          .containsExactlyInAnyOrder(
              "H5", "M7", "M9", "M9", "H11", "H13", "A14", "K15", "D11", "N17", "N17");
    }

    @Test
    void takeChangesInThatAreNotSaved() throws Exception {
      workbook.set("Records.G5", 2).set("Records.D11", "g");
      assertThat(places(said("check"))).doesNotContain("H5", "D11").contains("M7");
    }

    @Test
    void followTheCourseProfileBesideTheDocument() throws Exception {
      Path profile = office.folder().resolve("course.yaml");
      Files.writeString(
          profile,
          """
          course: Bicycle workshop
          rules:
            length-one-end: {severity: none}
          """);
      try {
        assertThat(places(said("check"))).doesNotContain("H5").contains("M7");
        Files.writeString(profile, "no: profile\n");
        assertThat(failed("check"))
            .startsWith("The workbook could not be checked.")
            .contains("course.yaml");
      } finally {
        Files.delete(profile);
      }
    }

    @Test
    void areNoneInARecordTableThatTheMenuWrote() throws Exception {
      try (Workbook own = office.create()) {
        own.dispatch("tenthmark:new-table");
        assertThat(own.dispatch("tenthmark:check").Result)
            .isEqualTo("The checker found nothing to mend. Records read: 0. Numbers not read: 0.");
        own.set("A2", "Foam grip, length").set("B2", "g").set("C2", 128).set("D2", "mm");
        own.set("E2", 1).set("G2", 2).set("H2", 3);
        own.set("P2", "fine marks, both ends").set("P3", "the soft ends");
        own.dispatch("tenthmark:add-record");
        own.set("A5", "Tyre pressure, front").set("B5", "p").set("C5", 2.41).set("D5", "bar");
        own.set("I5", 0.02).set("P7", "two counts of the last digit");
        assertThat(own.shown("N5")).isEqualTo("2.41 ± 0.02 bar");
        assertThat(own.dispatch("tenthmark:check").Result)
            .isEqualTo("The checker found nothing to mend. Records read: 2. Numbers not read: 0.");
        own.set("M2", 1);
        assertThat((String) own.dispatch("tenthmark:check").Result).contains("Sheet1.M2 – error");
      }
    }
  }

  @Nested
  class CommentsOnCells {

    private WindowOnScreen window;

    @BeforeEach
    void check() throws Exception {
      comment("M7", "my own note");
      window = checked(workbook);
    }

    @AfterEach
    void closeWindow() throws Exception {
      window.press("Close");
      window.awaitEnd();
    }

    @Test
    void arePutAndRemovedByTheButtonsEachInOneStep() throws Exception {
      change("Put comments on the cells", 9);
      assertThat(comments()).hasSize(9).contains("my own note");
      assertThat(comments())
          .anyMatch(text -> text.contains("the record \"Crank arm, mass\" has no unit"));
      workbook.undo().undo();
      assertThat(comments()).containsExactly("my own note");
      workbook.undo().redo();
      assertThat(comments()).hasSize(9);
      change("Remove these comments", 1);
      assertThat(comments()).containsExactly("my own note");
      workbook.undo().undo();
      assertThat(comments()).hasSize(9);
    }

    private void change(String button, int comments) throws Exception {
      window.press(button);
      XModel model = queryInterface(XModel.class, workbook.document());
      XSheetAnnotations annotations = annotations();
      Patience.until(
          comments + " comments",
          () ->
              !model.hasControllersLocked()
                  && queryInterface(XIndexAccess.class, annotations).getCount() == comments);
    }

    @Test
    void thatAStudentHasChangedStay() throws Exception {
      change("Put comments on the cells", 9);
      addTo("H5");
      assertThat(said("remove-comments"))
          .isEqualTo(
              "Comments that were removed: 7. Comments that were left because somebody has"
                  + " changed them or their sheet is protected: 1.");
      assertThat(comments()).hasSize(2).contains("my own note");
    }
  }

  @Nested
  class TheWindow {

    @Test
    void goesToTheCellOfAFinding() throws Exception {
      WindowOnScreen window = checked(workbook);
      assertThat(window.texts())
          .anyMatch(text -> text.startsWith("Findings: 11. Records read: "))
          .anyMatch(text -> text.contains("This is the opinion of a teaching aid"));
      window.choose(3);
      Patience.until("the cursor at M9", () -> workbook.cursor().equals("M9"));
      window.press("Close");
      window.awaitEnd();
    }

    @Test
    void namesEveryControlForScreenReaders() throws Exception {
      WindowOnScreen window = checked(workbook);
      assertThat(window.controls()).hasSize(5).noneMatch(String::isBlank);
      window.press("Close");
      window.awaitEnd();
    }

    @Test
    void isReplacedByTheFindingsOfTheNextCheck() throws Exception {
      WindowOnScreen window = checked(workbook);
      workbook.set("Records.G5", 2).choose("tenthmark:check");
      Patience.until(
          "the findings of the next check",
          () -> window.count() == 1 && window.texts().get(1).startsWith("Findings: 10."));
      try (Workbook other = office.open(SAMPLES.resolve("first-lab-table-faulty.xlsx"))) {
        other.choose("tenthmark:check");
        Patience.until("the findings of both documents", () -> window.count() == 2);
      }
      Patience.until("the findings of the first one alone", () -> window.count() == 1);
      window.press("Close");
      window.awaitEnd();
    }

    @Test
    void closesWithItsDocument() throws Exception {
      Workbook other = office.open(SAMPLES.resolve("first-lab-table-faulty.xlsx"));
      WindowOnScreen window = checked(other);
      other.close();
      window.awaitEnd();
    }
  }

  /** Chooses the command in the menu and waits for the window of its findings. */
  private WindowOnScreen checked(Workbook document) throws Exception {
    document.choose("tenthmark:check");
    return WindowOnScreen.await(office, "Check This Workbook");
  }

  private String said(String command) throws Exception {
    DispatchResultEvent result = workbook.dispatch("tenthmark:" + command);
    assertThat(result.State).as((String) result.Result).isEqualTo(DispatchResultState.SUCCESS);
    return (String) result.Result;
  }

  private String failed(String command) throws Exception {
    DispatchResultEvent result = workbook.dispatch("tenthmark:" + command);
    assertThat(result.State).isEqualTo(DispatchResultState.FAILURE);
    return (String) result.Result;
  }

  private static List<String> places(String lines) {
    return lines
        .lines()
        .filter(line -> line.startsWith("Records."))
        .map(line -> line.replaceFirst("Records\\.(\\w+) .*", "$1"))
        .toList();
  }

  private XSheetAnnotations annotations() throws Exception {
    return workbook.annotations("Records");
  }

  private void comment(String cell, String text) throws Exception {
    CellRangeAddress place =
        queryInterface(XCellRangeAddressable.class, workbook.range("Records." + cell))
            .getRangeAddress();
    annotations()
        .insertNew(
            new com.sun.star.table.CellAddress(place.Sheet, place.StartColumn, place.StartRow),
            text);
  }

  private void addTo(String cell) throws Exception {
    com.sun.star.sheet.XSheetAnnotation comment =
        queryInterface(
                com.sun.star.sheet.XSheetAnnotationAnchor.class,
                workbook.range("Records." + cell).getCellByPosition(0, 0))
            .getAnnotation();
    XSimpleText text = queryInterface(XSimpleText.class, comment);
    text.setString(text.getString() + "\nI asked my teacher about this.");
  }

  private List<String> comments() throws Exception {
    return workbook.comments("Records");
  }
}
