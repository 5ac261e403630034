package tenthmark.checker.profile;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/** Reads single values; what is wrong with one becomes a problem that names it. */
final class Scalars {

  private final Problems problems;

  Scalars(Problems problems) {
    this.problems = problems;
  }

  /** A text, which may look like a number: a course may be called 2026. */
  Optional<String> text(String name, Node node) {
    Optional<String> text =
        scalar(node).map(scalar -> scalar.getValue().strip()).filter(value -> !value.isEmpty());
    return orProblem(text, node, name + " must be a text");
  }

  Optional<Double> number(String name, Node node, Range range) {
    Optional<String> written = scalar(node).map(ScalarNode::getValue);
    Optional<Double> number =
        scalar(node)
            .filter(scalar -> scalar.getTag().equals(Tag.INT) || scalar.getTag().equals(Tag.FLOAT))
            .flatMap(scalar -> decimal(scalar.getValue()));
    boolean comma = written.filter(text -> text.matches("[+-]?\\d+,\\d+")).isPresent();
    orProblem(
        number,
        node,
        name + " must be a number" + (comma ? ": write a decimal point, not a comma" : ""));
    return number.flatMap(
        size ->
            orProblem(
                number.filter(range::allows),
                node,
                name + " is " + written.orElseThrow() + " but must be " + range.words()));
  }

  /** Not every number of YAML is decimal: 0x10 is one, and .nan. */
  private static Optional<Double> decimal(String text) {
    return text.matches("[-+.eE]*+\\d[-+.eE\\d]*+")
        ? Optional.of(Double.parseDouble(text)).filter(Double::isFinite)
        : Optional.empty();
  }

  Optional<Boolean> flag(String name, Node node) {
    return orProblem(
        scalar(node)
            .filter(scalar -> scalar.getTag().equals(Tag.BOOL))
            .map(scalar -> Boolean.parseBoolean(scalar.getValue())),
        node,
        name + " must be true or false");
  }

  /** One of several words; {@code words} is ordered as the message lists them. */
  <T> Optional<T> choice(String name, Node node, Map<String, T> words) {
    return orProblem(
        scalar(node).map(scalar -> words.get(scalar.getValue())),
        node,
        name + " must be one of " + words.keySet().stream().collect(Collectors.joining(", ")));
  }

  private static Optional<ScalarNode> scalar(Node node) {
    return node instanceof ScalarNode scalar ? Optional.of(scalar) : Optional.empty();
  }

  private <T> Optional<T> orProblem(Optional<T> value, Node node, String message) {
    if (value.isEmpty()) {
      problems.add(node, message);
    }
    return value;
  }
}
