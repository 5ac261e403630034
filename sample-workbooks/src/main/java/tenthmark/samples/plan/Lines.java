package tenthmark.samples.plan;

import java.util.List;

/**
 * Single values and sentences, each with a label before it.
 *
 * @param title what stands above them
 * @param lastColumn the column to which each sentence reaches
 * @param lines from top to bottom
 */
public record Lines(String title, String lastColumn, List<Line> lines) implements Block {

  /**
   * One of them.
   *
   * @param key by which formulas name the content
   * @param label what stands before it
   * @param content a number, a text or a formula
   * @param look whose it is
   */
  public record Line(String key, String label, Object content, Look look) {

    /** One that stands there from the start. */
    public Line(String key, String label, Object content) {
      this(key, label, content, Look.GIVEN);
    }
  }

  /** Who writes the content of a line, and how much room it has. */
  public enum Look {
    /** Stands there from the start. */
    GIVEN,
    /** A number or a word of the student's. */
    TYPED,
    /** A line of text of the student's. */
    LINE,
    /** Whole sentences of the student's. */
    PROSE
  }

  private static final float PROSE_HEIGHT = 42;

  /** Copies the lines. */
  public Lines {
    lines = List.copyOf(lines);
  }

  @Override
  public int height() {
    return 1 + lines.size();
  }

  @Override
  public void locate(int row, Places places) {
    for (int i = 0; i < lines.size(); i++) {
      int own = row + 1 + i;
      places.put(lines.get(i).key(), "B" + own);
      places.put(lines.get(i).key() + ".labelled", "A" + own + ":B" + own);
    }
  }

  @Override
  public void write(int row, BlockWriter writer) {
    writer.title(row, title);
    for (int i = 0; i < lines.size(); i++) {
      write(lines.get(i), row + 1 + i, writer);
    }
  }

  private void write(Line line, int row, BlockWriter writer) {
    Row shown = Row.of(line.key()).shown("0.000");
    writer.cell("A" + row, line.label(), shown, true);
    writer.cell("B" + row, line.content(), shown, line.look() == Look.GIVEN);
    if (line.look() != Look.TYPED && line.content() instanceof String) {
      writer.sheet().merge("B" + row + ":" + lastColumn + row);
    }
    if (line.look() == Look.PROSE) {
      writer.sheet().height(row, PROSE_HEIGHT);
    }
  }
}
