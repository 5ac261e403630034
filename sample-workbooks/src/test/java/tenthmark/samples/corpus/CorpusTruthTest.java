package tenthmark.samples.corpus;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What the drawers of the corpus say about their workbooks agrees with the files: with the numbers
 * that Calc, Gnumeric or POI computed.
 */
class CorpusTruthTest {

  private static final double EXACT = 1e-9;

  static List<CorpusFile> files() {
    return CorpusFile.all();
  }

  @ParameterizedTest
  @MethodSource("files")
  void everyNumberHasOnePlaceInIt(CorpusFile file) throws Exception {
    Map<String, Set<String>> roles = new TreeMap<>();
    for (Map<String, Object> record : file.records()) {
      cellsOf(record).forEach((role, cells) -> cells.forEach(cell -> add(roles, cell, role)));
    }
    for (Map<String, Object> other : file.others()) {
      CorpusFile.places((String) other.get("sheet"), (String) other.get("range"))
          .forEach(cell -> add(roles, cell, other.get("is") + " " + other.get("range")));
    }
    Map<String, Object> contents = file.contents();
    Set<String> numbers =
        contents.keySet().stream()
            .filter(cell -> contents.get(cell) instanceof Double)
            .collect(Collectors.toCollection(TreeSet::new));
    Set<String> texts =
        file.records().stream()
            .map(
                record ->
                    CorpusFile.place((String) record.get("sheet"), (String) record.get("value")))
            .filter(cell -> contents.get(cell) instanceof String)
            .collect(Collectors.toSet());
    Set<String> told = new TreeSet<>(roles.keySet());
    told.removeAll(texts);

    assertThat(told).isEqualTo(numbers);
    assertThat(roles).allSatisfy((cell, each) -> assertThat(each).as(cell).hasSize(1));
  }

  private static void add(Map<String, Set<String>> roles, String cell, String role) {
    roles.computeIfAbsent(cell, key -> new TreeSet<>()).add(role);
  }

  /** The cells of a record by their part in it; a value is one record's alone. */
  @SuppressWarnings("unchecked")
  private static Map<String, List<String>> cellsOf(Map<String, Object> record) {
    String sheet = (String) record.get("sheet");
    Map<String, List<String>> cells = new LinkedHashMap<>();
    cells.put(
        "value of " + record.get("quantity") + " " + record.get("value"),
        List.of(CorpusFile.place(sheet, (String) record.get("value"))));
    if (record.get("uncertainty") instanceof String cell && isCell(cell)) {
      cells.put("uncertainty", List.of(CorpusFile.place(sheet, cell)));
    }
    ((Map<String, String>) record.getOrDefault("contributions", Map.of()))
        .forEach((kind, cell) -> cells.put(kind, List.of(CorpusFile.place(sheet, cell))));
    cells.put(
        "parameter",
        ((List<String>) record.getOrDefault("parameters", List.of()))
            .stream().map(cell -> CorpusFile.place(sheet, cell)).toList());
    return cells;
  }

