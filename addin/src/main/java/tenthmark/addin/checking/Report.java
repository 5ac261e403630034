package tenthmark.addin.checking;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** What {@code check --format json} prints. */
record Report(int format, List<CheckedFile> files) {

  /** The version of the form that is understood here. */
  private static final int FORMAT = 1;

  /** What it says of the one file; nothing if this is not a whole report on one. */
  static Optional<CheckedFile> file(String json) {
    try {
      Report report = JSON.std.beanFrom(Report.class, json);
      boolean whole = report != null && report.format() == FORMAT && report.files().size() == 1;
      return whole ? Optional.of(report.files().get(0)) : Optional.empty();
    } catch (IOException cutShort) {
      return Optional.empty();
    }
  }
}
