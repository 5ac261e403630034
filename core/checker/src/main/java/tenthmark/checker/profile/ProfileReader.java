package tenthmark.checker.profile;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * Reads the YAML file in which a course says what it expects. Whatever is left out has a default;
 * course-profile.schema.json beside this class describes the file.
 */
public final class ProfileReader {

  private final Set<String> ruleIds;

  /**
   * @param ruleIds the ids that the profile may grade
   */
  public ProfileReader(Set<String> ruleIds) {
    this.ruleIds = Set.copyOf(ruleIds);
  }

  /**
   * Reads a file, which holds UTF-8 text, and those that it includes.
   *
   * @throws IOException if the file itself cannot be read
   */
  public ProfileText read(Path file) throws IOException {
    Problems problems = new Problems();
    return read(new ProfileNodes(problems).of(file), problems);
  }

  /** Reads a profile that includes nothing. */
  public ProfileText read(String yaml) {
    Problems problems = new Problems();
    return read(new ProfileNodes(problems).of(yaml), problems);
  }

  /**
   * The files of a profile: itself, and those that it includes as far as they can be read.
   *
   * @throws IOException if the file itself cannot be read
   */
  public static List<Path> files(Path file) throws IOException {
    ProfileNodes nodes = new ProfileNodes(new Problems());
    nodes.of(file);
    return nodes.files();
  }

  private ProfileText read(Optional<Node> node, Problems problems) {
    Profile profile =
        node.flatMap(whole -> Section.of("a profile", whole, problems))
            .map(section -> new ProfileSection(ruleIds).read(section))
            .orElse(Profile.NONE);
    List<Problem> found = problems.fromTopToBottom();
    return found.isEmpty() ? new ProfileText.Usable(profile) : new ProfileText.Unusable(found);
  }
}
