package tenthmark.checker.profile;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/**
 * A mapping of keys to values. Every key that is asked for is allowed; {@link #close} says which
 * others stand there. A key without a value counts as left out.
 */
final class Section {

  private final Node node;
  private final Problems problems;
  private final Scalars scalars;
  private final Map<String, NodeTuple> entries = new LinkedHashMap<>();
  private final Set<String> asked = new LinkedHashSet<>();

  private Section(Node node, Problems problems) {
    this.node = node;
    this.problems = problems;
    this.scalars = new Scalars(problems);
  }

  /** The section that a node is; a problem and empty if it is none. */
  static Optional<Section> of(String name, Node node, Problems problems) {
    if (!(node instanceof MappingNode mapping)) {
      problems.add(node, name + " must hold keys with values, such as \"name: ...\"");
      return Optional.empty();
    }
    Section section = new Section(node, problems);
    mapping.getValue().forEach(section::enter);
    return Optional.of(section);
  }

  private void enter(NodeTuple entry) {
    if (!(entry.getKeyNode() instanceof ScalarNode key)) {
      problems.add(entry.getKeyNode(), "a key must be a word");
    } else if (entries.putIfAbsent(key.getValue(), entry) != null) {
      problems.add(key, key.getValue() + " stands here twice");
    }
  }

  /** The keys with a value, in their order. */
  Set<String> keys() {
    return entries.keySet();
  }

  /** Adds a problem with this section as a whole. */
  void problem(String message) {
    problems.add(node, message);
  }

  /** Adds a problem with a key. */
  void keyProblem(String key, String message) {
    problems.add(entries.get(key).getKeyNode(), message);
  }

  /** Adds a problem with the value of a key. */
  void valueProblem(String key, String message) {
    problems.add(entries.get(key).getValueNode(), message);
  }

  Optional<Node> value(String key) {
    asked.add(key);
    return Optional.ofNullable(entries.get(key))
        .map(NodeTuple::getValueNode)
        .filter(value -> !value.getTag().equals(Tag.NULL));
  }

  /** The value of a key that must be there. */
  Optional<Node> required(String key) {
    Optional<Node> value = value(key);
    if (value.isEmpty()) {
      problem(key + " is missing");
    }
    return value;
  }

  Optional<String> text(String key) {
    return value(key).flatMap(value -> scalars.text(key, value));
  }

  Optional<String> requiredText(String key) {
    return required(key).flatMap(value -> scalars.text(key, value));
  }

  Optional<Double> number(String key, Range range) {
    return value(key).flatMap(value -> scalars.number(key, value, range));
  }

  Optional<Double> requiredNumber(String key, Range range) {
    return required(key).flatMap(value -> scalars.number(key, value, range));
  }

  /** Whether a number stands where a word may stand too. */
  boolean isNumber(String key) {
    return value(key)
        .filter(value -> value.getTag().equals(Tag.INT) || value.getTag().equals(Tag.FLOAT))
        .isPresent();
  }

  Optional<Boolean> flag(String key) {
    return value(key).flatMap(value -> scalars.flag(key, value));
  }

  <T> Optional<T> choice(String key, Map<String, T> words) {
    return value(key).flatMap(value -> scalars.choice(key, value, words));
  }

  /** A list of texts, or one text for a list of one. */
  List<String> texts(String key) {
    return value(key).stream()
        .flatMap(
            value ->
                value instanceof SequenceNode list ? list.getValue().stream() : Stream.of(value))
        .flatMap(value -> scalars.text(key, value).stream())
        .toList();
  }

  /** A section below this one. */
  Optional<Section> section(String key) {
    return value(key).flatMap(value -> of(key, value, problems));
  }

  /** What the sections in a list are read as, without those that cannot be. */
  <T> List<T> list(String key, Function<Section, Optional<T>> reading) {
    Optional<Node> value = value(key);
    if (value.filter(list -> !(list instanceof SequenceNode)).isPresent()) {
      valueProblem(key, key + " must be a list: each entry begins with \"- \"");
      return List.of();
    }
    return value.stream()
        .flatMap(list -> ((SequenceNode) list).getValue().stream())
        .flatMap(entry -> of("an entry of " + key, entry, problems).stream())
        .flatMap(section -> reading.apply(section).stream())
        .toList();
  }

  /** Says of every key that nothing asked for that it is none. */
  void close() {
    entries.keySet().stream()
        .filter(key -> !asked.contains(key))
        .forEach(
            key -> keyProblem(key, key + " is no key here; keys are " + String.join(", ", asked)));
  }
}
