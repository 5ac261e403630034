package tenthmark.checker.fuzz;

import java.util.Arrays;

/** One XML part within an archive that is otherwise whole; the first byte says which. */
public final class PartFuzzer {

  private PartFuzzer() {}

  /** Called by Jazzer. */
  public static void fuzzerTestOneInput(byte[] input) {
    if (input.length > 0) {
      Part part = Part.values()[Math.floorMod(input[0], Part.values().length)];
      Target.check(part.fileWith(Arrays.copyOfRange(input, 1, input.length)));
    }
  }
}
