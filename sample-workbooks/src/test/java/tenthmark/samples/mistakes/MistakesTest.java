package tenthmark.samples.mistakes;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tenthmark.checker.rules.Finding;
import tenthmark.checker.wording.CheckerTexts;

/**
 * Mistakes planted into the correct workbooks of the corpus, one at a time: whether a rule that
 * names the kind of mistake finds it at the right place, and what is blamed besides. Each kind is
 * planted once into a workbook where it can occur.
 */
class MistakesTest {

  private static final List<Path> SETS =
      Stream.of("corpus", "corpus-later", "corpus-acceptance", "corpus-fresh")
          .map(Path::of)
          .toList();

  /** What share of a family's mistakes is named, as reached on 1 December 2026. */
  private static final Map<String, Double> FLOORS =
      Map.of("cells", 0.79, "formulas", 0.86, "statistics", 0.80, "units", 0.67);

  /**
   * Into how many workbooks each mistake is planted, so that the test takes less than a minute:
   * {@code -Dtenthmark.mistakes=1000} plants it into all.
   */
  private static final int MOST_PLANTED = Integer.getInteger("tenthmark.mistakes", 30);

  /** Beside what share of the mistakes something is blamed that has nothing to do with it. */
  private static final double MOST_WRONG = 0.02;

  /** How many of some planted mistakes became what. */
  private record Row(int planted, int named, int placed, int wrong) {
    static final Row NONE = new Row(0, 0, 0, 0);

    Row plus(Subject.Outcome outcome) {
      return new Row(
          planted + 1,
          named + (outcome.named() ? 1 : 0),
          placed + (outcome.placed() ? 1 : 0),
          wrong + (outcome.wrong().isEmpty() ? 0 : 1));
    }
  }

  static List<Mistake> mistakes() {
    return Stream.of(
            CellMistakes.all(), FormulaMistakes.all(), StatisticMistakes.all(), UnitMistakes.all())
        .flatMap(List::stream)
        .toList();
  }

  @Test
  void areNamedAtTheirPlaces() throws IOException {
    List<Subject> subjects = subjects();
    Map<String, Row> layouts = new TreeMap<>();
    Map<String, Row> families = new TreeMap<>();
    List<String> told = new ArrayList<>();
    Row sum = Row.NONE;
    String form = "%-68s %7s %5s %6s %5s%n";
    System.out.printf(form, "mistake", "planted", "named", "placed", "wrong");
    for (Mistake mistake : mistakes()) {
      Row row = Row.NONE;
      int left = MOST_PLANTED;
      for (Subject subject : shuffled(subjects, mistake)) {
        if (left == 0) {
          break;
        }
        List<Planted> sites = mistake.sites().apply(subject).toList();
        if (!sites.isEmpty()) {
          int chosen = Math.floorMod((subject.name() + mistake.name()).hashCode(), sites.size());
          Planted planted = sites.get(chosen);
          left--;
          Subject.Outcome outcome = subject.outcome(mistake, planted);
          row = row.plus(outcome);
          sum = sum.plus(outcome);
          layouts.merge(
              subject.layout(), Row.NONE.plus(outcome), (one, other) -> one.plus(outcome));
          families.merge(
              mistake.family(), Row.NONE.plus(outcome), (one, other) -> one.plus(outcome));
          told.add(line(mistake, subject, planted, outcome));
        }
      }
      print(form, mistake.family() + ": " + mistake.name(), row);
    }
    families.forEach((family, row) -> print(form, family, row));
    print(form, "all", sum);
    layouts.forEach((layout, row) -> print(form, layout, row));
    told.forEach(System.out::println);

    FLOORS.forEach(
        (family, floor) ->
            assertThat((double) families.get(family).named() / families.get(family).planted())
                .as(family)
                .isGreaterThanOrEqualTo(floor));
    assertThat(FLOORS.keySet()).isEqualTo(families.keySet());
    assertThat((double) sum.wrong() / sum.planted())
        .as("blamed besides")
        .isLessThanOrEqualTo(MOST_WRONG);
  }

  private static List<Subject> shuffled(List<Subject> subjects, Mistake mistake) {
    List<Subject> shuffled = new ArrayList<>(subjects);
    Collections.shuffle(shuffled, new Random(mistake.name().hashCode()));
    return shuffled;
  }

  private static List<Subject> subjects() throws IOException {
    List<Subject> subjects = new ArrayList<>();
    for (Path set : SETS) {
      try (Stream<Path> files = Files.list(set)) {
        files
            .filter(file -> file.toString().endsWith(".truth.yaml"))
            .sorted()
            .map(Subject::read)
            .forEach(subjects::add);
      }
    }
    return subjects;
  }

  private static void print(String form, String name, Row row) {
    System.out.printf(form, name, row.planted(), row.named(), row.placed(), row.wrong());
  }

  private static String line(
      Mistake mistake, Subject subject, Planted planted, Subject.Outcome outcome) {
    return (outcome.named() ? "NAMED " : outcome.placed() ? "PLACED " : "MISSED ")
        + mistake.name()
        + " | "
        + subject.name()
        + " "
        + planted.contents()
        + " | "
        + findings(outcome.fresh())
        + (outcome.wrong().isEmpty() ? "" : " WRONG " + findings(outcome.wrong()));
  }

  private static String findings(List<Finding> findings) {
    return findings.stream()
        .map(
            finding ->
                finding.cell()
                    + " "
                    + finding.rule().id()
                    + ": "
                    + CheckerTexts.english().say(finding.found()))
        .collect(Collectors.joining("; ", "[", "]"));
  }
}
