package tenthmark.samples.corpus.later;

import tenthmark.samples.corpus.Page;

/** Blocks of rows that begin with their number, as a sheet shows it; rows left out stay blank. */
final class Rows {

  private Rows() {}

  /** Draws {@code 5 | U | 1.53} from A5 on. */
  static Page draw(Page page, String block) {
    block
        .lines()
        .filter(line -> !line.isBlank())
        .forEach(
            line -> {
              int bar = line.indexOf('|');
              page.draw("A" + line.substring(0, bar).strip(), line.substring(bar + 1));
            });
    return page;
  }
}
