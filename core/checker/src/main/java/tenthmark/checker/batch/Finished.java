package tenthmark.checker.batch;

import java.util.Optional;
import tenthmark.checker.report.FileReport;

/**
 * A file of a batch when its turn is over.
 *
 * @param report what was found in it
 * @param unwritten why its reports could not all be written, in one line; empty if they could
 */
public record Finished(FileReport report, Optional<String> unwritten) {}
