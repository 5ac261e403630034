package tenthmark.addin.checking;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.util.List;

/** What {@code check --format json} prints. */
record Report(int format, List<CheckedFile> files) {

  /** The version of the form that is understood here. */
  private static final int FORMAT = 1;

  static Report read(String json) throws IOException {
    Report report = JSON.std.beanFrom(Report.class, json);
    if (report == null || report.format() != FORMAT) {
      throw new IOException("the checker wrote another form than " + FORMAT);
    }
    return report;
  }
}
