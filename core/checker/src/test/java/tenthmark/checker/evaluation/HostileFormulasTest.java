package tenthmark.checker.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.wording.CheckerTexts;
import tenthmark.checker.workbook.Bounded;
import tenthmark.checker.workbook.Limits;
import tenthmark.checker.workbook.UnreadableFileException;
import tenthmark.checker.workbook.XlsxFile;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.formula.CellAddress;

/** Formulas made to run without end, to fill the memory or to reach out of the file. */
@Timeout(300)
class HostileFormulasTest {

  private static final Catalogue CATALOGUE = Catalogue.load();

  @TempDir Path folder;

  private Evaluation evaluated(XlsxFile file) throws Exception {
    return evaluated(file, Bounded.PATIENT);
  }

  private Evaluation evaluated(XlsxFile file, Limits limits) throws Exception {
    return Bounded.evaluated(
        file.write(folder.resolve("a.xlsx")),
        limits,
        workbook -> Evaluation.of(workbook, CATALOGUE));
  }

  private static String cell(String formula) {
    return "<c><f>" + formula.replace("&", "&amp;").replace("<", "&lt;") + "</f></c>";
  }

  private Outcome outcome(String formula) throws Exception {
    return evaluated(XlsxFile.cells(cell(formula))).at(new CellAddress("Sheet1", 0, 0));
  }

  private static Outcome at(Evaluation evaluation, int column, int row) {
    return evaluation.at(new CellAddress("Sheet1", column, row));
  }

  private static Outcome known(double number) {
    return new Outcome.Known(Value.of(number));
  }

  private static void notCheckable(Outcome outcome, String reason) {
    assertThat(outcome)
        .isInstanceOfSatisfying(
            Outcome.NotCheckable.class,
            unknown -> assertThat(CheckerTexts.english().say(unknown.reason())).isEqualTo(reason));
  }

  @Nested
  class Chains {

    @Test
    void ofAHundredThousandCellsAreCalculated() throws Exception {
      StringBuilder rows = new StringBuilder();
      for (int row = 1; row < 100_000; row++) {
        rows.append("<row>").append(cell("A" + (row + 1) + "+1")).append("</row>");
      }
      Evaluation evaluation = evaluated(XlsxFile.rows(rows + "<row><c><v>1</v></c></row>"));

      assertThat(at(evaluation, 0, 0)).isEqualTo(known(100_000));
    }

    @Test
    void thatAreCirclesAreErrors() throws Exception {
      int length = 20_000;
      StringBuilder rows = new StringBuilder();
      for (int row = 1; row <= length; row++) {
        rows.append("<row>").append(cell("A" + (row % length + 1) + "+1")).append("</row>");
      }
      Evaluation evaluation = evaluated(XlsxFile.rows(rows.toString()));

      for (int row = 0; row < length; row += 1000) {
        assertThat(at(evaluation, 0, row))
            .isEqualTo(new Outcome.Known(new Value.Fault("~CIRCULAR~REF~")));
      }
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "A1",
          "SUM(A:A)",
          "SUM(1:1)",
          "A1:XFD1048576",
          "OFFSET(A1,0,0)",
          "SUMPRODUCT((B1:XFD1048576)*1)",
          "MMULT(B1:B1048576,C1:XFD1)",
          "INDIRECT(\"A1\")"
        })
    void ofACellWithItselfEnd(String formula) throws Exception {
      assertThat(outcome(formula)).isNotNull();
    }

