package tenthmark.measurement.explanation;

import java.util.ArrayList;
import java.util.List;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.catalogue.WorksheetFunction;
import tenthmark.measurement.formula.Binary;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.formula.Expression;
import tenthmark.measurement.formula.Expression.Call;
import tenthmark.measurement.formula.Expression.CellReference;
import tenthmark.measurement.formula.Expression.Chain;
import tenthmark.measurement.formula.Expression.Compared;
import tenthmark.measurement.formula.Expression.Constant;
import tenthmark.measurement.formula.Expression.ForeignCall;
import tenthmark.measurement.formula.Expression.Intersection;
import tenthmark.measurement.formula.Expression.Joined;
import tenthmark.measurement.formula.Expression.Link;
import tenthmark.measurement.formula.Expression.Name;
import tenthmark.measurement.formula.Expression.Negative;
import tenthmark.measurement.formula.Expression.RangeReference;
import tenthmark.measurement.formula.Expression.Union;
import tenthmark.measurement.rounding.PowerOfTen;
import tenthmark.measurement.rounding.Written;
import tenthmark.measurement.wording.Sentences;

/**
 * Says a formula in words. A function is said by the sentence {@code words.NAME.n} with its n
 * arguments in the gaps, or by {@code words.NAME} with the list of them.
 *
 * @param sheet the sheet of the formula
 */
record Words(Catalogue catalogue, Headings headings, Sentences sentences, String sheet) {

  private static final double SQUARE = 2;

  /** An expression as it stands alone. */
  String of(Expression expression) {
    if (expression instanceof Constant constant) {
      return number(constant.value(), sentences);
    }
    if (isNothing(expression)) {
      return sentences.say("words.nothing");
    }
    if (expression instanceof Expression.Text text) {
      return sentences.say("words.text", text.text());
    }
    if (expression instanceof Name name) {
      return name.name();
    }
    if (expression instanceof CellReference cell) {
      return cell(cell.from(sheet));
    }
    if (expression instanceof RangeReference range) {
      return range(range.range(sheet));
    }
    if (expression instanceof Negative negative
        && negative.operand() instanceof Constant constant) {
      return number(-constant.value(), sentences);
    }
    if (expression instanceof Negative negative) {
      return sentences.say("words.minus", part(negative.operand()));
    }
    if (expression instanceof Chain chain) {
      return chain(chain);
    }
    if (expression instanceof Compared compared) {
      String blank = "words.blank." + compared.operator().name();
      return isNothing(compared.right()) && sentences.knows(blank)
          ? sentences.say(blank, part(compared.left()))
          : operation(compared.operator(), part(compared.left()), part(compared.right()));
    }
    if (expression instanceof Joined joined) {
      return isNothing(joined.right())
          ? of(joined.left())
          : sentences.say("words.joined", part(joined.left()), part(joined.right()));
    }
    if (expression instanceof Intersection common) {
      return sentences.say("words.common", part(common.left()), part(common.right()));
    }
    if (expression instanceof Union union) {
      return sentences.say("words.together", list(union.parts().stream().map(this::of).toList()));
    }
    if (expression instanceof Expression.Array array) {
      return "{" + list(array.rows().stream().flatMap(List::stream).map(this::of).toList()) + "}";
    }
    if (expression instanceof Call call) {
      return call(call.function().name(), call.arguments());
    }
    return expression instanceof ForeignCall call ? foreign(call) : sentences.say("words.omitted");
  }

  /** The empty text, which a formula gives where it is to show nothing. */
  private static boolean isNothing(Expression expression) {
    return expression instanceof Expression.Text text && text.text().isEmpty();
  }

  /** A number as the office writes it. */
  static String number(double number, Sentences sentences) {
    return PowerOfTen.show(Written.shown(number), sentences.decimalSign());
  }

  /** An expression inside another one. */
  private String part(Expression expression) {
    boolean compound =
        expression instanceof Chain
            || expression instanceof Compared
            || expression instanceof Joined;
    return compound ? "(" + of(expression) + ")" : of(expression);
  }

  private String chain(Chain chain) {
    String words = operand(chain.first(), level(chain));
    for (Link link : chain.rest()) {
      boolean squared =
          link.operator() == Binary.POWER
              && link.operand() instanceof Constant constant
              && constant.value() == SQUARE;
      words =
          squared
              ? sentences.say("words.squared", words)
              : operation(link.operator(), words, operand(link.operand(), level(chain)));
    }
    return words;
  }

  /** A product in a sum and a power in a product need no brackets. */
  private String operand(Expression operand, int level) {
    return operand instanceof Chain inner && level(inner) > level ? of(operand) : part(operand);
  }

  private static int level(Chain chain) {
    return switch (chain.rest().get(0).operator()) {
      case ADD, SUBTRACT -> 1;
      case MULTIPLY, DIVIDE -> 2;
      default -> 3;
    };
  }

  private String operation(Binary operator, String left, String right) {
    return sentences.say("words." + operator.name(), left, right);
  }

  private String call(String name, List<Expression> arguments) {
    List<String> parts = arguments.stream().map(this::part).toList();
    String exact = "words." + name + "." + parts.size();
    if (sentences.knows(exact)) {
      return sentences.say(exact, parts.toArray(String[]::new));
    }
    String any = "words." + name;
    if (sentences.knows(any)) {
      return sentences.say(any, list(parts));
    }
    return parts.isEmpty() ? name : sentences.say("words.other", name, list(parts));
  }

  private String foreign(ForeignCall call) {
    return catalogue
        .find(call.name())
        .map(function -> lab(function, call.arguments()))
        .orElseGet(() -> call(call.name(), call.arguments()));
  }

  private String lab(WorksheetFunction function, List<Expression> arguments) {
    List<String> given = new ArrayList<>();
    for (int i = 0; i < arguments.size(); i++) {
      if (!(arguments.get(i) instanceof Expression.Omitted)) {
        String argument = of(arguments.get(i));
        given.add(
            Calculation.parameter(function, i)
                .map(Parameter::name)
                .map(name -> name + " = " + argument)
                .orElse(argument));
      }
    }
    String name = function.declaration().displayName();
    return given.isEmpty() ? name : sentences.say("words.lab", name, list(given));
  }

  /** Texts as a sentence lists them. */
  String list(List<String> texts) {
    if (texts.isEmpty()) {
      return "";
    }
    String list = texts.get(0);
    for (int i = 1; i < texts.size(); i++) {
      String next = i < texts.size() - 1 ? "rationale.list.next" : "rationale.list.last";
      list = sentences.say(next, list, texts.get(i));
    }
    return list;
  }

  /** A cell by its address and what the texts around call it. */
  String cell(CellAddress cell) {
    return described(label(cell), headings.of(cell));
  }

  private String range(CellRange range) {
    CellAddress last = new CellAddress(range.sheet(), range.right(), range.bottom());
    String place = label(range.first()) + ":" + last.place();
    return described(sentences.say("words.range", place), headings.of(range));
  }

  private String described(String place, List<String> titles) {
    return titles.isEmpty() ? place : place + " (" + String.join(", ", titles) + ")";
  }

  /** A cell's address, with its sheet where it is another one. */
  String label(CellAddress cell) {
    return cell.sheet().equals(sheet) ? cell.place() : cell.toString();
  }
}
