package tenthmark.checker.profile;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.schema.CoreSchema;

/**
 * Reads the YAML file in which a course says what it expects. Whatever is left out has a default;
 * course-profile.schema.json beside this class describes the file.
 */
public final class ProfileReader {

  /** The parser's own reasons quote what stands there, which may be any file and secret. */
  private static final String NO_YAML =
      "this is not YAML; a text with special signs needs quotation marks, and lines that belong"
          + " together the same indent";

  private static final long LARGEST = 1 << 20;

  private final Set<String> ruleIds;

  /**
   * @param ruleIds the ids that the profile may grade
   */
  public ProfileReader(Set<String> ruleIds) {
    this.ruleIds = Set.copyOf(ruleIds);
  }

  /** Reads a file, which holds UTF-8 text. */
  public ProfileText read(Path file) throws IOException {
    if (Files.size(file) > LARGEST) {
      return unusable(new Problem(1, 1, "the file is larger than 1 MiB"));
    }
    try {
      return read(Files.readString(file));
    } catch (CharacterCodingException otherwise) {
      return unusable(new Problem(1, 1, "the file is not UTF-8 text"));
    }
  }

  /** Reads a profile. */
  public ProfileText read(String yaml) {
    Problems problems = new Problems();
    try {
      Profile profile =
          compose(yaml)
              .flatMap(node -> Section.of("a profile", node, problems))
              .map(section -> new ProfileSection(ruleIds).read(section))
              .orElse(Profile.NONE);
      List<Problem> found = problems.fromTopToBottom();
      return found.isEmpty() ? new ProfileText.Usable(profile) : new ProfileText.Unusable(found);
    } catch (YamlEngineException noYaml) {
      return unusable(problem(noYaml, yaml));
    }
  }

  private static Optional<Node> compose(String yaml) {
    return new Compose(
            LoadSettings.builder().setSchema(new CoreSchema()).setAllowNonScalarKeys(true).build())
        .composeString(yaml.startsWith("\uFEFF") ? yaml.substring(1) : yaml);
  }

  private static ProfileText unusable(Problem problem) {
    return new ProfileText.Unusable(List.of(problem));
  }

  private static Problem problem(YamlEngineException noYaml, String yaml) {
    if (noYaml instanceof MarkedYamlEngineException marked && marked.getProblemMark().isPresent()) {
      Problems one = new Problems();
      one.add(marked.getProblemMark().get(), NO_YAML);
      return one.fromTopToBottom().get(0);
    }
    if (noYaml instanceof ReaderException control) {
      String before = yaml.substring(0, yaml.offsetByCodePoints(0, control.getPosition()));
      return new Problem(
          (int) before.lines().count(),
          before.length() - before.lastIndexOf('\n'),
          "a control character stands here");
    }
    return new Problem(1, 1, "this is not YAML, or more nested or repeated than a profile can be");
  }
}
