package tenthmark.samples.corpus;

/**
 * Numbers that are no part of a record.
 *
 * @param sheet its name
 * @param range the cells, such as {@code A5:A14}
 * @param is what they are
 */
public record Other(String sheet, String range, Role is) {}
