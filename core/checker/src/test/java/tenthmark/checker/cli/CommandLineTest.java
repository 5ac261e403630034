package tenthmark.checker.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.workbook.Grid;
import tenthmark.checker.workbook.XlsxFile;

/** Students and numbers are invented. */
class CommandLineTest {

  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(Object... arguments) {
    return Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true))
        .execute(Arrays.stream(arguments).map(Object::toString).toArray(String[]::new));
  }

  private static Grid table() {
    return Grid.sheet("Records").row("Quantity", "Value", "Unit", "Uncertainty", "Rationale");
  }

  private Path good(String name) {
    return table()
        .row("Crank arm", 172.5, "mm", 0.5, "Fine marks, two ends.")
        .xlsx(folder.resolve(name));
  }

  private Path faulty(String name) {
    return table()
        .row("Crank arm", 172.5, null, 0.5, "Fine marks, two ends.")
        .xlsx(folder.resolve(name));
  }

  private Path noted(String name) {
    return table()
        .row("Zero offset", 0.1, "mm", 0.5, "Fine marks, two ends.")
        .xlsx(folder.resolve(name));
  }

  @Nested
  class ExitStatus {

    @Test
    void isZeroForACleanFileAndForNotesAlone() {
      assertThat(run("check", good("good.xlsx"))).isZero();
      assertThat(run("check", noted("noted.xlsx"))).isZero();
      assertThat(out.toString()).contains("note uncertainty-exceeds-value");
      assertThat(err.toString()).isEmpty();
    }

    @Test
    void isOneForFindings() {
      assertThat(run("check", faulty("ada.xlsx"))).isEqualTo(1);
    }

    @Test
    void isOneWhereNothingWasReadWhateverTheProfileMakesOfThat() throws Exception {
      Path unread = Grid.sheet("Data").row("A").row(172.5).xlsx(folder.resolve("unread.xlsx"));
      Path profile =
          Files.writeString(
              folder.resolve("course.yaml"), "rules: {nothing-read: {severity: none}}");

      assertThat(run("check", unread)).isEqualTo(1);
      assertThat(out.toString())
          .contains(
              "Data.A2: error nothing-read: no measurement record",
              "the workbook holds 1 number",
              "0 records read");
      assertThat(run("check", "--profile", profile, unread)).isEqualTo(1);
    }

    @Test
    void isTwoWhereAFileCouldNotBeCheckedAndTheOthersAreChecked() throws Exception {
      Path text = Files.writeString(folder.resolve("b.xlsx"), "no workbook");

      assertThat(run("check", text, folder.resolve("none.ods"), faulty("c.xlsx"))).isEqualTo(2);

      assertThat(err.toString().lines())
          .containsExactly(
              text
                  + ": cannot be checked: not a workbook: its content is neither .xlsx, .xlsm,"
                  + " .xls nor .ods",
              folder.resolve("none.ods") + ": cannot be checked: no such file or folder");
      assertThat(out.toString()).contains("c.xlsx: Records.C2: error unit-missing");
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "check --format xml a.ods", "polish a.ods", ""})
    void isThreeForAWrongCommandLine(String arguments) {
      assertThat(run((Object[]) arguments.split(" "))).isEqualTo(3);
      assertThat(err.toString()).isNotBlank();
    }

    @Test
    void isWrittenInTheHelp() {
      assertThat(run("check", "--help")).isZero();
      assertThat(out.toString())
          .contains("FILES|FOLDERS", "--format", "Exit status:", "could not be checked");
    }
  }

  @Nested
  class PlainText {

    @Test
    void isOneLineForEachFindingAndASummary() {
      Path file = faulty("ada.xlsx");

      run("check", file);

      assertThat(out.toString().lines())
          .containsExactly(
              file
                  + ": Records.C2: error unit-missing: the record \"Crank arm\" has no unit;"
                  + " expected: a unit such as mm, or 1 for a quantity without dimension; to fix:"
                  + " Write the unit; for a quantity without dimension write 1.",
              file + ": 1 error, 0 warnings, 0 notes; 1 record read",
              "1 file checked, 1 error, 0 warnings, 0 notes; 1 record read");
    }

    @Test
    void staysOneLineWhateverAStudentTypes() {
      Path file =
          table()
              .row("Arm\nother.ods: fine\u001b[31m", 172.5, null, 0.5, "Fine marks.")
              .xlsx(folder.resolve("a.xlsx"));

      run("check", file);

      assertThat(out.toString().lines()).hasSize(3);
      assertThat(out.toString()).doesNotContain("\u001b");
    }
  }

  @Nested
  class Quiet {

    @Test
    void leavesTheSummaryAndWhatCouldNotBeChecked() {
      Path missing = folder.resolve("none.ods");

      assertThat(run("check", "--quiet", faulty("ada.xlsx"), missing)).isEqualTo(2);

      assertThat(out.toString().lines())
          .containsExactly(
              "1 file checked, 1 error, 0 warnings, 0 notes, 1 could not be checked;"
                  + " 1 record read");
      assertThat(err.toString()).startsWith(missing + ": cannot be checked: ");
    }
  }

  @Nested
  class SeveralFilesAtATime {

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 7})
    void giveTheSameOutput(int threads) throws Exception {
      for (int i = 0; i < 40; i++) {
        String name = "student %02d.xlsx".formatted(i);
        switch (i % 3) {
          case 0 -> good(name);
          case 1 -> faulty(name);
          default -> Files.writeString(folder.resolve(name), "no workbook");
        }
      }

      assertThat(run("check", "--threads", threads, folder)).isEqualTo(2);

      assertThat(
              out.toString()
                  .lines()
                  .filter(line -> line.endsWith(" notes; 1 record read"))
                  .map(this::name))
          .isSorted()
          .hasSize(27);
      assertThat(out.toString())
          .endsWith(
              "27 files checked, 13 errors, 0 warnings, 0 notes, 13 could not be checked;"
                  + " 27 records read\n");
      assertThat(err.toString().lines().map(this::name)).isSorted().hasSize(13);
    }

    private String name(String line) {
      return line.split(": ", -1)[0];
    }

    @Test
    void areEachCheckedOnceHoweverOftenTheyAreNamed() {
      Path file = good("ada.xlsx");

      run("check", "--quiet", file, folder, file);

      assertThat(out.toString()).startsWith("1 file checked");
    }

    @ParameterizedTest
    @ValueSource(strings = {"--threads", "--time-limit"})
    void needAtLeastOne(String option) {
      assertThat(run("check", option, "0", folder)).isEqualTo(3);
      assertThat(err.toString()).startsWith(option + " is 0 but must be at least 1");
    }
  }

  @Nested
  class ChangedOnly {

    @Test
    void printsTheSameAsAFullCheck() {
      Path state = folder.resolve("state");
      good("ada.xlsx");
      faulty("ben.xlsx");
      run("check", "--state", state, folder);
      String full = out.toString();
      faulty("ada.xlsx");
      good("ada.xlsx");
      out.getBuffer().setLength(0);

      assertThat(run("check", "--changed-only", "--state", state, folder)).isEqualTo(1);

      assertThat(out.toString()).isEqualTo(full).contains("ben.xlsx: Records.C2: error");
      assertThat(err.toString()).contains("unchanged since the last check");
    }

    @Test
    void keepsItsResultsBesideTheReports() {
      Path reports = folder.resolve("reports");
      Path file = good("ada.xlsx");
      run("check", "--out", reports, file);

      assertThat(run("check", "--changed-only", "--out", reports, file)).isZero();

      assertThat(err.toString().strip()).isEqualTo("1 unchanged since the last check");
    }

    @Test
    void needsAStateFile() {
      assertThat(run("check", "--changed-only", folder)).isEqualTo(3);
      assertThat(err.toString()).startsWith("--changed-only needs --out DIR or --state FILE");
    }

    @Test
    void leavesAFileThatIsNoStateAsItIs() throws Exception {
      Path notes = Files.writeString(folder.resolve("notes.txt"), "spokes");

      assertThat(run("check", "--state", notes, good("ada.xlsx"))).isEqualTo(2);

      assertThat(err.toString()).contains("it is a file of another kind and is left as it is");
      assertThat(notes).hasContent("spokes");
    }
  }

  @Nested
  class Plain {

    @Test
    void hasATimeLimit() {
      Path file = good("ada.xlsx");

      assertThat(run("plain", "--time-limit", "0", file)).isEqualTo(3);
      assertThat(err.toString()).contains("--time-limit is 0 but must be at least 1");
      assertThat(run("plain", "--time-limit", "30", file)).isZero();
    }

    private Path table() {
      return Grid.sheet("Records").row("=LAB_READING(1)").xlsx(folder.resolve("ada.xlsx"));
    }

    @Test
    void writesBesideTheOriginalOrWhereItIsTold() {
      Path file = table();

      assertThat(run("plain", file)).isZero();
      assertThat(run("plain", file, "--out", folder.resolve("copy.xlsx"))).isZero();

      assertThat(out.toString().lines())
          .containsExactly(
              folder.resolve("ada-plain.xlsx") + ": formulas that became values: 1",
              folder.resolve("copy.xlsx") + ": formulas that became values: 1");
      assertThat(folder.resolve("copy.xlsx")).exists();
      assertThat(err.toString()).isEmpty();
    }

    @Test
    void overwritesNothing() {
      Path file = table();

      assertThat(run("plain", file, "--out", file)).isEqualTo(2);

      assertThat(err.toString().strip())
          .isEqualTo(file + ": exists already and is not overwritten");
      assertThat(out.toString()).isEmpty();
    }

    @Test
    void namesCellsThatCannotBeCalculated() {
      Path file =
          Grid.sheet("Records").row("=LAB_READING(NOVEL(1))").xlsx(folder.resolve("ada.xlsx"));

      assertThat(run("plain", file)).isEqualTo(1);

      assertThat(err.toString()).startsWith("Records.A1: cannot be calculated here");
    }

    @Test
    void refusesWhatIsNoWorkbook() {
      assertThat(run("plain", folder.resolve("none.ods"))).isEqualTo(2);
      assertThat(err.toString().strip())
          .isEqualTo(folder.resolve("none.ods") + ": no such file or folder");
    }
  }

  @Nested
  class Json {

    @Test
    void holdsFilesAndFindings() throws Exception {
      Path faulty = faulty("ada.xlsx");
      Path missing = folder.resolve("none.ods");

      assertThat(run("check", "--format", "json", faulty, missing)).isEqualTo(2);

      JsonNode files = new ObjectMapper().readTree(out.toString()).get("files");
      JsonNode finding = files.get(0).get("findings").get(0);
      assertThat(files.get(0).get("file").asText()).isEqualTo(faulty.toString());
      assertThat(files.get(0).get("checked").asBoolean()).isTrue();
      assertThat(finding.get("rule").asText()).isEqualTo("unit-missing");
      assertThat(finding.get("severity").asText()).isEqualTo("error");
      assertThat(finding.get("sheet").asText()).isEqualTo("Records");
      assertThat(finding.get("cell").asText()).isEqualTo("C2");
      assertThat(finding.get("fix").asText()).isNotBlank();
      assertThat(files.get(1).get("checked").asBoolean()).isFalse();
      assertThat(files.get(1).get("problem").asText()).isEqualTo("no such file or folder");
    }
  }

  @Nested
  class Profiles {

    private Path profile(String... lines) throws Exception {
      return Files.writeString(folder.resolve("course.yaml"), String.join("\n", lines));
    }

    @Test
    void changeTheSeverityOfARule() throws Exception {
      Path noted = profile("rules:", "  unit-missing: {severity: note}");

      assertThat(run("check", "--profile", noted, faulty("ada.xlsx"))).isZero();

      assertThat(out.toString()).contains("note unit-missing", "0 errors, 0 warnings, 1 note");
    }

    @Test
    void giveFindingsPoints() throws Exception {
      Path graded = profile("rules:", "  unit-missing: {points: 2.5}");

      run("check", "--profile", graded, "--format", "json", faulty("ada.xlsx"));

      JsonNode finding = new ObjectMapper().readTree(out.toString()).at("/files/0/findings/0");
      assertThat(finding.get("rule").asText()).isEqualTo("unit-missing");
      assertThat(finding.get("severity").asText()).isEqualTo("error");
      assertThat(finding.get("points").asDouble()).isEqualTo(2.5);
    }

    @Test
    void showWhatFindingsCost() throws Exception {
      Path graded =
          profile("rules:", "  unit-missing: {points: 0.1}", "  rationale-missing: {points: 0.2}");
      Path file = table().row("Crank arm", 172.5, null, 0.5).xlsx(folder.resolve("ada.xlsx"));

      run("check", "--profile", graded, file);

      assertThat(out.toString().lines())
          .anyMatch(line -> line.contains("unit-missing") && line.endsWith(". Points lost: 0.1"))
          .anyMatch(line -> line.contains("rationale-") && line.endsWith(". Points lost: 0.2"))
          .contains(file + ": 1 error, 1 warning, 0 notes, points lost: 0.3; 1 record read");
    }

    @Test
    void leaveARuleOut() throws Exception {
      Path none = profile("rules:", "  unit-missing: {severity: none}");

      assertThat(run("check", "--profile", none, faulty("ada.xlsx"))).isZero();

      assertThat(out.toString()).doesNotContain("unit-missing");
    }

    @Test
    void nameFurtherHeadings() throws Exception {
      Path italian =
          profile("headings:", "  value: Misurato", "  uncertainty: [Incertezza, Errore]");
      Path table =
          Grid.sheet("Valori")
              .row("Name", "Misurato [mm]", "errore [mm]")
              .row("Pedivella", 172.5, null)
              .xlsx(folder.resolve("a.xlsx"));

      assertThat(run("check", table)).isEqualTo(1);
      assertThat(out.toString()).contains("nothing-read").doesNotContain("uncertainty-missing");
      assertThat(run("check", "--profile", italian, table)).isEqualTo(1);
      assertThat(out.toString()).contains("Valori.C2: error uncertainty-missing");
    }

    @Test
    void changeTheConvention() throws Exception {
      Path half = profile("convention: {fine: 0.4}");
      Path table =
          Grid.sheet("Records")
              .row(
                  "Quantity",
                  "Value",
                  "Unit",
                  "Division",
                  "Spacing",
                  "Ends",
                  "Reading",
                  "Uncertainty",
                  "Rationale")
              .row("Crank arm", 172.5, "mm", 1, "fine", 2, 0.5, 0.5, "Fine marks, two ends.")
              .xlsx(folder.resolve("a.xlsx"));

      assertThat(run("check", table)).isZero();
      assertThat(run("check", "--profile", half, table)).isEqualTo(1);

      assertThat(out.toString())
          .contains("reading-differs")
          .contains("0.8 (division 1 x fraction 0.4 x ends 2)");
    }

    @Test
    void withProblemsEndTheCommandWithALineForEach() throws Exception {
      Path wrong = profile("colour: red", "convention: {wide: 2}");

      assertThat(run("check", "--profile", wrong, good("good.xlsx"))).isEqualTo(2);

      assertThat(out.toString()).isEmpty();
      assertThat(err.toString().lines())
          .containsExactly(
              wrong
                  + ":1:1: colour is no key here; keys are course, language, convention, apparatus,"
                  + " quantities, rules, headings, tables, grades, submissions, roster, include",
              wrong + ":2:20: wide is 2 but must be greater than 0 and at most 1");
    }

    @Test
    void areStartedFromAWorkbook() throws Exception {
      Path workbook = good("good.xlsx");
      Path started = folder.resolve("started.yaml");

      assertThat(run("profile", "init", workbook)).isZero();
      assertThat(run("profile", "init", workbook, "--out", started)).isZero();

      assertThat(out.toString()).isEqualTo(Files.readString(started)).contains("name: Crank arm");
      assertThat(run("check", "--profile", started, workbook)).isZero();
      assertThat(err.toString()).isEmpty();
    }

    @Test
    void sayWhatWasNotReadInTheWorkbookAndWhatTheyFindInIt() {
      Path workbook =
          table()
              .row("Crank arm", 172.5, "mm", null, "Fine marks, two ends.")
              .row()
              .row(null, 7.25)
              .xlsx(folder.resolve("ada.xlsx"));

      assertThat(run("profile", "init", workbook)).isZero();

      assertThat(err.toString().lines())
          .containsExactly(
              workbook
                  + ": Not read on the sheet Records: B4 (nothing on the sheet says what this"
                  + " number is)",
              workbook
                  + ": Records.D2: a check by this profile finds uncertainty-missing: the record"
                  + " \"Crank arm\" has no uncertainty");
    }

    /** Each sum reads all cells above it, 1.8 billion together. */
    @Test
    @Timeout(120)
    void areNotStartedFromAWorkbookThatTakesTooLong() throws Exception {
      StringBuilder rows = new StringBuilder();
      for (int row = 1; row <= 60_000; row++) {
        rows.append("<row><c><v>1</v></c><c><f>SUM(A$1:A%d)</f></c></row>".formatted(row));
      }
      Path slow = XlsxFile.rows(rows.toString()).write(folder.resolve("slow.xlsx"));

      assertThat(run("profile", "init", slow)).isEqualTo(2);

      assertThat(err.toString()).contains("it takes longer than 20.0 s and was stopped");
      assertThat(out.toString()).isEmpty();
    }

    @Test
    void areNotStartedOverAFileOrFromNoWorkbook() throws Exception {
      Path kept = Files.writeString(folder.resolve("kept.yaml"), "course: mine");

      assertThat(run("profile", "init", good("good.xlsx"), "--out", kept)).isEqualTo(2);
      assertThat(run("profile", "init", kept)).isEqualTo(2);
      assertThat(run("profile")).isEqualTo(3);

      assertThat(kept).hasContent("course: mine");
      assertThat(err.toString())
          .contains(
              kept + ": exists already and is kept", kept + ": cannot be read: not a workbook");
    }

    @Test
    void thatCannotBeReadEndTheCommand() throws Exception {
      assertThat(run("check", "--profile", folder.resolve("none.yaml"), good("good.xlsx")))
          .isEqualTo(2);
      assertThat(err.toString()).contains("none.yaml: the profile cannot be read: ");
    }
  }

  @Nested
  class Folders {

    @Test
    void areSearchedInOrderWithoutLockFiles() throws Exception {
      Files.createDirectories(folder.resolve("group 2"));
      faulty("group 2/ben.xlsx");
      faulty("ada.XLSX");
      Files.writeString(folder.resolve("~$ada.xlsx"), "lock");
      Files.writeString(folder.resolve(".~lock.ada.xlsx#"), "lock");
      Files.writeString(folder.resolve("notes.txt"), "notes");

      assertThat(run("check", folder)).isEqualTo(1);

      assertThat(out.toString().lines().map(line -> line.split(": ", -1)[0]))
          .containsExactly(
              folder.resolve("ada.XLSX").toString(),
              folder.resolve("ada.XLSX").toString(),
              folder.resolve("group 2/ben.xlsx").toString(),
              folder.resolve("group 2/ben.xlsx").toString(),
              "2 files checked, 2 errors, 0 warnings, 0 notes; 2 records read");
    }

    @Test
    void areTheSameBehindALink() throws Exception {
      faulty("ada.xlsx");
      Path link = Files.createSymbolicLink(folder.resolveSibling(folder + "-link"), folder);

      try {
        assertThat(run("check", link)).isEqualTo(1);

        assertThat(out.toString()).startsWith(link.resolve("ada.xlsx") + ": Records.C2: error");
      } finally {
        Files.delete(link);
      }
    }

    @Test
    void giveEachWorkbookOnceByWhateverNames() throws Exception {
      Path ada = faulty("ada.xlsx");
      Path elsewhere = Files.createDirectories(folder.resolve("others"));
      Files.createSymbolicLink(elsewhere.resolve("link.xlsx"), ada);

      run("check", "--quiet", folder, folder.resolve("others/../ada.xlsx"));

      assertThat(out.toString()).startsWith("1 file checked, 1 error");
    }

    @Test
    void giveWorkbooksThatAreLinks() throws Exception {
      Path handedIn = Files.createDirectories(folder.resolve("handed-in"));
      Files.createSymbolicLink(handedIn.resolve("ada.xlsx"), faulty("ada.xlsx"));

      run("check", "--quiet", handedIn);

      assertThat(out.toString()).startsWith("1 file checked, 1 error");
    }

    /** Two with the same numbers would be said to have shared them. */
    @Test
    void giveNoCopiesThatAnEarlierCheckMade() {
      faulty("ada.xlsx");
      run("check", "--quiet", "--out", folder.resolve("feedback"), folder);
      run("check", "--quiet", "--out", folder.resolve("later"), folder);
      run("check", "--quiet", folder);

      assertThat(out.toString().lines())
          .hasSize(3)
          .allMatch(line -> line.startsWith("1 file checked, 1 error"));
    }

    @Test
    void withoutAWorkbookAreSaidToBe() {
      assertThat(run("check", folder)).isEqualTo(2);
      assertThat(err.toString().strip())
          .isEqualTo(folder + ": cannot be checked: there is no workbook in this folder");
    }
  }

  @Nested
  class OriginalFiles {

    @Test
    void areNeverChanged() throws Exception {
      for (String name :
          new String[] {"good.ods", "good.xlsx", "native-formulas.xls", "native-formulas.ods"}) {
        Files.copy(Path.of("src/test/resources/saved-by-calc", name), folder.resolve(name));
      }
      Files.writeString(folder.resolve("damaged.xlsx"), "PK\u0003\u0004 and no more");
      String before = hashes();

      run("check", folder);

      assertThat(hashes()).isEqualTo(before);
    }

    private String hashes() throws Exception {
      StringBuilder hashes = new StringBuilder();
      try (Stream<Path> files = Files.list(folder)) {
        for (Path file : files.sorted().toList()) {
          byte[] hash = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
          hashes.append(file).append(' ').append(HexFormat.of().formatHex(hash)).append('\n');
        }
      }
      return hashes.toString();
    }
  }

  @Test
  void rulesPrintsEveryRule() {
    assertThat(run("rules")).isZero();
    RuleCatalogue.load()
        .rules()
        .forEach(rule -> assertThat(out.toString()).contains(rule.declaration().id() + " ("));
  }

  @Nested
  class Explain {

    @Test
    void printsOneRuleWithAnExample() {
      assertThat(run("explain", "total-differs")).isZero();
      assertThat(out.toString().lines().map(line -> line.split(":", -1)[0].strip()))
          .containsExactly("total-differs (error)", "looks for", "why", "to fix", "example");
      assertThat(err.toString()).isEmpty();
    }

    @Test
    void saysWhichRulesThereAreWhereThereIsNoSuchRule() {
      assertThat(run("explain", "colour-wrong")).isEqualTo(3);
      assertThat(err.toString())
          .startsWith("there is no rule colour-wrong; rules are ")
          .contains("total-differs, ");
      assertThat(out.toString()).isEmpty();
    }
  }

  @Test
  void versionNamesTheProgram() {
    assertThat(run("--version")).isZero();
    assertThat(out.toString()).startsWith("tenthmark-checker ");
  }
}
