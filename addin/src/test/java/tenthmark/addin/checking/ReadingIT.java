package tenthmark.addin.checking;

import static com.sun.star.uno.UnoRuntime.queryInterface;
import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.util.XModifiable;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import tenthmark.addin.office.Office;
import tenthmark.addin.office.OfficeExtension;
import tenthmark.addin.office.Patience;
import tenthmark.addin.office.WindowOnScreen;
import tenthmark.addin.office.Workbook;

/** What the shipped checker takes the cells of the open document for. Numbers are invented. */
@ExtendWith(OfficeExtension.class)
class ReadingIT {

  private Office office;
  private Workbook workbook;

  @BeforeEach
  void aTable(Office running) throws Exception {
    office = running;
    workbook = office.create();
    List<String> headings = List.of("Quantity", "Value", "Unit", "Uncertainty", "Rationale");
    for (int column = 0; column < headings.size(); column++) {
      workbook.set((char) ('A' + column) + "1", headings.get(column));
    }
    workbook.set("A2", "Crank arm").set("B2", 172.5).set("C2", "mm").set("D2", 0.5);
    workbook.set("A3", "Spoke").set("B3", 262.5).set("C3", "mm").set("D3", 0.5);
    workbook.set("E2", "Fine marks, two ends.").set("E3", "Fine marks, two ends.");
    workbook.set("G9", 7.25);
  }

  @AfterEach
  void close() throws Exception {
    workbook.close();
  }

  private List<String> said() throws Exception {
    return ((String) workbook.dispatch("tenthmark:reading").Result).lines().toList();
  }

  @Test
  void saysFirstWhatIsNotReadAndThenWhatTheOtherCellsAreTakenFor() throws Exception {
    assertThat(said().get(0)).startsWith("Sheet1.G9 – not read: ");
    assertThat(said())
        .contains("Sheet1.B2:B3 – value", "Sheet1.C2:C3 – unit", "Sheet1.D2:D3 – uncertainty");
  }

  @Test
  void changesNothingInTheDocument() throws Exception {
    XModifiable document = queryInterface(XModifiable.class, workbook.document());
    document.setModified(false);
    said();
    assertThat(document.isModified()).isFalse();
  }

  @Test
  void isByTheCourseProfileBesideTheDocument() throws Exception {
    Path profile = office.folder().resolve("course.yaml");
    try (Workbook saved =
        office.open(Path.of("../sample-workbooks/workbooks/first-lab-table.ods"))) {
      Files.writeString(profile, "no: profile\n");
      assertThat((String) saved.dispatch("tenthmark:reading").Result).contains("course.yaml");
    } finally {
      Files.delete(profile);
    }
  }

  @Test
  void isAListThatGoesToTheCells() throws Exception {
    workbook.choose("tenthmark:reading");
    WindowOnScreen window = WindowOnScreen.await(office, "Show How It Is Read");
    assertThat(window.texts())
        .anyMatch(text -> text.startsWith("Records read: 2. Numbers not read: 1."));
    assertThat(window.controls()).hasSize(2).noneMatch(String::isBlank);
    window.choose(0);
    Patience.until("the cursor at G9", () -> workbook.cursor().equals("G9"));
    window.press("Close");
    window.awaitEnd();
  }
}
