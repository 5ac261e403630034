package tenthmark.checker.reading.reason;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import tenthmark.checker.reading.block.TypedCell;
import tenthmark.checker.reading.block.TypedSheet;
import tenthmark.checker.reading.reason.Prose.Written;
import tenthmark.checker.reading.words.HeadingGrammar;
import tenthmark.checker.reading.words.Role;
import tenthmark.checker.workbook.TextBox;
import tenthmark.measurement.formula.CellAddress;

/** Finds what people write in whole words on a sheet, and which of it they call a reason. */
final class Texts {

  /** So many words are more than a name. */
  static final int WORDS = 4;

  private static final Pattern BLANKS = Pattern.compile("\\s+");
  private static final Pattern LABEL =
      Pattern.compile("^(?<label>[\\p{L} ]{2,40}?)\\s*[:.–—-]\\s+");

  private final HeadingGrammar grammar;

  Texts(HeadingGrammar grammar) {
    this.grammar = grammar;
  }

  /** The texts of a sheet that are no headings; those below a label of reasons are labelled. */
  List<Prose> of(TypedSheet sheet, Set<CellAddress> headings) {
    List<Prose> prose = new ArrayList<>();
    boolean named = isLabel(sheet.name());
    boolean under = false;
    int previous = -1;
    for (int row : sheet.rows()) {
      NavigableMap<Integer, TypedCell> cells = sheet.row(row);
      boolean texts = cells.values().stream().allMatch(TypedCell::isText);
      under &= texts && row == previous + 1;
      boolean label = texts && cells.size() == 1 && isLabel(cells.firstEntry().getValue().text());
      boolean beside = isLabel(cells.firstEntry().getValue());
      for (TypedCell cell : cells.values()) {
        if (cell.isText() && !headings.contains(cell.address())) {
          boolean called = named || under || beside || labelBefore(cell.text()).isPresent();
          if (words(cell.text()) >= (called ? 2 : WORDS)) {
            prose.add(
                new Prose(cell.address(), withoutLabel(cell.text()), called, Written.IN_CELL));
          }
        }
      }
      under |= label;
      previous = row;
    }
    return prose;
  }

  /**
   * The paragraphs of a text that lies on a sheet, and the whole of it, which speaks for tables.
   */
  List<Prose> of(TextBox box) {
    List<String> paragraphs = box.text().lines().filter(line -> !line.isBlank()).toList();
    boolean called = isLabel(paragraphs.get(0)) || labelBefore(paragraphs.get(0)).isPresent();
    List<Prose> prose = new ArrayList<>();
    paragraphs.stream()
        .filter(text -> paragraphs.size() > 1 && words(text) >= (called ? 2 : WORDS))
        .forEach(text -> prose.add(boxed(box, text, called)));
    if (words(box.text()) >= (called ? 2 : WORDS)) {
      prose.add(boxed(box, box.text(), called));
    }
    return prose;
  }

  private Prose boxed(TextBox box, String text, boolean called) {
    return new Prose(box.cell(), withoutLabel(text), called, Written.IN_BOX);
  }

  /** A comment that may speak for more than the cell that it is on. */
  Prose of(CellAddress cell, String comment) {
    return new Prose(
        cell, withoutLabel(comment), labelBefore(comment).isPresent(), Written.AS_COMMENT);
  }

  static int words(String text) {
    return BLANKS.split(text.strip(), -1).length;
  }

  private boolean isLabel(TypedCell cell) {
    return cell.isText() && isLabel(cell.text());
  }

  /** Whether a text is a label of reasons, such as a heading over them. */
  boolean isLabel(String text) {
    return words(text) <= 6
        && grammar
            .read(text)
            .filter(heading -> heading.can(Role.RATIONALE) && heading.name().isEmpty())
            .isPresent();
  }

  /** The label that a text begins with, as in "Reason: ...". */
  Optional<String> labelBefore(String text) {
    var label = LABEL.matcher(text);
    return label.find() && isLabel(label.group("label"))
        ? Optional.of(label.group())
        : Optional.empty();
  }

  String withoutLabel(String text) {
    return labelBefore(text).map(label -> text.substring(label.length()).strip()).orElse(text);
  }
}
