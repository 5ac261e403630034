package tenthmark.addin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.params.AfterParameterizedClassInvocation;
import org.junit.jupiter.params.BeforeParameterizedClassInvocation;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.MethodSource;
import tenthmark.addin.office.Launcher;
import tenthmark.addin.office.Office;
import tenthmark.addin.office.Patience;
import tenthmark.addin.office.Profile;
import tenthmark.addin.office.Screen;
import tenthmark.addin.office.WindowOnScreen;
import tenthmark.addin.office.Workbook;

/** Menu, windows and help by keyboard alone, on a screen, in each office that there is. */
@ParameterizedClass
@MethodSource("offices")
@TestInstance(Lifecycle.PER_CLASS)
class KeyboardIT {

  private static final Path FAULTY =
      Path.of("../sample-workbooks/workbooks/first-lab-table-faulty.ods");

  private static final String EXPLANATION = "Explain cell A1";
  private static final String FINDINGS = "Check This Workbook";

  @Parameter private Launcher launcher;
  private Screen screen;
  private Office office;
  private Workbook workbook;
  private String sheet;

  static Stream<Launcher> offices() {
    return Stream.concat(Stream.of(Launcher.installed()), Launcher.second().stream());
  }

  @BeforeParameterizedClassInvocation
  void start() throws Exception {
    screen = Screen.start();
    office =
        Office.start(
            launcher.on(screen), Profile.withExtension().withoutGreetings().withHelpInBrowser());
  }

  @AfterParameterizedClassInvocation
  void end() throws Exception {
    if (office != null) {
      office.close();
      office = null;
    }
    screen.close();
  }

  @AfterEach
  void close() throws Exception {
    if (workbook != null) {
      workbook.close();
      workbook = null;
    }
  }

  @Test
  void theMenuOpensByItsKeyAndByArrowsAndARecordIsFilledIn() throws Exception {
    open(office.create(), "Untitled");
    screen.press("alt+m", "Return");
    Patience.until("a table", () -> workbook.shown("A1").equals("Quantity"));
    screen.press("F10", "Left", "Left", "Left", "Down", "Down", "Return");
    Patience.until("a second record", () -> !workbook.formula("N5").isEmpty());
    screen.press("7", "Tab", "8", "Return");
    Patience.until("what was typed", () -> workbook.shown("B5").equals("8"));
    assertThat(workbook.shown("A5")).isEqualTo("7");
  }

  @Test
  void f1InTheExplanationOpensTheReferenceAtTheFunction() throws Exception {
    explain();
    assertThat(openedBy("F1")).endsWith("/function-reference/LAB_READING.html");
    endByEscape(EXPLANATION);
  }

  @Test
  void f1InTheFindingsOpensTheReference() throws Exception {
    check();
    assertThat(openedBy("F1")).endsWith("/function-reference.html");
    endByEscape(FINDINGS);
  }

  @Test
  void f1InTheSheetBesideAWindowIsLeftToTheOffice() throws Exception {
    explain();
    screen.press("alt+Tab");
    screen.awaitKeyboardIn(sheet);
    assertThat(openedBy("F1")).doesNotContain("tenthmark").contains("help", "scalc");
    screen.press("alt+Tab");
    screen.awaitKeyboardIn(EXPLANATION);
    endByEscape(EXPLANATION);
  }

  @Test
  void theExplanationIsUsedByItsButtons() throws Exception {
    explain();
    assertThat(openedBy("Tab", "Tab", "Tab", "Tab", "Tab", "Return"))
        .endsWith("/function-reference/LAB_READING.html");
    assertThat(openedBy("space")).endsWith("/function-reference/LAB_READING.html");
    screen.press("Tab", "space");
    screen.awaitEnd(EXPLANATION);
    typeIntoTheSheet();
  }

  @Test
  void keysInTheFindingsGoToTheirCellsAndThoseStandAboveTheWindow() throws Exception {
    check();
    Patience.until("the cursor at H5", () -> workbook.cursor().equals("H5"));
    assertThat(workbook.firstRowInSight()).isEqualTo(1);
    screen.press("Down", "Down", "Down", "Down");
    Patience.until("the cursor at D11", () -> workbook.cursor().equals("D11"));
    screen.press("Up");
    Patience.until("the cursor at M9", () -> workbook.cursor().equals("M9"));
    screen.press("End");
    Patience.until("the cursor at N17", () -> workbook.cursor().equals("N17"));
    Patience.until("its row near the top", () -> workbook.firstRowInSight() == 16);
    endByEscape(FINDINGS);
  }

  @Test
  void theFindingsAreUsedByTheirButtons() throws Exception {
    check();
    screen.press("Tab", "Tab", "space");
    Patience.until("comments", () -> workbook.comments("Records").size() == 9);
    screen.press("Tab", "Return");
    Patience.until("no comments", () -> workbook.comments("Records").isEmpty());
    screen.press("Tab", "space");
    screen.awaitEnd(FINDINGS);
    typeIntoTheSheet();
  }

  @Test
  void tabGoesRoundTheExplanationFromTopToBottom() throws Exception {
    needControls();
    explain();
    tabRound(
        EXPLANATION,
        "What is wrong:",
        "What to do:",
        "The formula:",
        "In words:",
        "Explain the selected cell",
        "Help",
        "Close");
    endByEscape(EXPLANATION);
  }

  @Test
  void tabGoesRoundTheFindingsFromTopToBottom() throws Exception {
    needControls();
    check();
    tabRound(
        FINDINGS,
        "Findings (choosing one goes to its cell):",
        "About the finding:",
        "Put comments on the cells",
        "Remove these comments",
        "Close");
    endByEscape(FINDINGS);
  }

  /** Only an office of the version whose API the tests are built with can be asked for controls. */
  private void needControls() {
    assumeThat(launcher).isEqualTo(Launcher.installed());
  }

  private void tabRound(String title, String... controls) throws Exception {
    WindowOnScreen window = WindowOnScreen.await(office, title);
    for (String control : controls) {
      window.awaitKeyboard(control);
      screen.press("Tab");
    }
    window.awaitKeyboard(controls[0]);
  }

  private void explain() throws Exception {
    open(office.create().set("A1", "=TENTHMARK.LAB.READING(-1)"), "Untitled");
    screen.press("alt+m", "e");
    screen.awaitKeyboardIn(EXPLANATION);
  }

  private void check() throws Exception {
    open(office.open(FAULTY), "first-lab-table-faulty");
    screen.press("alt+m", "c");
    screen.awaitKeyboardIn(FINDINGS);
  }

  private void open(Workbook shown, String title) throws Exception {
    workbook = shown;
    sheet = title;
    screen.awaitKeyboardIn(sheet);
  }

  /** The address that keys make the office hand to the browser. */
  private String openedBy(String... keys) throws Exception {
    int before = office.opened().size();
    screen.press(keys);
    return Patience.await(
        "a page in the browser", () -> office.opened().stream().skip(before).findFirst());
  }

  private void endByEscape(String title) throws Exception {
    screen.press("Escape");
    screen.awaitEnd(title);
    typeIntoTheSheet();
  }

  /** The keyboard is in the sheet again when a window has ended. */
  private void typeIntoTheSheet() throws Exception {
    screen.awaitKeyboardIn(sheet);
    String cell = workbook.cursor();
    screen.press("7", "Return");
    Patience.until("what was typed", () -> workbook.shown(cell).equals("7"));
  }
}
