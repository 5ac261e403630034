package tenthmark.measurement.catalogue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import tenthmark.measurement.catalogue.Kind.Form;
import tenthmark.measurement.formula.CellBlock;
import tenthmark.measurement.recording.Convention;
import tenthmark.measurement.rounding.DigitsRule;
import tenthmark.measurement.wording.Message;
import tenthmark.measurement.wording.Sentences;

/** The kinds of parameter that several worksheet functions share. */
public final class Kinds {

  private static final Pattern PERCENT =
      Pattern.compile("\\s*(?<number>\\d{1,9}(?:[.,]\\d{1,9})?)[\\s\\u00A0\\u202F]*%\\s*");

  private Kinds() {}

  /** Any finite number. */
  public static Kind<Double> number() {
    return numberThat(Message.of("allowed.number"), n -> true);
  }

  /** A finite number greater than zero. */
  public static Kind<Double> positive() {
    return numberThat(Message.of("allowed.positive"), n -> n > 0);
  }

  /** A finite number, zero or greater. */
  public static Kind<Double> notNegative() {
    return numberThat(Message.of("allowed.not.negative"), n -> n >= 0);
  }

  /** A finite number that fulfils a condition, described in words that follow "it must be". */
  public static Kind<Double> numberThat(Message allowed, DoublePredicate condition) {
    return new Kind<>(Form.SINGLE, allowed, argument -> numberIn(argument, condition));
  }

  /** A whole number from {@code least} to {@code most}. */
  public static Kind<Integer> whole(int least, int most) {
    Message allowed = Message.of("allowed.whole", least, most);
    return new Kind<>(
        Form.SINGLE,
        allowed,
        argument -> (int) numberIn(argument, n -> n == Math.rint(n) && n >= least && n <= most));
  }

  /** Any text; a number is taken as its shortest decimal form. */
  public static Kind<String> text() {
    return new Kind<>(Form.TEXT, Message.of("allowed.text"), Kinds::textIn);
  }

  /** One constant of an enum, written as its name in lower case, in any letter case. */
  public static <E extends Enum<E>> Kind<E> choice(Class<E> type) {
    E[] constants = type.getEnumConstants();
    return new Kind<>(
        Form.TEXT,
        Message.of(
            "allowed.choice",
            Arrays.stream(constants).map(Kinds::word).collect(Collectors.joining(", "))),
        argument -> {
          String word = textIn(argument).strip().toLowerCase(Locale.ROOT);
          return Arrays.stream(constants)
              .filter(constant -> word(constant).equals(word))
              .findFirst()
              .orElseThrow(argument::refused);
        });
  }

  /**
   * What a kind of single value accepts, or a word that stands for a value, in any letter case and
   * language.
   *
   * @param key of the word
   */
  public static <T> Kind<T> orWord(Kind<T> kind, String key, T meaning) {
    List<String> words = Sentences.inEveryLanguage(key);
    return new Kind<>(
        kind.form(),
        Message.of("allowed.or.word", kind.allowed(), Message.of(key)),
        argument ->
            argument.value() instanceof Value.Text text
                    && words.stream().anyMatch(text.text().strip()::equalsIgnoreCase)
                ? meaning
                : kind.read(argument));
  }

  /**
   * A percentage, in all functions a number of percent, or a text with the sign. A formula has 0.01
   * for 1%, so numbers that may be meant so are refused, and a small percentage is such a text.
   *
   * @param number which numbers are no hundredths
   * @param percentage which percentages make sense
   */
  public static Kind<Double> percent(
      Message allowed, DoublePredicate number, DoublePredicate percentage) {
    return new Kind<>(
        Form.SINGLE,
        allowed,
        argument -> {
          double percent =
              argument.value() instanceof Value.Text text
                  ? percentIn(text.text(), argument)
                  : numberIn(argument, number);
          if (!percentage.test(percent)) {
            throw argument.refused();
          }
          return percent;
        });
  }

  private static double percentIn(String text, Argument argument) {
    Matcher percent = PERCENT.matcher(text);
    if (!percent.matches()) {
      throw argument.refused();
    }
    return Double.parseDouble(percent.group("number").replace(',', '.'));
  }

