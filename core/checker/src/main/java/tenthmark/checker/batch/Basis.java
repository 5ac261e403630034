package tenthmark.checker.batch;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;

/**
 * What results rest on beside the file itself: where one of these differs, they are of no use.
 *
 * @param checker the program and its version
 * @param profile the SHA-256 of the course's profile, or "none"
 */
public record Basis(String checker, String profile) {

  /** The basis of results by this version with a profile, if there is one. */
  public static Basis of(String version, Optional<Path> profile) throws IOException {
    return new Basis(version, profile.isPresent() ? sha256(profile.get()) : "none");
  }

  /** The SHA-256 of a file's content in hexadecimal digits. */
  public static String sha256(Path file) throws IOException {
    MessageDigest digest = digest();
    try (InputStream content = Files.newInputStream(file)) {
      content.transferTo(new DigestOutputStream(OutputStream.nullOutputStream(), digest));
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  private static MessageDigest digest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException impossible) {
      // Every Java platform has it.
      throw new IllegalStateException(impossible);
    }
  }
}
