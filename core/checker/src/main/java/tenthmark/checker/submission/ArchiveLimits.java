package tenthmark.checker.submission;

/**
 * How much an archive of submissions may ask for.
 *
 * @param bytes most bytes that all that is taken out of it may have
 * @param fileBytes most bytes of one file in it
 * @param entries most files and folders in it, those of archives in it included
 * @param depth how many archives may lie within one another
 */
public record ArchiveLimits(long bytes, long fileBytes, int entries, int depth) {

  /** Far above a section of thirty students who add photographs. */
  public static final ArchiveLimits DEFAULT = new ArchiveLimits(2L << 30, 256L << 20, 20_000, 3);
}
