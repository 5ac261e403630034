package tenthmark.checker.roster;

import java.nio.file.Path;
import tenthmark.checker.submission.Label;

/**
 * A file that a student handed in.
 *
 * @param file what it is called
 * @param label what its path says
 */
public record Attempt(Path file, Label label) {}
