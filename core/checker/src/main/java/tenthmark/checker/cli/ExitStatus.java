package tenthmark.checker.cli;

/** What the exit statuses of a check mean, as its help says it. */
final class ExitStatus {

  static final String CLEAN = "0:no errors or warnings (notes do not count)";
  static final String FOUND = "1:errors or warnings were found";
  static final String FAILED = "2:a file could not be checked (the others were)";
  static final String WRONG = "3:what the command line asks for cannot be done, and nothing was";

  private ExitStatus() {}
}
