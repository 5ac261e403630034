package tenthmark.addin.table;

import static com.sun.star.uno.UnoRuntime.queryInterface;
import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.awt.FontWeight;
import com.sun.star.beans.XPropertySet;
import com.sun.star.frame.DispatchResultEvent;
import com.sun.star.frame.DispatchResultState;
import com.sun.star.sheet.XNamedRange;
import com.sun.star.sheet.XNamedRanges;
import com.sun.star.sheet.XSheetCondition;
import com.sun.star.sheet.XSheetConditionalEntries;
import com.sun.star.util.XProtectable;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.addin.office.OfficeExtension;
import tenthmark.addin.office.Workbook;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.wording.Language;

/** The commands for record tables, as the menu gives them to Calc. */
@ExtendWith(OfficeExtension.class)
class RecordTablesIT {

  private static final TableWords ENGLISH = new TableWords(Language.ENGLISH);

  private Workbook workbook;

  @BeforeEach
  void use(Workbook empty) {
    workbook = empty;
  }

  @Nested
  class ANewTable {

    @Test
    void standsAtTheCursorWithHeadingsAndOneRecord() throws Exception {
      at("B3").done("new-table");
      assertThat(Arrays.asList(workbook.values("B3:R3")[0]))
          .containsExactly(Arrays.stream(Column.values()).map(ENGLISH::heading).toArray());
      assertThat(workbook.formula("K4"))
          .isEqualTo("=IF(F4=\"\";\"\";TENTHMARK.LAB.READING(F4;G4;H4))");
      assertThat(workbook.cursor()).isEqualTo("B4");
    }

    @Test
    void showsNoErrorWhileItIsBlank() throws Exception {
      at("A1").done("new-table");
      for (Object[] row : workbook.values("A2:N4")) {
        assertThat(row)
            .allMatch(
                shown -> !shown.toString().contains("#") && !shown.toString().contains("Err"));
      }
    }

    /** By hand: 1 x 1/4 x 2 ends = 0.5; 3/2 = 1.5; 0.5 + 1.5 = 2. */
    @Test
    void calculatesAReadingOffARule() throws Exception {
      at("A1").done("new-table");
      workbook.set("A2", "Foam grip").set("B2", "g").set("C2", 128.3).set("D2", "mm");
      workbook.set("E2", 1).set("G2", 2).set("H2", 3);
      workbook.set("P2", "fine marks, both ends").set("P3", "the soft ends");
      assertThat(workbook.number("J2")).isEqualTo(0.5);
      assertThat(workbook.number("K2")).isEqualTo(1.5);
      assertThat(workbook.number("M2")).isEqualTo(2);
      assertThat(workbook.shown("N2")).isEqualTo("128 ± 2 mm");
      assertThat(workbook.shown("B3"))
          .isEqualTo(
              "The reading uncertainty is 0.5 mm due to fine marks, both ends. The physical"
                  + " uncertainty is 1.5 mm due to the soft ends. The instrument uncertainty is"
                  + " negligible. The total is 2 mm, the sum of the contributions.");
    }

    /** By hand: one count of the last digit. */
    @Test
    void calculatesAReadingOffADisplayWithoutUnit() throws Exception {
      at("A1").done("new-table");
      workbook.set("A2", "Tyre gauge").set("C2", 2.41).set("I2", 0.02);
      assertThat(workbook.number("M2")).isEqualTo(0.02);
      assertThat(workbook.shown("N2")).isEqualTo("2.41 ± 0.02");
    }

    /** What a cell shows by a condition is seen on the screen only: no interface gives it. */
    @Test
    void marksTextsInPlaceOfNumbersByAConditionOfTheSheet() throws Exception {
      at("A1").done("new-table");
      for (String cell : List.of("C2", "E2", "G2", "H2", "I2")) {
        XSheetConditionalEntries conditions =
            queryInterface(
                XSheetConditionalEntries.class,
                properties(cell).getPropertyValue("ConditionalFormat"));
        XSheetCondition condition = queryInterface(XSheetCondition.class, conditions.getByIndex(0));
        assertThat(condition.getFormula1()).isEqualTo("ISTEXT(" + cell + ")");
      }
      assertThat(part("styles.xml", workbook.save("marked", Workbook.Format.ODS)))
          .contains("<number:text> is text, no number</number:text>");
    }

    private String part(String name, Path file) throws Exception {
      try (ZipFile zip = new ZipFile(file.toFile())) {
        byte[] content = zip.getInputStream(zip.getEntry(name)).readAllBytes();
        return new String(content, StandardCharsets.UTF_8);
      }
    }

    @Test
    void saysInTheResultWhatIsNoNumber() throws Exception {
      at("A1").done("new-table");
      workbook.type("C2", "24,6").set("E2", 1);
      assertThat(workbook.shown("N2"))
          .isEqualTo("LAB_RESULT: value is the text \"24,6\"; it must be a number.");
      workbook.set("C2", 24.6).type("E2", "1 mm");
      assertThat(workbook.shown("N2")).isEqualTo("Err:502");
      assertThat(workbook.set("A20", "=TENTHMARK.LAB.WHY(N2)").shown("A20"))
          .contains("LAB_READING: division is the text \"1 mm\"");
    }

