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
   */
  public record Line(String key, String label, Object content) {}

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
      int own = row + 1 + i;
      Row line = Row.of(lines.get(i).key()).shown("0.000");
      writer.cell("A" + own, lines.get(i).label(), line, true);
      writer.cell("B" + own, lines.get(i).content(), line, true);
      if (lines.get(i).content() instanceof String) {
        writer.sheet().merge("B" + own + ":" + lastColumn + own);
      }
    }
  }
}
