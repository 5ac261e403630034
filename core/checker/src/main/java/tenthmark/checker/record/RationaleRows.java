package tenthmark.checker.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.evaluation.Outcome;
import tenthmark.checker.workbook.Cell;
import tenthmark.measurement.catalogue.Value;

/**
 * Lines between two places that hold a rationale: nothing but text, which begins with the word or
 * is one text of several words.
 */
final class RationaleRows {

  private static final int WORDS = 4;

  private static final Pattern BLANKS = Pattern.compile("\\s");

  private final Evaluation evaluation;
  private final Lines lines;
  private final HeadingWords words;
  private final int left;
  private final int right;

  RationaleRows(Evaluation evaluation, Lines lines, HeadingWords words, int left, int right) {
    this.evaluation = evaluation;
    this.lines = lines;
    this.words = words;
    this.left = left;
    this.right = right;
  }

  boolean isAt(int line) {
    List<Cell> cells = cells(line);
    if (cells.isEmpty() || cells.stream().anyMatch(cell -> text(cell).isEmpty())) {
      return false;
    }
    String first = text(cells.get(0)).orElse("");
    return isLabelled(first) || (cells.size() == 1 && first.split("\\s+").length >= WORDS);
  }

  /** The rationale in a row, without the word that labels it. */
  Optional<Rationale> at(int line) {
    if (!isAt(line)) {
      return Optional.empty();
    }
    List<Cell> cells = cells(line);
    List<String> texts = new ArrayList<>(cells.stream().flatMap(c -> text(c).stream()).toList());
    if (isLabelled(texts.get(0))) {
      texts.set(0, texts.get(0).replaceFirst("^\\p{L}+[\\s:.,-]*", ""));
    }
    return Optional.of(
        new Rationale(cells.get(cells.size() - 1).address(), String.join(" ", texts).strip()));
  }

  /** One text of more than one word that fills a row. */
  Optional<Rationale> fewWordsAt(int line) {
    List<Cell> cells = cells(line);
    return cells.size() == 1
        ? text(cells.get(0))
            .filter(text -> BLANKS.matcher(text).find())
            .map(text -> new Rationale(cells.get(0).address(), text))
        : Optional.empty();
  }

  /** The text of a cell, if its value is one. */
  Optional<String> text(Cell cell) {
    return evaluation.at(cell.address()) instanceof Outcome.Known known
            && known.value() instanceof Value.Text text
        ? Optional.of(text.text().strip())
        : Optional.empty();
  }

  private boolean isLabelled(String text) {
    String word = text.split("[\\s:.,-]", 2)[0];
    return words.named(word).filter(field -> field == Field.RATIONALE).isPresent();
  }

  /** The cells that are not blank. */
  private List<Cell> cells(int line) {
    return lines.cells(line, left, right).stream().filter(cell -> !isBlank(cell)).toList();
  }

  private boolean isBlank(Cell cell) {
    return evaluation.at(cell.address()) instanceof Outcome.Known known
        && known.value() instanceof Value.Blank;
  }
}