    @Test
    void saysOnceInADocumentWhatToInstallWhereFunctionsAreMissing() throws Exception {
      at("A1").done("new-table");
      assertThat(workbook.formula("A6"))
          .startsWith(
              "=IF(ISERROR(TENTHMARK.LAB.HANDTIMED());\"The LAB functions are missing here");
      assertThat(workbook.shown("A6")).isEmpty();
      workbook.addSheet("Second");
      at("Second.A1").done("new-table");
      assertThat(workbook.formula("Second.A6")).isEmpty();
    }

    @Test
    void looksForRoomForThat() throws Exception {
      workbook.set("A6", "mine").set("F7", "mine too");
      at("A1").done("new-table");
      assertThat(workbook.shown("A6")).isEqualTo("mine");
      assertThat(workbook.formula("A8")).startsWith("=IF(ISERROR(");
    }

    @Test
    void namesItsRanges() throws Exception {
      at("B3").done("new-table");
      assertThat(named("records")).isEqualTo("$Sheet1.$B$3:$R$6");
      assertThat(named("values")).isEqualTo("$Sheet1.$D$4:$D$6");
      assertThat(named("uncertainties")).isEqualTo("$Sheet1.$N$4:$N$6");
      at("B10").done("new-table");
      assertThat(named("records_2")).isEqualTo("$Sheet1.$B$10:$R$13");
    }

    @Test
    void isOneStepToUndoAndToRedo() throws Exception {
      at("A1").done("new-table");
      assertThat(workbook.undo().getAllUndoActionTitles()).containsExactly("New Record Table");
      workbook.undo().undo();
      assertThat(workbook.shown("A1")).isEmpty();
      assertThat(workbook.formula("M2")).isEmpty();
      assertThat(names().getElementNames()).isEmpty();
      workbook.undo().redo();
      assertThat(workbook.shown("A1")).isEqualTo("Quantity");
      assertThat(named("records")).isEqualTo("$Sheet1.$A$1:$Q$4");
    }

    @ParameterizedTest
    @ValueSource(strings = {"mm", "J/(kg·K)", "kg·m²/s²", "kg m^2 s^-2"})
    void isWideEnoughForAUnitAndAResultInIt(String unit) throws Exception {
      at("A1").done("new-table");
      assertThat(width("D1")).isGreaterThanOrEqualTo(widthOf(unit, FontWeight.NORMAL));
      assertThat(width("N1"))
          .isGreaterThanOrEqualTo(widthOf("1234.5 ± 1.2 " + unit, FontWeight.BOLD));
    }

    /** Headings break at blanks. */
    @ParameterizedTest
    @EnumSource
    void isWideEnoughForEachWordOfItsHeadings(Language language) throws Exception {
      TableWords words = new TableWords(language);
      at("A1").done("new-table");
      List<String> tooNarrow = new ArrayList<>();
      List<Column> columns = List.of(Column.values());
      for (Column column : columns) {
        int width = width(new CellAddress("", columns.indexOf(column), 0).place());
        for (String word : words.heading(column).split(" ", -1)) {
          int needed = widthOf(word, FontWeight.BOLD);
          if (needed > width) {
            tooNarrow.add(word + " needs " + needed + " and has " + width);
          }
        }
      }
      assertThat(tooNarrow).isEmpty();
    }

    @Test
    void neverMakesAColumnNarrowerThatHoldsSomethingElse() throws Exception {
      workbook.set("C30", "a longer text");
      int before = width("C1");
      at("A1").done("new-table");
      assertThat(width("C1")).isEqualTo(before);
      assertThat(width("G1")).isBetween(2190, 2210);
      assertThat(width("A1")).isBetween(4490, 4510);
    }

    @Test
    void isRefusedWhereCellsAreNotEmpty() throws Exception {
      workbook.set("D4", "mine");
      assertThat(at("A1").refused("new-table")).startsWith("The table needs the cells A1:Q4");
      assertThat(workbook.shown("A1")).isEmpty();
      assertThat(workbook.undo().getAllUndoActionTitles()).doesNotContain("New Record Table");
    }

    @Test
    void isRefusedAtTheEndOfTheSheet() throws Exception {
      assertThat(at("A1048574").refused("new-table")).startsWith("The table does not fit here");
      assertThat(at("AMD1").done("new-table")).isEmpty();
    }

    @Test
    void isRefusedOnAProtectedSheet() throws Exception {
      queryInterface(
              XProtectable.class,
              queryInterface(com.sun.star.sheet.XSheetCellRange.class, workbook.range("A1"))
                  .getSpreadsheet())
          .protect("");
      assertThat(at("A1").refused("new-table")).startsWith("This sheet is protected");
    }
  }

  @Nested
  class AnotherRecord {

    @BeforeEach
    void begin() throws Exception {
      at("A1").done("new-table");
      workbook.set("A2", "Spoke").set("C2", 264).set("D2", "mm").set("E2", 1).set("G2", 2);
    }

