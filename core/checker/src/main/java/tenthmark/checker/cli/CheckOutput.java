package tenthmark.checker.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.report.JsonReport;
import tenthmark.checker.report.LeftOut;
import tenthmark.checker.report.TextReport;
import tenthmark.checker.workbook.Reason;
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
  private boolean complete = true;

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
      print(report.file() + ": ", () -> lines(report));
    }
    progress.ifPresent(Progress::step);
    progress.ifPresent(Progress::show);
  }

  private List<String> lines(FileReport report) {
    List<String> lines = new ArrayList<>(text.lines(report));
    lines.add(text.summary(report));
    return lines;
  }

  /** Prints what is to be said about all files; whether all that was to be printed was. */
  boolean end(LeftOut leftOut) {
    progress.ifPresent(Progress::clear);
    print("", () -> List.of(all(leftOut)));
    if (out.checkError()) {
      complete = false;
      err.println("the results cannot all be written to standard output");
    }
    return complete;
  }

  private String all(LeftOut leftOut) {
    return format == Format.JSON
        ? JsonReport.write(reports, leftOut, text.texts())
        : text.summary(reports);
  }

  /** Whatever goes wrong with some lines, the others and the reports follow. */
  private void print(String whose, Supplier<List<String>> lines) {
    try {
      lines.get().forEach(out::println);
    } catch (Throwable fault) {
      complete = false;
      err.println(whose + "the results cannot be printed: " + Reason.of(fault));
    }
  }

  /** The reports, in the order of the files. */
  List<FileReport> reports() {
    return reports;
  }
}