  /** A part of one, greater than zero. */
  public static Kind<Double> fraction() {
    return numberThat(Message.of("allowed.fraction"), n -> n > 0 && n <= 1);
  }

  /** How many digits of an uncertainty are kept: a number, or the word for a rule. */
  public static Kind<DigitsRule> digits() {
    Kind<Integer> count = whole(1, 15);
    return new Kind<>(
        Form.SINGLE,
        Message.of("allowed.digits"),
        argument -> {
          if (!(argument.value() instanceof Value.Text text)) {
            return new DigitsRule.Fixed(count.read(argument));
          }
          return switch (text.text().strip().toLowerCase(Locale.ROOT)) {
            case "bench" -> Convention.BENCH.digits();
            case "standard" -> Convention.STANDARD.digits();
            case "pdg" -> new DigitsRule.ParticleData();
            default -> throw argument.refused();
          };
        });
  }

  /** TRUE or FALSE, 1 or 0, yes or no. */
  public static Kind<Boolean> yesOrNo() {
    return new Kind<>(
        Form.SINGLE,
        Message.of("allowed.yes.or.no"),
        argument ->
            switch (textIn(argument).strip().toLowerCase(Locale.ROOT)) {
              case "1", "true", "yes" -> true;
              case "0", "false", "no" -> false;
              default -> throw argument.refused();
            });
  }

  /** The word that a user types for an enum constant. */
  public static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }

  /** The cells of a range as a rectangle, whatever they hold; a single value is a 1 by 1 table. */
  public static Kind<Value.Table> table() {
    return new Kind<>(Form.RANGE, Message.of("allowed.range"), Argument::table);
  }

  /**
   * The numbers of a range, row by row, blank cells left out; any other cell that is not of the
   * kind {@code each} is refused by its place. At least {@code least} numbers must be there.
   */
  public static Kind<List<Double>> numbers(int least, Kind<Double> each) {
    Message allowed = Message.of("allowed.range.with", count(least));
    return new Kind<>(
        Form.RANGE,
        allowed,
        argument -> {
          List<Double> numbers =
              column(argument, each).stream()
                  .flatMapToDouble(OptionalDouble::stream)
                  .boxed()
                  .toList();
          if (numbers.size() < least) {
            throw argument.refusedAs(Message.of("found.numbers", count(numbers.size())));
          }
          return numbers;
        });
  }

  /**
   * The cells of a range, row by row, with blank cells kept as empty, so that several ranges can be
   * paired cell by cell.
   */
  public static Kind<List<OptionalDouble>> column(Kind<Double> each) {
    return new Kind<>(Form.RANGE, Message.of("allowed.column"), argument -> column(argument, each));
  }

  /** The cells themselves. */
  public static Kind<CellBlock> reference() {
    return new Kind<>(
        Form.REFERENCE,
        Message.of("allowed.reference"),
        argument -> {
          if (argument.value() instanceof Value.Reference reference) {
            return reference.block();
          }
          throw argument.refused();
        });
  }

  private static List<OptionalDouble> column(Argument argument, Kind<Double> each) {
    Value.Table table = argument.table();
    List<OptionalDouble> column = new ArrayList<>();
    for (int row = 0; row < table.height(); row++) {
      for (int col = 0; col < table.width(); col++) {
        column.add(
            table.rows().get(row).get(col) instanceof Value.Blank
                ? OptionalDouble.empty()
                : OptionalDouble.of(argument.cell(row, col, each)));
      }
    }
    return column;
  }

  private static Message count(int numbers) {
    return numbers == 0 ? Message.of("numbers.none") : Message.counted("numbers", numbers);
  }

  private static double numberIn(Argument argument, DoublePredicate condition) {
    if (argument.value() instanceof Value.Numeric numeric
        && Double.isFinite(numeric.number())
        && condition.test(numeric.number())) {
      return numeric.number();
    }
    throw argument.refused();
  }

  private static String textIn(Argument argument) {
    Value value = argument.value();
    if (value instanceof Value.Text text) {
      return text.text();
    }
    if (value instanceof Value.Numeric numeric) {
      return Numbers.show(numeric.number());
    }
    throw argument.refused();
  }
}