    @Test
    void goesBelowTheLastOne() throws Exception {
      at("C3").done("add-record");
      assertThat(workbook.cursor()).isEqualTo("A5");
      workbook.set("C5", 20.5).set("E5", 0.5).set("D5", "°C");
      assertThat(workbook.number("J5")).isEqualTo(0.125);
      assertThat(workbook.shown("N2")).isEqualTo("264.0 ± 0.5 mm");
      assertThat(named("records")).isEqualTo("$Sheet1.$A$1:$Q$7");
      assertThat(named("values")).isEqualTo("$Sheet1.$C$2:$C$7");
      workbook.set("A12", "=COUNT(values)");
      assertThat(workbook.number("A12")).isEqualTo(2);
    }

    @Test
    void movesWhatStandsBelowTheTable() throws Exception {
      workbook.set("A5", "my remark").set("B6", "=C2*2");
      at("A2").done("add-record");
      assertThat(workbook.shown("A8")).isEqualTo("my remark");
      assertThat(workbook.formula("B9")).isEqualTo("=C2*2");
      assertThat(workbook.shown("F5")).isEqualTo("fine");
      workbook.undo().undo();
      assertThat(workbook.shown("A5")).isEqualTo("my remark");
      assertThat(named("records")).isEqualTo("$Sheet1.$A$1:$Q$4");
    }

    @Test
    void movesTheCellThatSaysWhatToInstall() throws Exception {
      at("C3").done("add-record");
      assertThat(workbook.formula("A6")).isEqualTo("Rationale");
      assertThat(workbook.formula("A9")).startsWith("=IF(ISERROR(");
    }

    /** The cell that says what to install is moved down, and new cells look like those above. */
    @Test
    void looksLikeTheFirst() throws Exception {
      at("C3").done("add-record");
      for (String property : List.of("CellBackColor", "CharPosture", "CharWeight", "VertJustify")) {
        for (String column : List.of("A", "C", "F", "J", "M", "N", "P", "Q")) {
          assertThat(properties(column + "5").getPropertyValue(property))
              .as(column + " " + property)
              .isEqualTo(properties(column + "2").getPropertyValue(property));
        }
      }
    }

    @Test
    void isOneStepToUndo() throws Exception {
      int before = workbook.undo().getAllUndoActionTitles().length;
      at("A2").done("add-record");
      assertThat(workbook.undo().getAllUndoActionTitles()).hasSize(before + 1);
      workbook.undo().undo();
      assertThat(workbook.shown("F5")).isEmpty();
      assertThat(named("records")).isEqualTo("$Sheet1.$A$1:$Q$4");
    }

    @Test
    void goesIntoTheTableOfTheCursor() throws Exception {
      at("A20").done("new-table");
      at("B22").done("add-record");
      assertThat(named("records_2")).isEqualTo("$Sheet1.$A$20:$Q$26");
      assertThat(named("records")).isEqualTo("$Sheet1.$A$1:$Q$4");
      assertThat(at("A12").refused("add-record")).startsWith("There is no record table at this");
    }

    @Test
    void isRefusedInATableOfAnotherMake() throws Exception {
      workbook.set("C1", "Length (mm)");
      assertThat(at("A2").refused("add-record")).startsWith("The headings of this table are not");
    }
  }

  private RecordTablesIT at(String cell) throws Exception {
    workbook.select(cell);
    return this;
  }

  private String done(String command) throws Exception {
    return run(command, DispatchResultState.SUCCESS);
  }

  private String refused(String command) throws Exception {
    return run(command, DispatchResultState.FAILURE);
  }

  private String run(String command, short state) throws Exception {
    DispatchResultEvent result = workbook.dispatch("tenthmark:" + command);
    assertThat(result.State).as((String) result.Result).isEqualTo(state);
    return (String) result.Result;
  }

  private XNamedRanges names() throws Exception {
    return queryInterface(
        XNamedRanges.class,
        queryInterface(XPropertySet.class, workbook.document()).getPropertyValue("NamedRanges"));
  }

  private String named(String name) throws Exception {
    return queryInterface(XNamedRange.class, names().getByName(name)).getContent();
  }

  /** What Calc finds best for a text, in a column where nothing else stands. */
  private int widthOf(String text, float weight) throws Exception {
    workbook.set("AB1", text);
    queryInterface(XPropertySet.class, workbook.range("AB1"))
        .setPropertyValue("CharWeight", weight);
    column("AB1").setPropertyValue("OptimalWidth", true);
    return width("AB1");
  }

  private int width(String cell) throws Exception {
    return (Integer) column(cell).getPropertyValue("Width");
  }

  private XPropertySet properties(String cell) throws Exception {
    return queryInterface(XPropertySet.class, workbook.range(cell));
  }

  private XPropertySet column(String cell) throws Exception {
    return queryInterface(
        XPropertySet.class,
        queryInterface(com.sun.star.table.XColumnRowRange.class, workbook.range(cell))
            .getColumns()
            .getByIndex(0));
  }
}
