package tenthmark.measurement.catalogue;

/** How far two words are apart: letters left out, put in, exchanged or in changed places. */
final class Spelling {

  private Spelling() {}

  /**
   * The number of such slips, each place of a word taken once (optimal string alignment, a
   * restricted Damerau-Levenshtein distance).
   */
  static int slips(String one, String other) {
    int[][] slips = new int[one.length() + 1][other.length() + 1];
    for (int i = 0; i <= one.length(); i++) {
      for (int j = 0; j <= other.length(); j++) {
        slips[i][j] = i == 0 || j == 0 ? i + j : least(slips, one, i, other, j);
      }
    }
    return slips[one.length()][other.length()];
  }

  private static int least(int[][] slips, String one, int i, String other, int j) {
    int exchanged = slips[i - 1][j - 1] + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
    int least = Math.min(exchanged, 1 + Math.min(slips[i - 1][j], slips[i][j - 1]));
    boolean swapped =
        i > 1
            && j > 1
            && one.charAt(i - 1) == other.charAt(j - 2)
            && one.charAt(i - 2) == other.charAt(j - 1);
    return swapped ? Math.min(least, 1 + slips[i - 2][j - 2]) : least;
  }
}
