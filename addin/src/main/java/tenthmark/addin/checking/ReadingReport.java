package tenthmark.addin.checking;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.util.List;

/** What {@code reading --format json} prints. */
record ReadingReport(int format, List<ReadFile> files) {

  /** The version of the form that is understood here. */
  private static final int FORMAT = 1;

  static ReadingReport read(String json) throws IOException {
    ReadingReport report = JSON.std.beanFrom(ReadingReport.class, json);
    if (report == null || report.format() != FORMAT) {
      throw new IOException("the checker wrote another form than " + FORMAT);
    }
    return report;
  }
}
