package tenthmark.samples.mistakes;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tenthmark.checker.rules.Finding;
import tenthmark.checker.wording.CheckerTexts;

/**
 * Mistakes planted into the correct workbooks of the corpus, one at a time: whether a rule that
 * names the kind of mistake finds it at the right place, and what is blamed besides. Each kind is
 * planted once into each workbook where it can occur.
 */
class MistakesTest {

  private static final List<Path> SETS =
      List.of(Path.of("corpus"), Path.of("corpus-later"), Path.of("corpus-acceptance"));

  /** What share of a family's mistakes is named, as reached on 1 December 2026. */
  private static final Map<String, Double> FLOORS =
      Map.of("cells", 0.67, "formulas", 0.76, "statistics", 0.73, "units", 0.64);

  private static final int MOST_WRONG = 8;

  /** How many of some planted mistakes became what. */
  private record Row(int planted, int named, int placed, int wrong) {
    static final Row NONE = new Row(0, 0, 0, 0);

    Row plus(Subject.Outcome outcome) {
      return new Row(
          planted + 1,
          named + (outcome.named() ? 1 : 0),
          placed + (outcome.placed() ? 1 : 0),
          wrong + outcome.wrong().size());
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
      for (Subject subject : subjects) {
        List<Planted> sites = mistake.sites().apply(subject).toList();
        if (!sites.isEmpty()) {
          int chosen = Math.floorMod((subject.name() + mistake.name()).hashCode(), sites.size());
          Planted planted = sites.get(chosen);
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
    assertThat(sum.wrong()).as("blamed besides").isLessThanOrEqualTo(MOST_WRONG);
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
