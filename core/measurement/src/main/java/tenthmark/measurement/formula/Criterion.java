package tenthmark.measurement.formula;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What cells must be to count, as SUMIF takes it: a number, a text, or a comparison in a text.
 *
 * @param with what they are compared with
 * @param <T> the numbers of the field
 */
record Criterion<T>(Binary operator, Operand<T> with) {

  private static final Map<String, Binary> OPERATORS =
      Map.of(
          "", Binary.EQUAL,
          "=", Binary.EQUAL,
          "<>", Binary.NOT_EQUAL,
          "<", Binary.LESS,
          "<=", Binary.LESS_OR_EQUAL,
          ">", Binary.GREATER,
          ">=", Binary.GREATER_OR_EQUAL);

  private static final Pattern COMPARISON = Pattern.compile("(?s)(<>|<=|>=|<|>|=|)(.*)");
  private static final Pattern NUMBER = Pattern.compile("[-+]?\\d+(?:\\.\\d+)?(?:[eE][-+]?\\d+)?");

  /** Signs that stand for others in a search, if the document is set so. */
  private static final Pattern PATTERN = Pattern.compile("[*?~.\\[\\](){}|^$+\\\\]");

  /** The criterion that an argument states. */
  static <T> Criterion<T> of(Evaluator<T> evaluator, Expression argument) {
    Operand<T> stated = evaluator.operand(argument);
    if (!(stated instanceof Operand.Text<T> text)) {
      return new Criterion<>(Binary.EQUAL, new Operand.Number<>(evaluator.numberIn(stated)));
    }
    Matcher comparison = COMPARISON.matcher(text.text());
    if (!comparison.matches() || comparison.group(2).isBlank()) {
      throw FormulaException.of("formula.criterion", text.text());
    }
    Binary operator = OPERATORS.get(comparison.group(1));
    String value = comparison.group(2).strip();
    if (NUMBER.matcher(value).matches()) {
      return new Criterion<>(
          operator, new Operand.Number<>(evaluator.field().constant(Double.parseDouble(value))));
    }
    boolean equality = operator == Binary.EQUAL || operator == Binary.NOT_EQUAL;
    if (!equality) {
      throw FormulaException.of("formula.criterion", text.text());
    }
    return new Criterion<>(operator, new Operand.Text<>(value));
  }

  /** 1 where a cell fulfils it and 0 where it does not. */
  T truth(Evaluator<T> evaluator, Operand<T> cell) {
    return isOfOneKind(with, cell)
        ? compared(evaluator, operator, cell, with)
        : evaluator.field().constant(operator == Binary.NOT_EQUAL ? 1 : 0);
  }

  /** Numbers are only found among numbers, and texts among texts. */
  static boolean isOfOneKind(Operand<?> one, Operand<?> other) {
    if (other instanceof Operand.Fault<?> fault && !fault.problem().isError()) {
      throw fault.problem();
    }
    return (one instanceof Operand.Number && other instanceof Operand.Number)
        || (one instanceof Operand.Text && other instanceof Operand.Text);
  }

  /** Compares two of one kind; texts are the same in any letter case. */
  static <T> T compared(Evaluator<T> evaluator, Binary operator, Operand<T> one, Operand<T> other) {
    if (!(one instanceof Operand.Text<T> text)) {
      return evaluator.compared(operator, one, other);
    }
    String first = text.text();
    String second = ((Operand.Text<T>) other).text();
    for (String side : List.of(first, second)) {
      if (PATTERN.matcher(side).find() && !first.equalsIgnoreCase(second)) {
        throw FormulaException.of("formula.pattern", side);
      }
    }
    boolean equal = first.equalsIgnoreCase(second);
    return evaluator.field().constant(operator.value(equal ? 0 : 1, 0));
  }
}