    @Test
    void thatEachReferToAllThatFollowStayWithinMemory() throws Exception {
      int length = 1_500;
      StringBuilder rows = new StringBuilder("<row>" + cell("SUM(B1:B" + length + ")") + cell("1"));
      for (int row = 2; row <= length; row++) {
        rows.append("</row><row><c r=\"B")
            .append(row)
            .append("\"><f>1+0*SUM(B1:B")
            .append(row - 1)
            .append(")</f></c>");
      }
      assertThat(at(evaluated(XlsxFile.rows(rows + "</row>")), 0, 0)).isEqualTo(known(length));
    }
  }

  @Nested
  class Nesting {

    @ParameterizedTest
    @ValueSource(ints = {10, 100, 1000, 4000, 16_000, 100_000})
    void ofParenthesesIsCalculatedOrNotCheckable(int depth) throws Exception {
      Outcome outcome = outcome("(".repeat(depth) + "7" + ")".repeat(depth));

      assertThat(outcome instanceof Outcome.NotCheckable || outcome.equals(known(7))).isTrue();
      if (depth <= 100) {
        assertThat(outcome).isEqualTo(known(7));
      }
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "-",
          "+",
          "SQRT(",
          "IF(1,",
          "{",
          "\"",
          "'",
          "[",
          "A1:",
          "LAB_READING(",
          "!",
          "#",
          "%"
        })
    void ofAnythingEnds(String part) throws Exception {
      for (int times : new int[] {1, 500, 4000}) {
        assertThat(outcome(part.repeat(times))).isNotNull();
        assertThat(outcome(part.repeat(times) + "1" + ")".repeat(part.contains("(") ? times : 0)))
            .isNotNull();
      }
    }

    @Test
    void ofLabFunctionsOverADeepFormulaEnds() throws Exception {
      String deep = "(".repeat(3000) + "B1" + ")".repeat(3000);
      Evaluation evaluation =
          evaluated(XlsxFile.cells(cell(deep) + "<c><v>2</v></c>" + cell("LAB_CARRY(A1,B1,0.1)")));

      assertThat(at(evaluation, 2, 0)).isNotNull();
    }
  }

  @Nested
  class Length {

    @Test
    void upToThatOfAnyProgramIsCalculated() throws Exception {
      String sum = "1" + "+1".repeat(4000);
      assertThat(outcome(sum)).isEqualTo(known(4001));
    }

    @Test
    void beyondItIsNotCheckable() throws Exception {
      notCheckable(
          outcome("1" + "+1".repeat(16_000)), "the formula is longer than 8192 characters");
    }
  }

  @Nested
  class Texts {

    private static final Outcome TOO_LONG = new Outcome.Known(new Value.Fault("#VALUE!"));

    @ParameterizedTest
    @ValueSource(
        strings = {
          "REPT(\"x\",2000000000)",
          "rept (\"x\", 1E9)",
          "SUBSTITUTE(REPT(\"x\",30000),\"x\",REPT(\"y\",30000))",
          "TEXTJOIN(\"-\",TRUE,REPT(\"x\",30000),REPT(\"x\",30000))",
          "LEN(REPT(\"spoke\",10000))"
        })
    void thatOneFunctionMakesTooLongAreErrors(String formula) throws Exception {
      assertThat(outcome(formula)).isEqualTo(TOO_LONG);
    }

    @Test
    void ofOrdinaryLengthAreMade() throws Exception {
      assertThat(outcome("REPT(\"ab\",3)")).isEqualTo(new Outcome.Known(Value.of("ababab")));
      assertThat(outcome("SUBSTITUTE(\"foam grip\",\"foam\",\"rubber\")"))
          .isEqualTo(new Outcome.Known(Value.of("rubber grip")));
      assertThat(outcome("TEXTJOIN(\"-\",TRUE,\"a\",\"b\")"))
          .isEqualTo(new Outcome.Known(Value.of("a-b")));
    }

    @Test
    void thatDoubleFromCellToCellStop() throws Exception {
      StringBuilder cells = new StringBuilder(cell("REPT(\"x\",30000)"));
      for (int row = 1; row < 60; row++) {
        cells.append("</row><row>").append(cell("A" + row + "&A" + row));
      }
      Evaluation evaluation = evaluated(XlsxFile.rows("<row>" + cells + "</row>"));

      notCheckable(at(evaluation, 0, 1), "its text is longer than 32767 characters");
      assertThat(at(evaluation, 0, 59)).isInstanceOf(Outcome.NotCheckable.class);
    }

    @Test
    void joinedVeryManyTimesAreNotCheckable() throws Exception {
      notCheckable(outcome("\"x\"" + "&\"x\"".repeat(1000)), "it joins more than 255 texts with &");
    }
  }

  @Nested
  class Names {

    private static String name(String name, String formula) {
      return "<definedName name=\"" + name + "\">" + formula + "</definedName>";
    }

    @Test
    void thatStandForEachOtherAreNotCheckable() throws Exception {
      XlsxFile file = XlsxFile.cells(cell("one+1")).names(name("one", "two") + name("two", "one"));

      notCheckable(
          at(evaluated(file), 0, 0), "it uses a name that stands for too many other names");
    }

    @Test
    void thatDoubleAtEachStepAreNotCheckable() throws Exception {
      StringBuilder names = new StringBuilder();
      for (int i = 0; i < 60; i++) {
        names.append(
            name(
                "n" + (char) ('a' + i / 26) + (char) ('a' + i % 26) + "_",
                "n" + (char) ('a' + (i + 1) / 26) + (char) ('a' + (i + 1) % 26) + "_*2+1"));
      }
      notCheckable(
          at(evaluated(XlsxFile.cells(cell("naa_")).names(names.toString())), 0, 0),
          "it uses a name that stands for too many other names");
    }
  }

  @Nested
  class ReachingOut {

    @ParameterizedTest
    @ValueSource(
        strings = {
          "WEBSERVICE(\"http://127.0.0.1:9/x\")",
          "cmd|'/c calc'!A1",
          "DDE(\"soffice\",\"/etc/passwd\",\"A1\")",
          "[1]Sheet1!A1",
          "'file:///etc/[passwd]Sheet1'!A1",
          "'\\\\127.0.0.1\\share\\[x.xlsx]Sheet1'!A1",
          "INDIRECT(\"'[other.xlsx]Sheet1'!A1\")",
          "CALL(\"kernel32\",\"WinExec\",\"JCJ\",\"calc\",0)",
          "REGISTER.ID(\"kernel32\",\"WinExec\")",
          "EXEC(\"calc\")",
          "RTD(\"x\",\"\",\"y\")",
          "Sheet9!A1"
        })
    void isNeverCalculated(String formula) throws Exception {
      Outcome outcome = outcome(formula);
      assertThat(
              outcome instanceof Outcome.NotCheckable
                  || (outcome instanceof Outcome.Known known
                      && known.value() instanceof Value.Fault))
          .as(String.valueOf(outcome))
          .isTrue();
    }

    @Test
    void byALinkOnlyShowsItsText() throws Exception {
      assertThat(outcome("HYPERLINK(\"http://127.0.0.1:9/x\",\"spoke\")"))
          .isEqualTo(new Outcome.Known(Value.of("spoke")));
    }
  }

  @Nested
  class Time {

    /** So short that even a fast machine cannot allocate what a file may in that time. */
    private final Limits brief = Limits.DEFAULT.withTime(Duration.ofMillis(500));

    private void stopped(XlsxFile file) {
      long start = System.nanoTime();
      assertThatThrownBy(() -> evaluated(file, brief))
          .isInstanceOf(UnreadableFileException.class)
          .hasMessage("it takes longer than 0.5 s and was stopped");
      assertThat(Duration.ofNanos(System.nanoTime() - start)).isLessThan(Duration.ofMinutes(1));
    }

    @Test
    void ofSumsOverTheWholeSheetIsLimited() {
      String row = "<row>" + cell("SUM(Sheet1!A2:XFD1048576)").repeat(50) + "</row>";
      stopped(
          XlsxFile.rows(
              row
                  + "<row><c r=\"XFD1048576\"><v>1</v></c></row>"
                      .replace("<row>", "<row r=\"1048576\">")));
    }

    @Test
    void ofManyFormulasOverManyCellsIsLimited() {
      String cells = "<c><v>1</v></c>".repeat(100) + cell("SUM(A:CV)").repeat(20);
      stopped(XlsxFile.rows(("<row>" + cells + "</row>").repeat(3000)));
    }

    @Test
    void ofALoopWithinOneFunctionIsLimited() {
      stopped(XlsxFile.cells(cell("WORKDAY(1,2147483647)")));
    }

    @Test
    void ofNamesThatMultiplyIsLimited() {
      StringBuilder names = new StringBuilder();
      for (char i = 'a'; i < 'h'; i++) {
        String next = "n" + (char) (i + 1) + "_";
        names
            .append("<definedName name=\"n")
            .append(i)
            .append("_\">")
            .append(next)
            .append(("+" + next).repeat(200))
            .append("</definedName>");
      }
      stopped(
          XlsxFile.cells(cell("na_")).names(names + "<definedName name=\"nh_\">1</definedName>"));
    }

    @Test
    void ofSimulationsWithoutNumberIsLimited() {
      String simulation = cell("LAB_SIMULATE(A1,B1,0.1,,1000000)");
      stopped(XlsxFile.cells(cell("B1^2") + "<c><v>2</v></c>" + simulation.repeat(100)));
    }

    @Test
    void isEnoughForOrdinaryWork() throws Exception {
      assertThat(outcome("SUM(B:B)+SUM(2:2)")).isEqualTo(known(0));
    }
  }

  @Test
  void stopsWithTheThreadThatAskedForIt() {
    Thread.currentThread().interrupt();
    assertThatThrownBy(() -> evaluated(XlsxFile.cells(cell("WORKDAY(1,2147483647)"))))
        .isInstanceOf(UnreadableFileException.class)
        .hasMessage("the check was stopped");
    assertThat(Thread.interrupted()).isTrue();
  }
}
