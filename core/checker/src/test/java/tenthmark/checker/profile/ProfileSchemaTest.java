package tenthmark.checker.profile;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.CoreSchema;
import tenthmark.checker.record.Field;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.measurement.wording.Language;

/** The published schema and the reader say the same. */
class ProfileSchemaTest {

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final ProfileReader READER = new ProfileReader(RuleCatalogue.load().ids());
  private static final Pattern KEYS = Pattern.compile("keys are (.*)");

  private final JsonNode schema = schema();
  private final Schema rules =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(schema);

  private static JsonNode schema() {
    try (InputStream file = ProfileReader.class.getResourceAsStream("course-profile.schema.json")) {
      return JSON.readTree(file);
    } catch (IOException problem) {
      throw new AssertionError(problem);
    }
  }

  boolean allows(String yaml) {
    Load load = new Load(LoadSettings.builder().setSchema(new CoreSchema()).build());
    return rules.validate(JSON.valueToTree(load.loadFromString(yaml))).isEmpty();
  }

  private static boolean reads(String yaml) {
    return READER.read(yaml) instanceof ProfileText.Usable;
  }

  @ParameterizedTest
  @ValueSource(strings = {"bicycle-workshop.yaml", "by-name.yaml", "smallest.yaml"})
  void allowsTheExamples(String name) throws IOException {
    try (InputStream file = getClass().getResourceAsStream("/profiles/" + name)) {
      String yaml = new String(file.readAllBytes(), StandardCharsets.UTF_8);
      assertThat(allows(yaml)).isTrue();
      assertThat(reads(yaml)).isTrue();
    }
  }

