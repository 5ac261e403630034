package tenthmark.checker.profile;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.snakeyaml.engine.v2.api.Dump;
import org.snakeyaml.engine.v2.api.DumpSettings;
import org.snakeyaml.engine.v2.api.StreamDataWriter;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.schema.CoreSchema;

/**
 * A profile as students may see it, joined with what it includes: without accepted values and
 * points, and without what only concerns how the course is run.
 */
public final class ProfileForStudents {

  private static final Set<String> OF_THE_COURSE = Set.of("submissions", "roster", "grades");
  private static final Set<String> OF_A_QUANTITY = Set.of("accepted", "uncertainty", "gap");
  private static final String SEVERITY = "severity";

  private ProfileForStudents() {}

  /**
   * The text of what students may see of a profile that can be read.
   *
   * @throws IOException if its file cannot be read
   */
  public static String of(Path file) throws IOException {
    Optional<Node> whole = new ProfileNodes(new Problems()).of(file);
    return whole.map(ProfileForStudents::without).map(ProfileForStudents::written).orElse("");
  }

  private static Node without(Node profile) {
    return changed(
        without(profile, OF_THE_COURSE),
        Map.of(
            "quantities",
            list -> each(list, entry -> without(entry, OF_A_QUANTITY)),
            "rules",
            rules -> eachValue(rules, ProfileForStudents::severity)));
  }

  private static Node without(Node node, Set<String> keys) {
    return node instanceof MappingNode mapping
        ? mapping(
            mapping,
            mapping.getValue().stream().filter(entry -> !keys.contains(key(entry))).toList())
        : node;
  }

  /** What a rule costs is the course's. */
  private static Node severity(Node rule) {
    return rule instanceof MappingNode mapping
        ? mapping(
            mapping,
            mapping.getValue().stream().filter(entry -> key(entry).equals(SEVERITY)).toList())
        : rule;
  }

  private static Node changed(Node node, Map<String, UnaryOperator<Node>> changes) {
    if (!(node instanceof MappingNode mapping)) {
      return node;
    }
    List<NodeTuple> entries = new ArrayList<>();
    for (NodeTuple entry : mapping.getValue()) {
      UnaryOperator<Node> change = changes.getOrDefault(key(entry), UnaryOperator.identity());
      entries.add(new NodeTuple(entry.getKeyNode(), change.apply(entry.getValueNode())));
    }
    return mapping(mapping, entries);
  }

  private static Node each(Node list, UnaryOperator<Node> change) {
    return list instanceof SequenceNode sequence
        ? new SequenceNode(
            sequence.getTag(),
            sequence.getValue().stream().map(change).toList(),
            sequence.getFlowStyle())
        : list;
  }

  private static Node eachValue(Node node, UnaryOperator<Node> change) {
    return node instanceof MappingNode mapping
        ? mapping(
            mapping,
            mapping.getValue().stream()
                .map(entry -> new NodeTuple(entry.getKeyNode(), change.apply(entry.getValueNode())))
                .toList())
        : node;
  }

  private static MappingNode mapping(MappingNode like, List<NodeTuple> entries) {
    return new MappingNode(like.getTag(), entries, like.getFlowStyle());
  }

  private static String key(NodeTuple entry) {
    return entry.getKeyNode() instanceof ScalarNode key ? key.getValue() : "";
  }

  private static String written(Node profile) {
    StringBuilder text = new StringBuilder();
    new Dump(
            DumpSettings.builder()
                .setSchema(new CoreSchema())
                .setWidth(Integer.MAX_VALUE)
                .setSplitLines(false)
                .build())
        .dumpNode(
            profile,
            new StreamDataWriter() {
              @Override
              public void write(String part) {
                text.append(part);
              }

              @Override
              public void write(String part, int from, int length) {
                text.append(part, from, from + length);
              }
            });
    return text.toString();
  }
}
