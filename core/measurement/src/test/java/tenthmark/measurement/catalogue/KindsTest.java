package tenthmark.measurement.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.measurement.formula.CellBlock;
import tenthmark.measurement.formula.CellRange;

class KindsTest {

  private enum Colour {
    RED,
    GREEN
  }

  @Nested
  class Numbers {

    @Test
    void areFinite() {
      assertThat(read(Kinds.number(), Value.of(-1.5))).isEqualTo(-1.5);
      refused(Kinds.number(), Value.of(Double.POSITIVE_INFINITY), "size is not a finite number;");
      refused(Kinds.number(), Value.of(Double.NaN), "size is not a finite number;");
    }

    @Test
    void areNotTextsBlanksErrorsOrRanges() {
      refused(Kinds.number(), Value.of("1.5"), "size is the text \"1.5\"; it must be a number.");
      refused(Kinds.number(), Value.BLANK, "size is blank; it must be a number.");
      refused(Kinds.number(), new Value.Fault("#DIV/0!"), "size is the error #DIV/0!;");
      refused(Kinds.number(), column(Value.of(1), Value.of(2)), "size is a range of 2 by 1 cells;");
    }

    @Test
    void mayHaveALimit() {
      assertThat(read(Kinds.positive(), Value.of(Double.MIN_VALUE))).isPositive();
      assertThat(read(Kinds.notNegative(), Value.of(0))).isZero();
      refused(Kinds.positive(), Value.of(0), "size is 0; it must be a number greater than zero.");
      refused(Kinds.notNegative(), Value.of(-1), "size is -1;");
    }

    @Test
    void mayBeWhole() {
      assertThat(read(Kinds.whole(1, 3), Value.of(3))).isEqualTo(3);
      refused(Kinds.whole(1, 3), Value.of(2.5), "it must be a whole number from 1 to 3.");
      refused(Kinds.whole(1, 3), Value.of(4), "size is 4;");
      refused(Kinds.whole(1, 3), Value.of(1e300), "size is 1E+300;");
    }
  }

  @Nested
  class Texts {

    @Test
    void mayBeNumbersInTheirShortestForm() {
      assertThat(read(Kinds.text(), Value.of("mm"))).isEqualTo("mm");
      assertThat(read(Kinds.text(), Value.of(0.1))).isEqualTo("0.1");
      refused(Kinds.text(), Value.BLANK, "size is blank; it must be a text.");
    }

    @Test
    void areShortenedInSentences() {
      refused(Kinds.number(), Value.of("x".repeat(500)), "\"" + "x".repeat(37) + "...\";");
    }
  }

  @Nested
  class Choices {

    @ParameterizedTest
    @ValueSource(strings = {"red", "RED", " Red "})
    void areWordsInAnyCase(String word) {
      assertThat(read(Kinds.choice(Colour.class), Value.of(word))).isEqualTo(Colour.RED);
    }

    @Test
    void areListedWhenRefused() {
      refused(
          Kinds.choice(Colour.class),
          Value.of("blue"),
          "size is the text \"blue\"; it must be one of red, green.");
      refused(Kinds.choice(Colour.class), Value.of(1), "size is 1;");
    }
  }

  @Nested
  class Ranges {

    private final Kind<List<Double>> two = Kinds.numbers(2, Kinds.positive());

    @Test
    void skipBlankCells() {
      assertThat(read(two, column(Value.of(1), Value.BLANK, Value.of(2))))
          .containsExactly(1.0, 2.0);
    }

    @Test
    void nameTheCellThatIsRefused() {
      refused(two, column(Value.of(1), Value.of(0)), "size (row 2) is 0; it must be a number");
      refused(
          two,
          new Value.Table(List.of(List.of(Value.of(1), Value.of("x")))),
          "size (row 1, column 2) is the text \"x\";");
    }

    @Test
    void countTheirNumbers() {
      refused(
          two, Value.of(1), "a range with 1 number; it must be a range with at least 2 numbers.");
      refused(two, Value.BLANK, "a range with no numbers;");
    }

    @Test
    void keepBlankCellsForPairing() {
      assertThat(read(Kinds.column(Kinds.number()), column(Value.BLANK, Value.of(2))))
          .containsExactly(OptionalDouble.empty(), OptionalDouble.of(2));
    }

    @Test
    void includeSingleValues() {
      assertThat(read(Kinds.table(), Value.of("a"))).isEqualTo(column(Value.of("a")));
    }
  }

  @Nested
  class References {

    private final CellBlock block = new CellBlock(new CellRange("Sheet1", 0, 0, 0, 0), null);

    @Test
    void areTheCellsThemselves() {
      assertThat(read(Kinds.reference(), new Value.Reference(block))).isSameAs(block);
      refused(Kinds.reference(), Value.of(1), "size is 1; it must be a reference to cells.");
    }

    @Test
    void areNoValues() {
      refused(Kinds.table(), new Value.Reference(block), "size is a reference;");
    }
  }

  private static <T> T read(Kind<T> kind, Value value) {
    return kind.read(new Argument("size", value, kind.allowed()));
  }

  private static void refused(Kind<?> kind, Value value, String sentencePart) {
    assertThatThrownBy(() -> read(kind, value))
        .isInstanceOf(ArgumentException.class)
        .hasMessageContaining(sentencePart);
  }

  private static Value.Table column(Value... cells) {
    return new Value.Table(List.of(cells).stream().map(List::of).toList());
  }
}
