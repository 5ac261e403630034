package tenthmark.checker.workbook;

/** Counts what a file holds while it is read, against the limits. */
final class Tally {

  private final Limits limits;
  private int cells;
  private int formulas;
  private int names;
  private int merged;

  Tally(Limits limits) {
    this.limits = limits;
  }

  /** Refuses cells that are still to come, before memory is taken for them. */
  void require(long coming) throws UnreadableFileException {
    if (cells + coming > limits.cells()) {
      throw limits.tooManyCells();
    }
  }

  void cell(Content content) throws UnreadableFileException {
    OutOfTimeException.ifInterrupted();
    if (++cells > limits.cells()) {
      throw limits.tooManyCells();
    }
    if (content instanceof Content.Formula && ++formulas > limits.formulas()) {
      throw limits.tooMany(limits.formulas(), "formulas");
    }
  }

  /** Counts a comment or a box of text, which takes the place of a cell. */
  void note() throws UnreadableFileException {
    require(1);
    cells++;
  }

  void name() throws UnreadableFileException {
    if (++names > limits.names()) {
      throw limits.tooMany(limits.names(), "names");
    }
  }

  void merged() throws UnreadableFileException {
    if (++merged > limits.merged()) {
      throw limits.tooMany(limits.merged(), "merged areas");
    }
  }
}
