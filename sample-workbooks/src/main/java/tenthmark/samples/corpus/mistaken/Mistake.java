package tenthmark.samples.corpus.mistaken;

import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Page;

/**
 * One mistake in a workbook.
 *
 * @param sheet its sheet
 * @param cell where it was made; what follows from it elsewhere is no mistake of its own
 * @param kind a word for the family of mistakes
 * @param written what the cell holds instead, as a drawing writes it; empty for nothing at all
 * @param sentence what an instructor would say
 */
record Mistake(String sheet, String cell, String kind, String written, String sentence) {

  void make(Drawing drawing) {
    Page page = drawing.drawn(sheet);
    if (written.isEmpty()) {
      page.erase(cell);
    } else {
      page.draw(cell, written);
    }
  }
}
