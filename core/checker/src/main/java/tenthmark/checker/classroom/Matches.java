package tenthmark.checker.classroom;

import java.util.Arrays;
import java.util.stream.LongStream;

/** The places at which two sequences have the same. */
final class Matches {

  /** The kind of what stands at each place, the same in both sequences. */
  private final int[] one;

  private final int[] other;

  /**
   * Of each kind the places in the other sequence, from {@code first} of it to that of the next.
   */
  private final int[] places;

  private final int[] first;

  private Matches(int[] one, int[] other, int kinds) {
    this.one = one;
    this.other = other;
    this.first = new int[kinds + 1];
    this.places = new int[other.length];
    for (int kind : other) {
      first[kind + 1]++;
    }
    Arrays.parallelPrefix(first, Integer::sum);
    int[] next = first.clone();
    for (int place = 0; place < other.length; place++) {
      places[next[other[place]]++] = place;
    }
  }

  static Matches of(long[] one, long[] other) {
    long[] kinds =
        LongStream.concat(Arrays.stream(one), Arrays.stream(other)).sorted().distinct().toArray();
    return new Matches(kinds(one, kinds), kinds(other, kinds), kinds.length);
  }

  private static int[] kinds(long[] sequence, long[] kinds) {
    return Arrays.stream(sequence).mapToInt(what -> Arrays.binarySearch(kinds, what)).toArray();
  }

  private int count(int kind) {
    return first[kind + 1] - first[kind];
  }

  /** How many there are: of each kind those in one sequence times those in the other. */
  long all() {
    return Arrays.stream(one).mapToLong(this::count).sum();
  }

  /**
   * The most matches of which each lies behind the one before it in both sequences.
   *
   * @param inTurn whether a thing matches only the one that stands as many of its kind into the
   *     other sequence, which makes the matches no more than the places
   * @return the places of each match in both sequences
   */
  int[][] chain(boolean inTurn) {
    Chains chains = new Chains(Math.min(one.length, other.length));
    int[] seen = new int[first.length];
    for (int place = 0; place < one.length; place++) {
      int kind = one[place];
      int from = inTurn ? first[kind] + seen[kind]++ : first[kind];
      int to = inTurn ? Math.min(from + 1, first[kind + 1]) : first[kind + 1];
      // From behind, so that a place of one sequence takes part once.
      for (int i = to - 1; i >= from; i--) {
        chains.add(place, places[i]);
      }
    }
    return chains.longest();
  }

  /** Of each length the chain that ends first; links share what they have in common. */
  private static final class Chains {

    private final Link[] ends;
    private int length;

    Chains(int longest) {
      this.ends = new Link[longest];
    }

    private record Link(int one, int other, Link before) {}

    void add(int one, int other) {
      int at = behind(other);
      ends[at] = new Link(one, other, at == 0 ? null : ends[at - 1]);
      length = Math.max(length, at + 1);
    }

    /** The length of the longest chain that ends before a place. */
    private int behind(int other) {
      int low = 0;
      int high = length;
      while (low < high) {
        int middle = (low + high) >>> 1;
        if (ends[middle].other() < other) {
          low = middle + 1;
        } else {
          high = middle;
        }
      }
      return low;
    }

    int[][] longest() {
      int[][] chain = new int[length][];
      Link end = length == 0 ? null : ends[length - 1];
      for (int i = length - 1; i >= 0; i--) {
        chain[i] = new int[] {end.one(), end.other()};
        end = end.before();
      }
      return chain;
    }
  }
}