  /** The message about an unknown key lists the keys that the code asks for. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "/properties| unknown: 1",
        "/properties/headings/properties| headings: {unknown: 1}",
        "/$defs/convention/properties| convention: {unknown: 1}",
        "/$defs/apparatus/properties| apparatus: [{unknown: 1}]",
        "/$defs/quantity/properties| quantities: [{unknown: 1}]",
        "/$defs/table/properties| tables: [{unknown: 1}]",
        "/properties/roster/properties| roster: {unknown: 1}",
        "/$defs/grades/properties| grades: {unknown: 1}",
        "/$defs/part/properties| grades: {parts: [{unknown: 1}]}",
        "/$defs/rule/properties| rules: {unit-missing: {unknown: 1}}"
      })
  void hasTheKeysOfTheReader(String place, String yaml) {
    Set<String> published = new TreeSet<>();
    schema.at(place).fieldNames().forEachRemaining(published::add);

    List<Problem> problems = ((ProfileText.Unusable) READER.read(yaml)).problems();

    assertThat(problems)
        .extracting(Problem::message)
        .map(KEYS::matcher)
        .filteredOn(Matcher::find)
        .map(keys -> new TreeSet<>(List.of(keys.group(1).split(", "))))
        .containsExactly((TreeSet<String>) published);
  }

  @Test
  void hasARoleForEachPartOfARecord() {
    assertThat(schema.at("/$defs/table/properties/roles/additionalProperties/enum"))
        .extracting(JsonNode::asText)
        .containsExactlyElementsOf(Arrays.stream(Field.values()).map(Field::word).toList());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "course: [a]",
        "colour: red",
        "convention: classroom",
        "convention: {wide: 0}",
        "convention: {wide: 1.5}",
        "convention: {fine: half}",
        "convention: {digits: 3}",
        "convention: {combine: sum}",
        "convention: {reaction: 0}",
        "convention: {coverage: 0.5}",
        "convention: {combine-required: sometimes}",
        "apparatus: [{name: a, division: 1, unit: mm, spacing: 2}]",
        "apparatus: [{name: a, division: 1, unit: mm, spacing: narrow}]",
        "apparatus: {name: a}",
        "apparatus: [{name: a, division: 1}]",
        "apparatus: [{name: a, unit: mm}]",
        "apparatus: [{division: 1, unit: mm}]",
        "apparatus: [{name: a, division: 0, unit: mm}]",
        "apparatus: [{name: a, division: 1, unit: mm, kind: dial}]",
        "apparatus: [{name: a, division: 1, unit: mm, half-width: -1}]",
        "apparatus: [{name: a, division: 1, unit: mm, half-width: 1, counts: 1}]",
        "quantities: [{name: a}]",
        "quantities: [{unit: mm}]",
        "quantities: [{name: a, unit: mm, uncertainty: 1}]",
        "quantities: [{name: a, unit: mm, accepted: 1, gap: 0}]",
        "quantities: [{name: a, unit: mm, required: yes}]",
        "quantities: [{name: a, unit: mm, origin: typed}]",
        "grades: {most-per-rule: -1}",
        "grades: {parts: [{part: a, share: 0, sheets: Bench}]}",
        "grades: {parts: [{part: a, share: 1}]}",
        "grades: {parts: [{share: 1, sheets: Bench}]}",
        "tables: [{range: 'A2:B3', roles: {A: value}}]",
        "tables: [{sheet: a, roles: {A: value}}]",
        "tables: [{sheet: a, range: 'A2:B3'}]",
        "tables: [{sheet: a, range: A2, roles: {A: value}}]",
        "tables: [{sheet: a, range: 'A2:B3', roles: {}}]",
        "tables: [{sheet: a, range: 'A2:B3', roles: {a: value}}]",
        "tables: [{sheet: a, range: 'A2:B3', roles: {A: worth}}]",
        "tables: [{sheet: a, range: 'A2:B3', direction: up, roles: {A: value}}]",
        "rules: {unit-missing: {severity: fatal}}",
        "rules: {unit-missing: {points: -1}}",
        "headings: {shade: a}",
        "submissions: by-name",
        "submissions: \"{section}_{any}\"",
        "submissions: [underscore-separated, \"{time}\"]",
        "roster: {group: a}",
        "grades: {maximum: 0}",
        "grades: {columns: {A: mark}}",
        "just a text"
      })
  void refusesWhatTheReaderRefuses(String yaml) {
    assertThat(reads(yaml)).isFalse();
    assertThat(allows(yaml)).isFalse();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "course: 2026",
        "convention: {digits: 2, wide: 1}",
        "convention: {digits: particle-data}",
        "convention: {combine-required: true, coverage: 1.96}",
        "apparatus: [{name: a, division: 1, unit: mm, spacing: 0.5}]",
        "apparatus: [{name: a, division: 1, unit: mm, spacing: wide}]",
        "apparatus: [{name: a, division: 1, unit: mm, half-width: 0}]",
        "apparatus: [{name: a, division: 1, unit: mm, percent: 1}]",
        "apparatus: []",
        "quantities: [{name: a, unit: 1, accepted: -1e-3, uncertainty: 0}]",
        "rules: {unit-missing: {severity: none}}",
        "headings: {hand timing: [a, b], value: c}",
        "submissions: folder-per-student",
        "submissions: [underscore-separated, \"{id}-{any}\"]",
        "roster: {id: Number, name: [First, Last]}",
        "grades: {maximum: 12.5, columns: {Number: id, Lab 1: score, Lost: points-lost}}"
      })
  void allowsWhatTheReaderReads(String yaml) {
    assertThat(reads(yaml)).isTrue();
    assertThat(allows(yaml)).isTrue();
  }

  @ParameterizedTest
  @EnumSource
  void allowsEveryLanguage(Language language) {
    String yaml = "language: " + language.code();
    assertThat(reads(yaml)).isTrue();
    assertThat(allows(yaml)).isTrue();
  }

  @Test
  void saysWhatEveryKeyOfAnEntryMeans() {
    for (String part : List.of("convention", "apparatus", "quantity", "rule")) {
      JsonNode keys = schema.at("/$defs/" + part + "/properties");
      keys.fieldNames()
          .forEachRemaining(
              key -> {
                boolean shared = keys.get(key).path("$ref").asText().equals("#/$defs/unit");
                assertThat(shared || keys.get(key).has("description"))
                    .as(part + "." + key)
                    .isTrue();
              });
    }
  }
}
