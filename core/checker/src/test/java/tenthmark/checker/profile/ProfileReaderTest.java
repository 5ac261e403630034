package tenthmark.checker.profile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.course.AcceptedValue;
import tenthmark.checker.course.Apparatus;
import tenthmark.checker.course.ApparatusKind;
import tenthmark.checker.course.Course;
import tenthmark.checker.course.ExpectedQuantity;
import tenthmark.checker.course.Origin;
import tenthmark.checker.course.Specification;
import tenthmark.checker.reading.TableGuide;
import tenthmark.checker.record.Field;
import tenthmark.checker.roster.RosterColumns;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.submission.PathPattern;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.recording.Combine;
import tenthmark.measurement.recording.Convention;
import tenthmark.measurement.recording.DisplaySpecification;
import tenthmark.measurement.recording.Spacing;
import tenthmark.measurement.rounding.DigitsRule;

class ProfileReaderTest {

  private static final ProfileReader READER = new ProfileReader(RuleCatalogue.load().ids());

  private static String resource(String name) {
    try (var file = ProfileReaderTest.class.getResourceAsStream("/profiles/" + name)) {
      return new String(file.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  private static Profile profile(String yaml) {
    ProfileText text = READER.read(yaml);
    assertThat(text).isInstanceOf(ProfileText.Usable.class);
    return ((ProfileText.Usable) text).profile();
  }

  private static List<String> problems(String yaml) {
    return READER.read(yaml) instanceof ProfileText.Unusable unusable
        ? unusable.problems().stream().map(problem -> problem.in("course.yaml")).toList()
        : List.of();
  }

  @Nested
  class Content {

    private final Profile workshop = profile(resource("bicycle-workshop.yaml"));

    @Test
    void hasTheCoursesNameAndConvention() {
      assertThat(workshop.course().name()).isEqualTo("Bicycle workshop physics, first bench");
      assertThat(workshop.course().convention())
          .isEqualTo(
              new Convention(
                  "workshop", 0.2, 0.5, Combine.QUADRATURE, new DigitsRule.Fixed(2), 0.25, 1));
    }

    @Test
    void hasTheApparatus() {
      assertThat(workshop.course().apparatus())
          .extracting(Apparatus::name)
          .containsExactly("steel rule", "tyre gauge", "stopwatch");
      Apparatus rule = workshop.course().apparatus().get(0);
      assertThat(rule.also()).containsExactly("ruler", "steel ruler");
      assertThat(rule.kind()).isEqualTo(ApparatusKind.SCALE);
      assertThat(rule.division()).isEqualTo(1);
      assertThat(rule.unit().text()).isEqualTo("mm");
      assertThat(rule.spacing()).contains(Spacing.FINE);
      assertThat(rule.specification()).contains(new Specification.HalfWidth(0.2));
      Apparatus gauge = workshop.course().apparatus().get(1);
      assertThat(gauge.also()).containsExactly("gauge");
      assertThat(gauge.specification())
          .contains(new Specification.OfDisplay(new DisplaySpecification(0.01, 1, 2)));
      assertThat(workshop.course().apparatus().get(2).specification()).isEmpty();
    }

    @Test
    void hasTheQuantities() {
      assertThat(workshop.course().quantities())
          .extracting(ExpectedQuantity::name)
          .containsExactly("crank arm length", "spring constant");
      ExpectedQuantity arm = workshop.course().quantities().get(0);
      assertThat(arm.symbol()).contains("L");
      assertThat(arm.also()).containsExactly("crank length");
      assertThat(arm.accepted()).contains(new AcceptedValue(172.5, 0.5, 1.5));
      assertThat(arm.origin()).isEqualTo(Origin.MEASURED);
      assertThat(arm.required()).isTrue();
      assertThat(arm.physical()).isTrue();
      assertThat(arm.apparatus()).contains("steel rule");
      assertThat(workshop.course().quantities().get(1).required()).isFalse();
    }

    @Test
    void hasADefaultForEverythingLeftOut() {
      assertThat(profile("")).isEqualTo(Profile.NONE);
      assertThat(profile("# nothing but a comment\n")).isEqualTo(Profile.NONE);
      assertThat(profile("apparatus:\nquantities:\nrules:\nheadings:\nconvention:\ncourse:"))
          .isEqualTo(Profile.NONE);
      ExpectedQuantity plain =
          profile("quantities: [{name: mass, unit: kg}]").course().quantities().get(0);
      assertThat(plain.symbol()).isEmpty();
      assertThat(plain.also()).isEmpty();
      assertThat(plain.accepted()).isEmpty();
      assertThat(plain.origin()).isEqualTo(Origin.ANY);
      assertThat(plain.required()).isTrue();
      assertThat(plain.physical()).isFalse();
      assertThat(profile("convention: {fine: 0.5}").course().convention())
          .isEqualTo(
              new Convention("own", 0.1, 0.5, Combine.STRAIGHT, new DigitsRule.Bench(), 0.2, 1));
    }

    @Test
    void hasACoverageFactorAndWhetherTheWayOfCombiningIsRequired() {
      Course course =
          profile("convention: {combine: quadrature, combine-required: true, coverage: 2}")
              .course();

      assertThat(course.convention().coverageFactor()).isEqualTo(2);
      assertThat(course.combineRequired()).isTrue();
      assertThat(profile("convention: standard").course().combineRequired()).isFalse();
    }

    @Test
    void takesANumberForTheSpacingOfAnApparatus() {
      Apparatus rule =
          profile("apparatus: [{name: rule, division: 1, unit: mm, spacing: 0.5}]")
              .course()
              .apparatus()
              .get(0);

      assertThat(rule.fraction()).contains(0.5);
      assertThat(rule.spacing()).isEmpty();
    }

    @Test
    void namesAConvention() {
      assertThat(profile("convention: bench").course().convention()).isEqualTo(Convention.BENCH);
      assertThat(profile("convention: standard").course().convention())
          .isEqualTo(Convention.STANDARD);
    }

    @ParameterizedTest
    @CsvSource({"2026, 2026", "'\"a: b\"', a: b", "true, true", "'&x Räder  ', Räder"})
    void takesAnyScalarForAText(String yaml, String name) {
      assertThat(profile("course: " + yaml).course().name()).isEqualTo(name);
    }

    @ParameterizedTest
    @CsvSource({"0.5, 0.5", "+0.5, 0.5", ".5, 0.5", "5e-1, 0.5", "1, 1"})
    void takesNumbersAsPeopleWriteThem(String yaml, double number) {
      assertThat(profile("convention: {wide: " + yaml + "}").course().convention().wideFraction())
          .isEqualTo(number);
    }

    @Test
    void mayBeginWithAByteOrderMark() {
      assertThat(profile("\uFEFFcourse: Evening").course().name()).isEqualTo("Evening");
    }
  }

  @Nested
  class Tables {

    @Test
    void sayByColumnsWhatStandsInThem() {
      assertThat(
              profile(
                      """
                      tables:
                        - sheet: Bench
                          range: B5:AA12
                          roles: {B: quantity, D: value, AA: hand timing}
                      """)
                  .course()
                  .tables())
          .containsExactly(
              new TableGuide(
                  new CellRange("Bench", 1, 4, 26, 11),
                  false,
                  Map.of(1, Field.QUANTITY, 3, Field.VALUE, 26, Field.HAND_TIMING)));
    }

    @Test
    void sayByRowsWhatStandsInThemWhereRecordsStandSideBySide() {
      assertThat(
              profile(
                      """
                      tables:
                        - sheet: Bench
                          range: B5:F7
                          direction: across
                          roles: {5: quantity, 6: result}
                      """)
                  .course()
                  .tables())
          .containsExactly(
              new TableGuide(
                  new CellRange("Bench", 1, 4, 5, 6),
                  true,
                  Map.of(4, Field.QUANTITY, 5, Field.RESULT)));
    }
  }

  @Nested
  class EachProblem {

    @Test
    void isOneLineWithItsPlaceAndAllAreTold() {
      assertThat(
              problems(
                  """
                  course: [a, b]
                  colour: red
                  convention:
                    wide: 2
                    combine: sum
                  apparatus:
                    - name: rule
                      division: -1
                      unit: furlong
                    - name: rule
                      kind: display
                      division: 0,01
                      unit: mm
                      spacing: fine
                      half-width: 1
                      counts: 1
                    - steel
                  quantities:
                    - symbol: L
                      unit: mm
                      uncertainty: 0.5
                      required: yes
                      apparatus: gauge
                  rules:
                    no-such-rule: {points: 1}
                    unit-missing: {severity: fatal, points: many}
                  headings:
                    value: Wert (mm)
                    shade: Farbe
                  tables:
                    - sheet: Bench
                      range: F5
                      roles: {A: value}
                    - sheet: Bench
                      range: A5:F12
                      direction: sideways
                      roles: {A: quantity, G: value, 5: unit, B: worth, C: quantity}
                    - {sheet: Bench, range: "C2:E9", direction: across, roles: {1: value, C: unit}}
                    - {sheet: Bench, range: "C2:E9", roles: {C: unit, D: symbol}}
                  """))
          .containsExactly(
              "course.yaml:1:9: course must be a text",
              "course.yaml:2:1: colour is no key here; keys are course, language, convention,"
                  + " apparatus, quantities, rules, headings, tables, grades, submissions, roster,"
                  + " include",
              "course.yaml:4:9: wide is 2 but must be greater than 0 and at most 1",
              "course.yaml:5:12: combine must be one of straight, quadrature",
              "course.yaml:8:15: division is -1 but must be greater than 0",
              "course.yaml:9:11: unit cannot be used: \"furlong\" is no known unit",
              "course.yaml:10:11: there is an apparatus rule above",
              "course.yaml:12:15: division must be a number: write a decimal point, not a comma",
              "course.yaml:14:5: only a scale has a spacing of marks",
              "course.yaml:15:5: give either half-width or percent and counts",
              "course.yaml:17:5: an entry of apparatus must hold keys with values, such as"
                  + " \"name: ...\"",
              "course.yaml:19:5: name is missing",
              "course.yaml:21:5: uncertainty needs an accepted value",
              "course.yaml:22:15: required must be true or false",
              "course.yaml:23:16: there is no apparatus gauge in the list",
              "course.yaml:25:3: there is no rule no-such-rule; the command rules prints them all",
              "course.yaml:26:28: severity must be one of error, warning, note, none",
              "course.yaml:26:43: points must be a number",
              "course.yaml:28:10: leave the unit out of the heading Wert (mm): ( [ / begin a unit",
              "course.yaml:29:3: shade is no key here; keys are quantity, symbol, value, unit,"
                  + " division, spacing, ends, resolution, hand timing, reaction, cycles, reading,"
                  + " physical, instrument, timing, repeat, uncertainty, rationale, remark, result,"
                  + " apparatus",
              "course.yaml:32:12: range must be the first and the last cell of the records, such as"
                  + " A5:F12",
              "course.yaml:36:16: direction must be one of down, across",
              "course.yaml:37:26: G must be the letter of a column in the range",
              "course.yaml:37:36: 5 must be the letter of a column in the range",
              "course.yaml:37:48: B must be one of quantity, symbol, value, unit, division,"
                  + " spacing, ends, resolution, hand timing, reaction, cycles, reading, physical,"
                  + " instrument, timing, repeat, uncertainty, rationale, remark, result,"
                  + " apparatus",
              "course.yaml:37:58: quantity stands here twice",
              "course.yaml:38:63: 1 must be the number of a row in the range",
              "course.yaml:38:73: C must be the number of a row in the range",
              "course.yaml:39:43: one of the roles must be value or result");
    }

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "course: 'a| 1:11| this is not YAML; a text with special signs needs quotation"
              + " marks, and lines that belong together the same indent",
          "course: a\\n  b: c| 2:4| this is not YAML; a text with special signs needs quotation"
              + " marks, and lines that belong together the same indent",
          "unit: %| 1:7| this is not YAML; a text with special signs needs quotation"
              + " marks, and lines that belong together the same indent",
          "a: 1\\n---\\nb: 2| 2:1| this is not YAML; a text with special signs needs quotation"
              + " marks, and lines that belong together the same indent",
          "b: *hunter2| 1:4| this is not YAML; a text with special signs needs quotation"
              + " marks, and lines that belong together the same indent",
          "a\\u0007b| 1:2| a control character stands here",
          "course: x\\nco\\u0001| 2:3| a control character stands here",
          "just a text| 1:1| a profile must hold keys with values, such as \"name: ...\"",
          "[a, b]| 1:1| a profile must hold keys with values, such as \"name: ...\"",
          "course: a\\ncourse: b| 2:1| course stands here twice",
          "? [a]\\n: b| 1:3| a key must be a word",
          "apparatus: steel rule| 1:12| apparatus must be a list: each entry begins with \"- \"",
          "quantities: {name: a}| 1:13| quantities must be a list: each entry begins with \"- \"",
          "convention: classroom| 1:13| convention must be one of bench, standard",
          "convention: {wide: .nan}| 1:20| wide must be a number",
          "convention: {wide: 0x1}| 1:20| wide must be a number",
          "convention: {wide: \"0.5\"}| 1:20| wide must be a number",
          "convention: {reaction: 0}| 1:24| reaction is 0 but must be greater than 0",
          "convention: {digits: 3}| 1:22| digits must be one of bench, 1, 2, particle-data",
          "headings: {value: [x, y], unit: X}| 1:33| the heading X stands here twice"
        })
    void namesLineAndColumn(String yaml, String place, String message) {
      String text =
          yaml.replace("\\n", "\n").replace("\\u0007", "\u0007").replace("\\u0001", "\u0001");

      assertThat(problems(text)).containsExactly("course.yaml:" + place + ": " + message);
    }

    @Test
    void countsCharactersBeyondTheBasicPlaneAsOne() {
      assertThat(problems("course: {\uD83D\uDEB2: 1}"))
          .containsExactly("course.yaml:1:9: course must be a text");
      assertThat(problems("{course: \uD83D\uDEB2\uD83D\uDEB2, colour: 1}").get(0))
          .startsWith("course.yaml:1:14: colour is no key here");
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void endsInAnOutcomeWhateverTheText(int seed) {
      String pieces = "abc: -?[]{}&*!|>'\"%@`,#\n\t  \u0001é\uD83D\uDEB2";
      List<String> words =
          List.of("course", "apparatus", "- name: x", "unit: mm", "<<", "&a", "*a", "division: 1");
      Random random = new Random(seed);
      for (int round = 0; round < 3000; round++) {
        StringBuilder text = new StringBuilder();
        for (int length = random.nextInt(20); length > 0; length--) {
          text.append(
              random.nextInt(3) == 0
                  ? words.get(random.nextInt(words.size()))
                  : pieces.substring(random.nextInt(pieces.length())));
        }
        assertThat(READER.read(text.toString())).isNotNull();
      }
    }

    @Test
    void endsForAliasesThatWouldFillTheMemory() {
      StringBuilder bomb = new StringBuilder("course: &a0 [x, x]\n");
      for (int level = 1; level < 60; level++) {
        String below = "*a" + (level - 1);
        bomb.append("k").append(level).append(": &a").append(level).append(" [");
        bomb.append(below).append(", ").append(below).append("]\n");
      }
      assertThat(problems(bomb.toString()))
          .containsExactly(
              "course.yaml:1:1: this is not YAML, or more nested or repeated than a profile can"
                  + " be");
      assertThat(problems("apparatus: &a [*a]")).hasSize(1);
    }
  }

  @Nested
  class AFile {

    @TempDir private Path folder;

    @Test
    void areReadAsUtf8() throws IOException {
      Path file = Files.writeString(folder.resolve("course.yaml"), "course: Räder");

      assertThat(READER.read(file))
          .isInstanceOfSatisfying(
              ProfileText.Usable.class,
              usable -> assertThat(usable.profile().course().name()).isEqualTo("Räder"));
    }

    @Test
    void inAnotherEncodingOrTooLargeAreAProblem() throws IOException {
      Path latin = folder.resolve("latin.yaml");
      Files.write(latin, "course: Räder".getBytes(StandardCharsets.ISO_8859_1));
      Path large = Files.write(folder.resolve("large.yaml"), new byte[(1 << 20) + 1]);

      assertThat(READER.read(latin))
          .isEqualTo(
              new ProfileText.Unusable(List.of(new Problem(1, 1, "the file is not UTF-8 text"))));
      assertThat(READER.read(large))
          .isEqualTo(
              new ProfileText.Unusable(
                  List.of(new Problem(1, 1, "the file is larger than 1 MiB"))));
    }
  }

  @Nested
  class HowACourseIsRun {

    @Test
    void standsInTheProfile() {
      Administration administration =
          profile(
                  """
                  submissions: ["{section}/{id}_{any}", underscore-separated]
                  roster: {id: Number, name: [First name, Last name], section: Group}
                  grades:
                    maximum: 10
                    columns: {Number: id, "Lab 1": score}
                  """)
              .administration();

      assertThat(administration.submissions().patterns())
          .extracting(PathPattern::text)
          .startsWith("{section}/{id}_{any}", "{last}_{first}_{id}_attempt_{time}_{any}");
      assertThat(administration.roster())
          .isEqualTo(
              new RosterColumns(
                  List.of("Number"), List.of("First name", "Last name"), List.of("Group")));
      assertThat(administration.grades().maximum()).contains(10.0);
      assertThat(administration.grades().columns().toString())
          .isEqualTo("{Number=ID, Lab 1=SCORE}");
    }

    @Test
    void mistakesAreNamedWithTheirPlace() {
      assertThat(problems("submissions: by name"))
          .containsExactly(
              "course.yaml:1:14: submissions must be one of underscore-separated,"
                  + " folder-per-student, or a pattern such as {last}_{first}_{id}_{any}");
      assertThat(problems("submissions: \"{id}{any}\""))
          .containsExactly(
              "course.yaml:1:14: the pattern {id}{any}: nothing stands between two parts");
      assertThat(
              problems(
                  """
                  grades:
                    maximum: 10
                    parts:
                      - {part: readings, share: 6, rules: [reading-differs, reading-differ]}
                      - {part: results, share: 5, sheets: Results}
                  """))
          .containsExactly(
              "course.yaml:4:5: the shares of all parts are more than the maximum together",
              "course.yaml:4:41: there is no rule reading-differ; the command rules prints them"
                  + " all");
      assertThat(problems("grades: {columns: {Lab 1: mark}}"))
          .containsExactly(
              "course.yaml:1:27: Lab 1 must be one of id, name, section, score, maximum,"
                  + " points-lost, status, attempts, time, workbook");
    }
  }

  @Nested
  class Including {

    @TempDir private Path folder;

    private ProfileText read(String lab, String common) throws IOException {
      Files.writeString(folder.resolve("common.yaml"), common);
      Path file = folder.resolve("lab.yaml");
      Files.writeString(file, lab);
      return READER.read(file);
    }

    private Profile usable(String lab, String common) throws IOException {
      return ((ProfileText.Usable) read(lab, common)).profile();
    }

    private List<String> problems(String lab, String common) throws IOException {
      return ((ProfileText.Unusable) read(lab, common))
          .problems().stream().map(problem -> problem.in("lab.yaml")).toList();
    }

    private static final String COMMON =
        """
        course: Bicycle workshop
        convention: {wide: 0.5, fine: 0.5}
        apparatus:
          - {name: steel rule, division: 1, unit: mm}
        rules:
          unit-missing: {points: 1}
          symbol-missing: {severity: none}
        """;

    @Test
    void sharesWhatTheLabDoesNotSayItself() throws IOException {
      Profile lab =
          usable(
              """
              include: common.yaml
              course: Bicycle workshop, lab 2
              apparatus:
                - {name: stopwatch, kind: stopwatch, division: 0.01, unit: s}
              quantities:
                - {name: spoke, unit: mm, apparatus: steel rule}
              rules:
                unit-missing: {points: 2}
              """,
              COMMON);

      assertThat(lab.course().name()).isEqualTo("Bicycle workshop, lab 2");
      assertThat(lab.course().convention().fineFraction()).isEqualTo(0.5);
      assertThat(lab.course().apparatus())
          .extracting(Apparatus::name)
          .containsExactly("steel rule", "stopwatch");
      assertThat(lab.grading().policies().get("unit-missing").points()).isEqualTo(2);
      assertThat(lab.grading().policies()).containsKey("symbol-missing");
    }

    @Test
    void letsALabChangeAPartOfTheConvention() throws IOException {
      Convention convention =
          usable("include: [common.yaml]\nconvention: {fine: 0.25}", COMMON).course().convention();

      assertThat(convention.fineFraction()).isEqualTo(0.25);
      assertThat(convention.wideFraction()).isEqualTo(0.5);
    }

    @Test
    void namesTheFileInWhichAMistakeStands() throws IOException {
      assertThat(problems("include: common.yaml", "course: a\ncolour: red"))
          .first()
          .asString()
          .startsWith("lab.yaml includes common.yaml:2:1: colour is no key here");
      assertThat(problems("include: common.yaml", "course: [a"))
          .first()
          .asString()
          .startsWith("lab.yaml includes common.yaml:1:1")
          .contains("this is not YAML");
      assertThat(problems("include: other.yaml", ""))
          .containsExactly("lab.yaml:1:10: other.yaml cannot be read");
      assertThat(problems("include: common.yaml", "include: lab.yaml"))
          .containsExactly("lab.yaml includes common.yaml:1:10: lab.yaml includes itself");
    }

    @Test
    void isForFilesAlone() {
      assertThat(ProfileReaderTest.problems("include: common.yaml"))
          .containsExactly("course.yaml:1:1: only a profile in a file can include others");
    }

    @Test
    void makesTheFilesOfAProfile() throws IOException {
      read("include: common.yaml", COMMON);

      assertThat(ProfileReader.files(folder.resolve("lab.yaml")))
          .containsExactly(folder.resolve("lab.yaml"), folder.resolve("common.yaml"));
    }
  }
}
