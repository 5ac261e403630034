package tenthmark.checker.batch;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import tenthmark.checker.course.Course;
import tenthmark.checker.report.Fingerprint;

/**
 * What findings rest on beside the file itself: where one of these differs, they are of no use.
 * What a course makes of the rules, and how it is run, is applied to findings that are kept.
 *
 * @param checker the program and its version
 * @param course the fingerprint of what the course expects
 */
public record Basis(String checker, String course) {

  /** The basis of findings by this version in a course. */
  public static Basis of(String version, Course course) {
    return new Basis(version, Fingerprint.of(course));
  }

  /** The SHA-256 of a file's content in hexadecimal digits. */
  public static String sha256(Path file) throws IOException {
    return sha256(List.of(file));
  }

  /** The SHA-256 of the contents of files one behind the other; of one file its own. */
  public static String sha256(List<Path> files) throws IOException {
    MessageDigest digest = Fingerprint.sha256();
    for (Path file : files) {
      try (InputStream content = Files.newInputStream(file)) {
        content.transferTo(new DigestOutputStream(OutputStream.nullOutputStream(), digest));
      }
    }
    return HexFormat.of().formatHex(digest.digest());
  }
}
