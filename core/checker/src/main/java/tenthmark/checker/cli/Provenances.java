package tenthmark.checker.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import tenthmark.checker.batch.Basis;
import tenthmark.checker.profile.ProfileReader;
import tenthmark.checker.report.Provenance;
import tenthmark.checker.report.Provenance.FileStamp;

/** By what and when a check of this command line is made. */
final class Provenances {

  private Provenances() {}

  /**
   * A check that begins now.
   *
   * @param profile may be null
   */
  static Provenance now(Path profile, Optional<Path> remarks) throws IOException {
    Optional<FileStamp> decisions = Optional.empty();
    if (remarks.isPresent()) {
      decisions = Optional.of(stamp(remarks.get(), List.of(remarks.get())));
    }
    return new Provenance(
        LocalDateTime.now(ZoneId.systemDefault()),
        profile == null
            ? Optional.empty()
            : Optional.of(stamp(profile, ProfileReader.files(profile))),
        decisions);
  }

  private static FileStamp stamp(Path file, List<Path> all) throws IOException {
    return new FileStamp(
        file.getFileName().toString(),
        LocalDateTime.ofInstant(
            Files.getLastModifiedTime(file).toInstant(), ZoneId.systemDefault()),
        Basis.sha256(all));
  }
}
