package tenthmark.checker.fuzz;

/** The bytes of a whole file; damage reaches deep into .xls files, while archives have sums. */
public final class WholeFileFuzzer {

  private WholeFileFuzzer() {}

  /** Called by Jazzer. */
  public static void fuzzerTestOneInput(byte[] input) {
    Target.check(input);
  }
}