  @ParameterizedTest
  @MethodSource("files")
  void statedNumbersAreThoseInTheFile(CorpusFile file) throws Exception {
    Map<String, Object> contents = file.contents();
    for (Map<String, Object> record : file.records()) {
      Object value =
          contents.get(
              CorpusFile.place((String) record.get("sheet"), (String) record.get("value")));
      if (record.get("number") instanceof String stated && value instanceof Double number) {
        BigDecimal decimal = new BigDecimal(stated);
        double half = 0.5 * decimal.ulp().doubleValue();
        assertThat(number)
            .as(record.toString())
            .isCloseTo(decimal.doubleValue(), within(half + EXACT * Math.abs(number)));
      }
      if (value instanceof String text) {
        assertThat(text.replace(',', '.').replace("\u202f", "").replace(" ", ""))
            .as(record.toString())
            .contains(new BigDecimal(record.get("number").toString()).toPlainString());
      }
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void uncertaintiesAreTheirContributionsAddedUpAndRounded(CorpusFile file) throws Exception {
    Map<String, Object> contents = file.contents();
    boolean straight = file.truth().get("combine").equals("straight");
    for (Map<String, Object> record : file.records()) {
      double[] parts = contributions(record, contents);
      if (parts.length > 0 && record.get("uncertainty") instanceof String cell && isCell(cell)) {
        double sum =
            straight
                ? Arrays.stream(parts).sum()
                : Math.sqrt(Arrays.stream(parts).map(part -> part * part).sum());
        double told = (Double) contents.get(CorpusFile.place((String) record.get("sheet"), cell));
        assertThat(Stream.of(sum, rounded(sum, 1), rounded(sum, 2)))
            .as(record.toString())
            .anySatisfy(
                expected ->
                    assertThat(told).isCloseTo(expected, within(EXACT * Math.abs(expected))));
      }
    }
  }

  @SuppressWarnings("unchecked")
  private static double[] contributions(Map<String, Object> record, Map<String, Object> contents) {
    return ((Map<String, String>) record.getOrDefault("contributions", Map.of()))
        .values().stream()
            .map(cell -> CorpusFile.place((String) record.get("sheet"), cell))
            .mapToDouble(cell -> contents.get(cell) instanceof Double number ? number : 0)
            .toArray();
  }

  private static double rounded(double number, int digits) {
    return BigDecimal.valueOf(number)
        .round(new MathContext(digits, RoundingMode.HALF_UP))
        .doubleValue();
  }

  private static boolean isCell(String uncertainty) {
    return uncertainty.matches(".*[A-Z]+[0-9]+");
  }

  /** No measured value has an uncertainty without a reason, and the reason is written somewhere. */
  @ParameterizedTest
  @MethodSource("files")
  void reasonsStandWhereTheTruthSays(CorpusFile file) throws Exception {
    Map<String, Object> contents = file.contents();
    for (Map<String, Object> record : file.records()) {
      String reason = (String) record.get("rationale");
      if (record.get("kind").equals("measured") && record.containsKey("uncertainty")) {
        assertThat(reason).as(record.toString()).isNotNull();
      }
      if (reason != null && !reason.matches("comment .*|box")) {
        assertThat(contents.get(CorpusFile.place((String) record.get("sheet"), reason)))
            .as(record.toString())
            .isInstanceOf(String.class);
      }
    }
  }

  @Nested
  class TheOpenPart {

    @Test
    void hasManyLayoutsTopicsLanguagesAndPrograms() {
      Collection<CorpusFile> all = CorpusFile.all();
      Map<String, Long> languages =
          all.stream().collect(Collectors.groupingBy(CorpusFile::language, Collectors.counting()));

      assertThat(all).hasSizeGreaterThanOrEqualTo(44);
      assertThat(all.stream().map(CorpusFile::layout).distinct().count())
          .isGreaterThanOrEqualTo(16);
      assertThat(all.stream().map(file -> file.truth().get("topic")).distinct().count())
          .isGreaterThanOrEqualTo(16);
      assertThat(languages).containsOnlyKeys("en", "de", "fr", "es");
      assertThat(languages.values()).allMatch(count -> count >= 8);
      assertThat(all.stream().map(CorpusFile::program).distinct())
          .containsExactlyInAnyOrder("poi", "calc", "gnumeric");
    }

    /** What the families draw is what lies in the folder. */
    @Test
    void isWhatTheFamiliesDraw() throws Exception {
      Map<String, String> drawn = new TreeMap<>();
      for (Family family : Family.ofSet("open")) {
        for (Drawing drawing : family.drawings()) {
          assertThat(drawn.put(drawing.name(), TruthFile.text(drawing)))
              .as("two drawings named %s", drawing.name())
              .isNull();
        }
      }
      Map<String, String> kept = new TreeMap<>();
      for (CorpusFile file : CorpusFile.all()) {
        String name = file.toString().replaceAll("\\.[a-z]+$", "");
        kept.put(name, Files.readString(CorpusFile.FOLDER.resolve(name + ".truth.yaml")));
      }
      assertThat(kept).isEqualTo(drawn);
    }
  }
}
