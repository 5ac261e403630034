package tenthmark.checker.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Optional;
import tenthmark.checker.batch.Basis;
import tenthmark.checker.profile.ProfileReader;
import tenthmark.checker.report.Provenance;

/** By what and when a check of this command line is made. */
final class Provenances {

  private Provenances() {}

  /**
   * A check that begins now.
   *
   * @param profile may be null
   */
  static Provenance now(Path profile) throws IOException {
    return new Provenance(
        LocalDateTime.now(ZoneId.systemDefault()),
        profile == null
            ? Optional.empty()
            : Optional.of(
                new Provenance.ProfileStamp(
                    profile.getFileName().toString(),
                    LocalDateTime.ofInstant(
                        Files.getLastModifiedTime(profile).toInstant(), ZoneId.systemDefault()),
                    Basis.sha256(ProfileReader.files(profile)))));
  }
}
