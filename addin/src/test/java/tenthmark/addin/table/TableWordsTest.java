package tenthmark.addin.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import tenthmark.checker.reading.words.Vocabulary;
import tenthmark.checker.record.Field;
import tenthmark.measurement.recording.ContributionKind;

/** The headings that the extension writes are those that the checker reads, in every language. */
class TableWordsTest {

  private static final Map<Column, Field> FIELDS =
      Map.ofEntries(
          Map.entry(Column.QUANTITY, Field.QUANTITY),
          Map.entry(Column.SYMBOL, Field.SYMBOL),
          Map.entry(Column.VALUE, Field.VALUE),
          Map.entry(Column.UNIT, Field.UNIT),
          Map.entry(Column.DIVISION, Field.DIVISION),
          Map.entry(Column.SPACING, Field.SPACING),
          Map.entry(Column.ENDS, Field.ENDS),
          Map.entry(Column.LAST_DIGIT, Field.RESOLUTION),
          Map.entry(Column.READING, Field.READING),
          Map.entry(Column.PHYSICAL, Field.PHYSICAL),
          Map.entry(Column.INSTRUMENT, Field.INSTRUMENT),
          Map.entry(Column.UNCERTAINTY, Field.UNCERTAINTY),
          Map.entry(Column.RESULT, Field.RESULT));

  static Stream<TableWords> languages() {
    return TableWords.inEveryLanguage();
  }

  @ParameterizedTest
  @MethodSource("languages")
  void nameTheFieldsOfTheChecker(TableWords words) {
    for (Column column : FIELDS.keySet()) {
      assertThat(Vocabulary.STANDARD.roles(words.heading(column)))
          .as(column.name())
          .contains(FIELDS.get(column).role());
    }
    assertThat(Vocabulary.STANDARD.roles(words.rationale())).contains(Field.RATIONALE.role());
  }

  @ParameterizedTest
  @EnumSource(names = {"READING", "PHYSICAL", "INSTRUMENT"})
  void nameTheKindsOfTheFunctions(Column contribution) {
    assertThat(languages().map(words -> words.kind(contribution)).distinct())
        .hasSizeGreaterThan(1)
        .allSatisfy(
            word ->
                assertThat(ContributionKind.named(word))
                    .contains(ContributionKind.valueOf(contribution.name())));
  }
}
