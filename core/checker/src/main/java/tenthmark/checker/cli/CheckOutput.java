package tenthmark.checker.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.report.JsonReport;
import tenthmark.checker.report.TextReport;
import tenthmark.measurement.wording.Sentences;

/** What a check prints: results to standard output, messages and progress to standard error. */
final class CheckOutput {

  /** How results are written. */
  enum Format {
    TEXT,
    JSON
  }

  private final Format format;
  private final boolean quiet;
  private final TextReport text;
  private final PrintWriter out;
  private final PrintWriter err;
  private final Optional<Progress> progress;
  private final List<FileReport> reports = new ArrayList<>();

  CheckOutput(
      Format format,
      boolean quiet,
      Sentences texts,
      PrintWriter out,
      PrintWriter err,
      Optional<Progress> progress) {
    this.format = format;
    this.quiet = quiet;
    this.text = new TextReport(texts);
    this.out = out;
    this.err = err;
    this.progress = progress;
  }

  /** Prints what is to be said about a file at once. */
  void file(FileReport report) {
    reports.add(report);
    progress.ifPresent(Progress::clear);
    if (report.problem().isPresent()) {
      err.println(TextReport.failure(report));
    } else if (format == Format.TEXT && !quiet) {
      text.lines(report).forEach(out::println);
      out.println(text.summary(report));
    }
    progress.ifPresent(Progress::step);
    progress.ifPresent(Progress::show);
  }

  /** Prints what is to be said about all files. */
  void end() {
    progress.ifPresent(Progress::clear);
    out.println(
        format == Format.JSON ? JsonReport.write(reports, text.texts()) : text.summary(reports));
  }

  /** The reports, in the order of the files. */
  List<FileReport> reports() {
    return reports;
  }
}
