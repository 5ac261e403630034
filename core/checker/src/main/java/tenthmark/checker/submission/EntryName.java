package tenthmark.checker.submission;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;

/** The name of a file in an archive, made one that can stand in any file system. */
final class EntryName {

  /** Where a name is not in UTF-8, archives are in the code page of APPNOTE.TXT, appendix D. */
  private static final Charset OLD = Charset.forName("IBM437");

  /** What no name of a file has on some system, and signs that nobody sees. */
  private static final Pattern UNWRITABLE = Pattern.compile("[<>:\"|?*\\p{Cntrl}\\p{Cf}\\p{Cs}]");

  /** A step of more bytes has no room in the usual file systems. */
  private static final int LONGEST = 255;

  private static final int MOST_STEPS = 32;

  private EntryName() {}

  /** The path below the archive's own; steps out of the archive are left out. */
  static Optional<Path> below(Path archive, ZipArchiveEntry entry) {
    List<String> steps = new ArrayList<>();
    for (String step : text(entry).split("[/\\\\]", -1)) {
      String clean = UNWRITABLE.matcher(step).replaceAll("_").strip();
      if (!clean.matches("\\.*")) {
        steps.add(clean);
      }
    }
    boolean usable =
        !steps.isEmpty()
            && steps.size() <= MOST_STEPS
            && steps.stream().allMatch(step -> bytes(step) <= LONGEST);
    return usable
        ? Optional.of(archive.resolve(String.join(archive.getFileSystem().getSeparator(), steps)))
        : Optional.empty();
  }

  private static int bytes(String step) {
    return step.getBytes(StandardCharsets.UTF_8).length;
  }

  private static String text(ZipArchiveEntry entry) {
    byte[] raw = entry.getRawName();
    if (raw == null || entry.getGeneralPurposeBit().usesUTF8ForNames()) {
      return entry.getName();
    }
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(raw)).toString();
    } catch (CharacterCodingException other) {
      return new String(raw, OLD);
    }
  }
}
