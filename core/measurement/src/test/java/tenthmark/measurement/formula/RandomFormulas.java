package tenthmark.measurement.formula;

import java.util.List;
import java.util.Random;

/** Formulas at random, the same ones for the same seed, with operators and functions mixed. */
public final class RandomFormulas {

  private static final List<String> SMOOTH =
      List.of(
          "SQRT(ABS(%s)+0.25)",
          "LN(ABS(%s)+0.5)",
          "LOG10(1.5+ABS(%s))",
          "LOG(2+ABS(%s);3)",
          "LOG(ABS(%s)+1.25)",
          "EXP((%s)/20)",
          "EXP(-ABS(%s))",
          "SIN(%s)",
          "COS(%s)",
          "TAN((%s)/50)",
          "COT(0.5+ABS(%s)/100)",
          "ASIN(SIN(%s)/2)",
          "ACOS(COS(%s)/3)",
          "ATAN(%s)",
          "ATAN2(%s;%s)",
          "ATAN2(1+ABS(%s);%s)",
          "SINH((%s)/30)",
          "COSH((%s)/30)",
          "TANH((%s)/10)",
          "ASINH(%s)",
          "ACOSH(1.5+ABS(%s))",
          "ATANH(SIN(%s)/2)",
          "RADIANS(%s)",
          "DEGREES(%s)",
          "POWER(ABS(%s)+0.5;(%s)/10)",
          "POWER(%s;2)",
          "POWER(%s;3)",
          "(ABS(%s)+0.5)^((%s)/8)",
          "SUM(%s;%s;%s)",
          "SUMSQ(%s;%s)",
          "PRODUCT(%s;%s)",
          "AVERAGE(%s;%s;%s)",
          "MIN(%s;%s)",
          "MAX(%s;%s;%s)",
          "MEDIAN(%s;%s;%s)",
          "STDEV(%s;%s;%s)",
          "VAR(%s;%s)",
          "DEVSQ(%s;%s;%s)",
          "IF(%s>%s;%s;%s)",
          "IF(AND(%s<%s;%s<>%s);%s;%s)",
          "IF(OR(%s>=%s;NOT(%s<=%s));%s;%s)");

  private static final List<String> STEPPED =
      List.of(
          "ROUND(%s;2)",
          "ROUND(%s;0)",
          "ROUNDUP(%s;1)",
          "ROUNDDOWN(%s;1)",
          "TRUNC(%s)",
          "INT(%s)",
          "SIGN(%s)",
          "MOD(%s;3)",
          "MOD(%s;0.7)",
          "COUNT(%s;%s)",
          "(%s=%s)",
          "(%s>%s)");

  private static final List<String> OPERATORS =
      List.of(
          "%s+%s",
          "%s-%s",
          "%s*%s",
          "%s/%s",
          "(%s+%s)",
          "(%s-%s)",
          "(%s)*(%s)",
          "(%s)/(%s)",
          "-%s",
          "-(%s)",
          "%s^2",
          "(%s)^3",
          "(%s)^-1",
          "%s^2^2",
          "%s%%",
          "(%s)%%*%s",
          "%s-%s-%s",
          "%s/%s/%s",
          "+%s",
          "2*PI()*%s",
          "4*PI()^2*%s/%s^2");

  private static final List<String> NUMBERS =
      List.of("2", "3", "0.5", "1.5e-3", "9.81", "1E2", "0.1", "0.3", "7", "12.5%", "PI()", ".25");

  private final Random random;
  private final List<String> variables;
  private final List<String> more;

  /**
   * A source of formulas.
   *
   * @param variables what stands for the inputs
   * @param more further shapes with a {@code %s} for each operand, such as sums over ranges
   */
  public RandomFormulas(long seed, List<String> variables, List<String> more) {
    this.random = new Random(seed);
    this.variables = variables;
    this.more = more;
  }

  /** A formula without steps, so that it has slopes almost everywhere. */
  public String smooth() {
    return expression(1 + random.nextInt(3), false);
  }

  /** A formula of any kind. */
  public String any() {
    return expression(1 + random.nextInt(3), true);
  }

  private String expression(int depth, boolean stepped) {
    if (depth == 0) {
      return random.nextInt(10) < 7 ? pick(variables) : pick(NUMBERS);
    }
    int choice = random.nextInt(20);
    if (choice < 9) {
      return filled(pick(OPERATORS), depth, stepped);
    }
    if (stepped && choice < 12) {
      return filled(pick(STEPPED), depth, stepped);
    }
    if (!more.isEmpty() && choice < 14) {
      return filled(pick(more), depth, stepped);
    }
    return filled(pick(SMOOTH), depth, stepped);
  }

  private String filled(String shape, int depth, boolean stepped) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < shape.length(); i++) {
      if (shape.startsWith("%s", i)) {
        text.append(expression(random.nextInt(depth), stepped));
        i++;
      } else if (shape.startsWith("%%", i)) {
        text.append('%');
        i++;
      } else {
        text.append(shape.charAt(i));
      }
    }
    return text.toString();
  }

  private String pick(List<String> choices) {
    return choices.get(random.nextInt(choices.size()));
  }
}
