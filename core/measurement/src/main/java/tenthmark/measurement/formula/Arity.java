package tenthmark.measurement.formula;

import tenthmark.measurement.wording.Message;

/** How many arguments a function takes. */
record Arity(int least, int most) {

  /** The most that a spreadsheet passes to any function. */
  private static final int MANY = 255;

  static Arity exactly(int count) {
    return new Arity(count, count);
  }

  static Arity atLeast(int count) {
    return new Arity(count, MANY);
  }

  boolean allows(int count) {
    return count >= least && count <= most;
  }

  /** As a sentence says it: {@code 1 to 2}. */
  Message inWords() {
    return least == most
        ? Message.verbatim(least)
        : Message.of("formula.arguments.from.to", least, most);
  }
}
