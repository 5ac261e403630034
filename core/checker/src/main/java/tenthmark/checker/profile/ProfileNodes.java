package tenthmark.checker.profile;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;
import org.snakeyaml.engine.v2.schema.CoreSchema;

/**
 * A profile as its file holds it, joined with the files that it includes: sections key by key,
 * lists one behind the other, and what both say as the including file says it.
 */
final class ProfileNodes {

  /** The key of the files that a profile includes. */
  static final String INCLUDE = "include";

  /** The parser's own reasons quote what stands there, which may be any file and secret. */
  private static final String NO_YAML =
      "this is not YAML; a text with special signs needs quotation marks, and lines that belong"
          + " together the same indent";

  private static final long LARGEST = 1 << 20;

  private final Problems problems;
  private final List<Path> files = new ArrayList<>();
  private final List<Path> open = new ArrayList<>();

  ProfileNodes(Problems problems) {
    this.problems = problems;
  }

  /** The files that were read. */
  List<Path> files() {
    return List.copyOf(files);
  }

  /** What a text holds; a text includes nothing. */
  Optional<Node> of(String yaml) {
    return composed("", yaml);
  }

  /**
   * What a file holds, with what it includes.
   *
   * @throws IOException if the file itself cannot be read
   */
  Optional<Node> of(Path file) throws IOException {
    return of("", file);
  }

  private Optional<Node> of(String name, Path file) throws IOException {
    files.add(file);
    if (Files.size(file) > LARGEST) {
      problems.add(new Problem(name, 1, 1, "the file is larger than 1 MiB"));
      return Optional.empty();
    }
    try {
      Optional<Node> own = composed(name, Files.readString(file));
      return own.isPresent() && own.get() instanceof MappingNode mapping
          ? Optional.of(withIncluded(mapping, file))
          : own;
    } catch (CharacterCodingException otherwise) {
      problems.add(new Problem(name, 1, 1, "the file is not UTF-8 text"));
      return Optional.empty();
    }
  }

  private Optional<Node> composed(String name, String yaml) {
    try {
      LoadSettings settings =
          LoadSettings.builder()
              .setLabel(name)
              .setSchema(new CoreSchema())
              .setAllowNonScalarKeys(true)
              .build();
      return new Compose(settings)
          .composeString(yaml.startsWith("\uFEFF") ? yaml.substring(1) : yaml);
    } catch (YamlEngineException noYaml) {
      problems.add(problem(name, noYaml, yaml));
      return Optional.empty();
    }
  }

  private static Problem problem(String name, YamlEngineException noYaml, String yaml) {
    if (noYaml instanceof MarkedYamlEngineException marked && marked.getProblemMark().isPresent()) {
      Problems one = new Problems();
      one.add(marked.getProblemMark().get(), NO_YAML);
      return one.fromTopToBottom().get(0);
    }
    if (noYaml instanceof ReaderException control) {
      String before = yaml.substring(0, yaml.offsetByCodePoints(0, control.getPosition()));
      return new Problem(
          name,
          (int) before.lines().count(),
          before.length() - before.lastIndexOf('\n'),
          "a control character stands here");
    }
    return new Problem(
        name, 1, 1, "this is not YAML, or more nested or repeated than a profile can be");
  }

  private Node withIncluded(MappingNode own, Path file) {
    Optional<NodeTuple> include =
        own.getValue().stream().filter(entry -> key(entry).equals(INCLUDE)).findFirst();
    if (include.isEmpty()) {
      return own;
    }
    open.add(file.toAbsolutePath().normalize());
    List<NodeTuple> entries = new ArrayList<>(own.getValue());
    entries.remove(include.get());
    MappingNode joined = mapping(own, entries);
    for (Node name : names(include.get().getValueNode())) {
      Optional<Node> other = included(name, file);
      if (other.isPresent() && other.get() instanceof MappingNode mapping) {
        joined = joined(mapping, joined);
      } else if (other.isPresent()) {
        problems.add(name, "the included file must hold keys with values");
      }
    }
    open.remove(open.size() - 1);
    return joined;
  }

  private static List<Node> names(Node value) {
    return value instanceof SequenceNode list ? list.getValue() : List.of(value);
  }

  private Optional<Node> included(Node name, Path file) {
    if (!(name instanceof ScalarNode text) || text.getValue().isBlank()) {
      problems.add(name, INCLUDE + " must name files");
      return Optional.empty();
    }
    Path other = file.resolveSibling(text.getValue());
    if (open.contains(other.toAbsolutePath().normalize())) {
      problems.add(name, text.getValue() + " includes itself");
      return Optional.empty();
    }
    try {
      return of(text.getValue(), other);
    } catch (IOException missing) {
      problems.add(name, text.getValue() + " cannot be read");
      return Optional.empty();
    }
  }

  private static MappingNode joined(MappingNode included, MappingNode own) {
    Map<String, NodeTuple> entries = new LinkedHashMap<>();
    included.getValue().forEach(entry -> entries.put(key(entry), entry));
    for (NodeTuple entry : own.getValue()) {
      entries.merge(
          key(entry),
          entry,
          (other, mine) ->
              new NodeTuple(mine.getKeyNode(), joined(other.getValueNode(), mine.getValueNode())));
    }
    return mapping(own, List.copyOf(entries.values()));
  }

  /** What two files say under one key. */
  private static Node joined(Node included, Node own) {
    if (own.getTag().equals(Tag.NULL)) {
      return included;
    }
    if (included instanceof MappingNode others && own instanceof MappingNode mine) {
      Map<String, NodeTuple> entries = new LinkedHashMap<>();
      others.getValue().forEach(entry -> entries.put(key(entry), entry));
      mine.getValue().forEach(entry -> entries.put(key(entry), entry));
      return mapping(mine, List.copyOf(entries.values()));
    }
    return included instanceof SequenceNode others && own instanceof SequenceNode mine
        ? new SequenceNode(
            mine.getTag(),
            true,
            Stream.concat(others.getValue().stream(), mine.getValue().stream()).toList(),
            mine.getFlowStyle(),
            mine.getStartMark(),
            mine.getEndMark())
        : own;
  }

  private static MappingNode mapping(MappingNode place, List<NodeTuple> entries) {
    return new MappingNode(
        place.getTag(),
        true,
        entries,
        place.getFlowStyle(),
        place.getStartMark(),
        place.getEndMark());
  }

  /** A key that is no word differs from all others. */
  private static String key(NodeTuple entry) {
    return entry.getKeyNode() instanceof ScalarNode key
        ? key.getValue()
        : "?" + System.identityHashCode(entry);
  }
}
