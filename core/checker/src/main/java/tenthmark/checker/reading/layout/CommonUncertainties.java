package tenthmark.checker.reading.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tenthmark.checker.reading.block.Block;
import tenthmark.checker.reading.block.Blocks;
import tenthmark.checker.reading.block.TypedCell;
import tenthmark.checker.reading.block.TypedSheet;
import tenthmark.checker.reading.words.GivenUncertainty;
import tenthmark.checker.reading.words.Heading;
import tenthmark.checker.reading.words.HeadingGrammar;
import tenthmark.checker.reading.words.Notion;
import tenthmark.checker.reading.words.Role;
import tenthmark.checker.unit.UnitReader;
import tenthmark.measurement.formula.CellAddress;

/**
 * The uncertainties that a sheet states once for many values: in a cell beside a label such as Δs
 * =, or in a line of text such as "all lengths ± 0.5 mm".
 */
public final class CommonUncertainties {

  /**
   * One uncertainty for many values.
   *
   * @param name the quantity that it names, or empty
   * @param cell where its number stands; empty if it stands in a text
   */
  record Common(
      String name, String text, GivenUncertainty size, Optional<CellAddress> cell, int row) {}

  private static final String PART = "1";
  private static final Pattern IN_TEXT =
      Pattern.compile(
          "(?<name>[^±=:;,.(]{0,60}?)\\s{0,9}+(?:[=:]\\s*+)?(?:±|\\+\\s?/?\\s?[-−–])"
              + "\\s*(?<size>\\d+(?:[.,]\\d+)?)\\s*"
              + "(?<unit>%|[\\p{L}°µΩ][\\p{L}\\p{N}°µΩ/·^²³]*)?");
  private static final Pattern MARKED_IN_TEXT =
      Pattern.compile(
          "(?:[Δδ∆]|u\\()(?<name>[\\p{L}\\p{N}_]{1,60}+)\\)?\\s*+=\\s*(?<size>\\d+(?:[.,]\\d+)?)\\s*"
              + "(?<unit>%|[\\p{L}°µΩ][\\p{L}\\p{N}°µΩ/·^²³]*)?");

  private final List<Common> all = new ArrayList<>();
  private final HeadingGrammar grammar;

  CommonUncertainties(TypedSheet sheet, Surroundings surroundings) {
    this.grammar = surroundings.grammar();
    for (Block block : Blocks.of(sheet)) {
      FormItems.in(block, surroundings).forEach(this::item);
      block.cells().stream().filter(TypedCell::isText).forEach(this::text);
      block.cells().stream().filter(TypedCell::isText).forEach(cell -> above(cell, block));
    }
  }

  private void item(FormItem item) {
    Heading heading = item.heading();
    boolean uncertain = heading.mark() != Heading.Mark.NONE || heading.can(Role.UNCERTAINTY);
    if (uncertain && item.value().isNumber() && item.value().number() > 0) {
      all.add(
          new Common(
              heading.name(),
              heading.text(),
              new GivenUncertainty(item.value().number(), unit(item)),
              Optional.of(item.value().address()),
              item.row()));
    }
  }

  /** Behind a number without unit "of each reading" makes it a part of that. */
  private String unit(FormItem item) {
    boolean part =
        item.reason()
            .map(reason -> reason.text().split("\\s", 2)[0])
            .filter(word -> grammar.vocabulary().says(Notion.OF, word))
            .isPresent();
    return item.anyUnit().isEmpty() && part ? PART : item.anyUnit();
  }

  /** A label with its number beneath, and the unit behind that. */
  private void above(TypedCell label, Block block) {
    boolean forAll = grammar.vocabulary().mentions(Notion.ALL, label.text());
    Optional<TypedCell> number =
        block.sheet().at(label.address().column(), label.address().row() + 1);
    Optional<Heading> heading = forAll ? grammar.read(label.text()) : Optional.empty();
    if (heading.filter(h -> h.mark() == Heading.Mark.SURE).isPresent()
        && number.filter(TypedCell::isTyped).filter(cell -> !isKnown(cell)).isPresent()) {
      String unit =
          block
              .sheet()
              .at(number.get().address().column() + 1, number.get().address().row())
              .filter(cell -> cell.isText() && grammar.isUnit(cell.text()))
              .map(cell -> HeadingGrammar.bare(cell.text()))
              .orElse(heading.get().unit());
      all.add(
          new Common(
              heading.get().name(),
              label.text(),
              new GivenUncertainty(number.get().number(), unit),
              Optional.of(number.get().address()),
              label.address().row()));
    }
  }

  private boolean isKnown(TypedCell number) {
    return all.stream().anyMatch(common -> common.cell().equals(Optional.of(number.address())));
  }

  private void text(TypedCell cell) {
    if (cell.text().length() > 300 || grammar.isAmount(cell.text())) {
      return;
    }
    Matcher marked = MARKED_IN_TEXT.matcher(cell.text());
    while (marked.find()) {
      add(marked, cell);
    }
    Matcher signed = IN_TEXT.matcher(cell.text());
    while (signed.find()) {
      boolean ofResult = signed.group("name").matches(".*\\d\\s*\\S{0,6}\\s*$");
      if (!ofResult) {
        add(signed, cell);
      }
    }
  }

  private void add(Matcher found, TypedCell cell) {
    String unit = found.group("unit") == null ? "" : found.group("unit");
    if (unit.isEmpty() || grammar.isUnit(unit)) {
      double size = Double.parseDouble(found.group("size").replace(',', '.'));
      String name =
          grammar.read(found.group("name")).map(Heading::name).orElse(found.group("name"));
      all.add(
          new Common(
              name.strip(),
              found.group("name"),
              new GivenUncertainty(size, unit),
              Optional.empty(),
              cell.address().row()));
    }
  }

  /** The one that names a column's quantity; else the only one in its unit that names none. */
  Optional<Common> of(Column values) {
    if (values.heading().isEmpty()) {
      return Optional.empty();
    }
    Heading heading = values.heading().get();
    return all.stream()
        .filter(common -> fits(common, heading))
        .filter(common -> Naming.matches(heading, common.name()))
        .findFirst()
        .or(() -> ofAll(heading));
  }

  /** The only one that is stated for all, of values that no other is stated for. */
  private Optional<Common> ofAll(Heading heading) {
    List<Common> forAll =
        all.stream()
            .filter(common -> fits(common, heading))
            .filter(common -> grammar.vocabulary().mentions(Notion.ALL, common.text()))
            .toList();
    return forAll.size() == 1 ? Optional.of(forAll.get(0)) : Optional.empty();
  }

  private static boolean fits(Common common, Heading heading) {
    String unit = common.size().unit();
    if (unit.isEmpty() || unit.equals("%") || unit.equals(PART) || heading.unit().isEmpty()) {
      return true;
    }
    var one = UnitReader.STANDARD.read(unit).known();
    var other = UnitReader.STANDARD.read(heading.unit()).known();
    return one.isEmpty() || other.isEmpty() || one.get().to(other.get()).isPresent();
  }
}
