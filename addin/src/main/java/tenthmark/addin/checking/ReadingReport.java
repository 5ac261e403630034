package tenthmark.addin.checking;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** What {@code reading --format json} prints. */
record ReadingReport(int format, List<ReadFile> files) {

  /** The version of the form that is understood here. */
  private static final int FORMAT = 1;

  /** What it says of the one file; nothing if this is not a whole report on one. */
  static Optional<ReadFile> file(String json) {
    try {
      ReadingReport report = JSON.std.beanFrom(ReadingReport.class, json);
      boolean whole = report != null && report.format() == FORMAT && report.files().size() == 1;
      return whole ? Optional.of(report.files().get(0)) : Optional.empty();
    } catch (IOException cutShort) {
      return Optional.empty();
    }
  }
}
