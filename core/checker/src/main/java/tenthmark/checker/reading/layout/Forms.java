package tenthmark.checker.reading.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tenthmark.checker.evaluation.NativeFunctions;
import tenthmark.checker.reading.NumberRole;
import tenthmark.checker.reading.block.Block;
import tenthmark.checker.reading.block.Direction;
import tenthmark.checker.reading.block.TypedCell;
import tenthmark.checker.reading.formula.Spreads;
import tenthmark.checker.reading.formula.Sums;
import tenthmark.checker.reading.words.Heading;
import tenthmark.checker.reading.words.HeadingGrammar;
import tenthmark.checker.reading.words.Role;
import tenthmark.checker.record.Field;
import tenthmark.checker.unit.UnitReader;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;

/**
 * Forms: a label on the left, its value on the right with its uncertainty behind a sign, in a row
 * below, or not at all, and the unit behind; several may stand side by side. Means with what
 * belongs to them and the numbers of a line through points are written so too.
 */
final class Forms implements Layout {

  private static final int NEAR = 6;

  private static final Set<Role> OF_NO_MEASUREMENT =
      Set.of(
          Role.ACCEPTED,
          Role.COMPARISON,
          Role.STATISTIC,
          Role.COUNT,
          Role.CYCLES,
          Role.INDEX,
          Role.DATE,
          Role.CONSTANT,
          Role.SPECIFICATION);

  private static final List<Role> PARTS =
      List.of(
          Role.READING,
          Role.PHYSICAL,
          Role.INSTRUMENT,
          Role.TIMING,
          Role.REPEAT,
          Role.DIVISION,
          Role.RESOLUTION,
          Role.REACTION,
          Role.ENDS);

  /** A label may stand beside another's value with a blank column between. */
  @Override
  public boolean isOfWholeSheet() {
    return true;
  }

  @Override
  public List<Proposal> propose(Block block, Surroundings surroundings) {
    List<FormItem> items = FormItems.in(block, surroundings);
    if (items.isEmpty()) {
      return List.of();
    }
    return List.of(new Form(items, block, surroundings).proposal());
  }

  /** The form that the items of a block are. */
  private static final class Form {

    private final List<FormItem> items;
    private final Block block;
    private final Surroundings surroundings;
    private final Labels labels;
    private final LineFormulas formulas;
    private final Map<FormItem, Draft> drafts = new java.util.LinkedHashMap<>();
    private final Map<CellAddress, Field> headings = new HashMap<>();
    private final Map<CellAddress, NumberRole> numbers = new HashMap<>();
    private final List<FormItem> values = new ArrayList<>();
    private final Set<FormItem> summed = new HashSet<>();
    private int evidence;

    private Form(List<FormItem> items, Block block, Surroundings surroundings) {
      this.items = items;
      this.block = block;
      this.surroundings = surroundings;
      this.labels = new Labels(surroundings);
      this.formulas = new LineFormulas(surroundings.evaluation());
    }

    private Proposal proposal() {
      findSums();
      items.stream().filter(this::isValue).forEach(this::value);
      List<FormItem> others = items.stream().filter(item -> !isValue(item)).toList();
      others.stream().filter(this::isUncertainty).forEach(this::attach);
      others.stream().filter(item -> !isUncertainty(item)).forEach(this::attach);
      List<Draft> records = new ArrayList<>();
      drafts.forEach(
          (item, draft) -> {
            if (draft.hasUncertainty() || isSlopeWithUnit(item, draft)) {
              records.add(draft);
              evidence += 1;
            } else {
              number(item);
            }
          });
      return new Proposal(
          records, block.area(), Direction.ROWS, headings, numbers, Map.of(), 10 + evidence);
    }

    private boolean isUncertainty(FormItem item) {
      return field(item).filter(field -> field == Field.UNCERTAINTY).isPresent();
    }

    private boolean isSlopeWithUnit(FormItem item, Draft draft) {
      return NativeFunctions.isOfLine(item.value().cell())
          && formulas.part(item.value()) == LineFormulas.Part.SLOPE
          && (draft.place(Field.UNIT).isPresent() || !draft.unit(Field.VALUE).isEmpty());
    }

    private boolean isValue(FormItem item) {
      if (isPaired(item)) {
        return true;
      }
      if (summed.contains(item)
          || surroundings.pairs().value(item.value().address()).isPresent()
          || Spreads.isOfSpread(item.value().cell(), surroundings.evaluation())) {
        return false;
      }
      if (formulas.part(item.value()).isUncertainty()
          || formulas.part(item.value()) == LineFormulas.Part.STATISTIC) {
        return false;
      }
      Heading heading = item.heading();
      if (heading.mark() == Heading.Mark.SURE && !heading.can(Role.VALUE)) {
        return false;
      }
      if (heading.mark() == Heading.Mark.DELTA) {
        return item.uncertainty().isPresent()
            || named(heading, item).isEmpty() && !isSmallAfterAnother(item);
      }
      Set<Role> roles = heading.roles();
      if (roles.isEmpty() || item.uncertainty().isPresent()) {
        return !roles.contains(Role.COMPARISON) && !roles.contains(Role.ACCEPTED);
      }
      if (roles.contains(Role.UNCERTAINTY) && !roles.contains(Role.VALUE)) {
        return false;
      }
      if (roles.contains(Role.VALUE) || roles.contains(Role.MEAN) || roles.contains(Role.RESULT)) {
        return true;
      }
      boolean dimensional = !item.unit().isEmpty() || !heading.unit().isEmpty();
      boolean measured = dimensional && !item.anyUnit().equals("%") && !item.anyUnit().equals("1");
      if (measured && roles.equals(Set.of(Role.COMPARISON)) && item.value().isFormula()) {
        return true;
      }
      if (!heading.name().isEmpty() && roles.stream().noneMatch(OF_NO_MEASUREMENT::contains)) {
        return true;
      }
      return roles.stream().noneMatch(OF_NO_MEASUREMENT::contains)
              && roles.stream().noneMatch(PARTS::contains)
          || dimensional
              && roles.stream()
                  .allMatch(
                      role ->
                          role == Role.COUNT
                              || role == Role.CYCLES
                              || role == Role.INDEX
                              || role == Role.DATE);
    }

    /** A difference is a value if what formulas pair with it is called its uncertainty. */
    private boolean isPaired(FormItem item) {
      Optional<CellAddress> size = surroundings.pairs().uncertainty(item.value().address());
      boolean plain = !item.heading().can(Role.COMPARISON) && !item.heading().can(Role.ACCEPTED);
      return size.isPresent()
          && (plain
              || items.stream()
                  .filter(other -> other.value().address().equals(size.get()))
                  .anyMatch(other -> other.heading().mark() == Heading.Mark.SURE));
    }

    /** A delta of another symbol is an uncertainty if it is small after a value in its unit. */
    private boolean isSmallAfterAnother(FormItem item) {
      return items.stream()
          .filter(other -> other.row() < item.row() && item.row() - other.row() <= NEAR)
          .filter(other -> other.value().isNumber() && !other.anyUnit().isEmpty())
          .filter(other -> UncertainMarks.sameUnit(other.anyUnit(), item.anyUnit()))
          .anyMatch(
              other -> Math.abs(item.value().number()) < 0.2 * Math.abs(other.value().number()));
    }

    private void value(FormItem item) {
      values.add(item);
      Draft draft = new Draft(item.row());
      draft.put(Field.VALUE, item.value().address());
      item.merelyUnit()
          .ifPresentOrElse(
              unit -> draft.put(Field.UNIT, unit.address()),
              () -> draft.unit(Field.VALUE, item.unit()));
      draft.unit(Field.VALUE, item.heading().unit());
      item.uncertainty()
          .ifPresent(
              cell -> {
                draft.put(Field.UNCERTAINTY, cell.address());
                evidence += item.signed() ? 3 : 1;
              });
      item.heading().given().ifPresent(draft::given);
      name(item, draft);
      item.reason().ifPresent(reason -> draft.put(Field.REMARK, reason.address()));
      draft.heading(item.label().address());
      headings.put(item.label().address(), Field.VALUE);
      draft.beside(block.row(item.row()));
      drafts.put(item, draft);
    }

    /** A label that says no more than mean or slope is completed by what it is computed from. */
    private void name(FormItem item, Draft draft) {
      Heading heading = item.heading();
      Optional<Labels.Label> series =
          NativeFunctions.of(item.value().cell()).stream().anyMatch(NativeFunctions.MEANS::contains)
              ? surroundings.evaluation().references(item.value().cell()).stream()
                  .findFirst()
                  .flatMap(labels::of)
                  .filter(label -> !label.cell().equals(item.label()))
              : Optional.empty();
      String said = heading.can(Role.COMPARISON) ? "" : heading.name();
      if (said.isEmpty() && series.isPresent()) {
        said = series.get().heading().name();
      }
      draft.say(
          Field.QUANTITY,
          said.isEmpty() ? item.label().text().replaceFirst("(?<![\\s:=])[\\s:=]++$", "") : said);
      draft.say(Field.SYMBOL, heading.symbol());
      if (draft.place(Field.UNIT).isEmpty()) {
        series.ifPresent(label -> draft.unit(Field.VALUE, label.heading().unit()));
      }
    }

    private void attach(FormItem item) {
      Heading heading = item.heading();
      if (summed.contains(item)) {
        headings.put(item.label().address(), Field.UNCERTAINTY);
        return;
      }
      Optional<Field> field = field(item);
      Optional<FormItem> target =
          field
              .flatMap(part -> target(item, heading, part))
              .filter(drafts::containsKey)
              .filter(
                  value ->
                      isUncertainty(item)
                          || drafts.get(value).place(Field.UNCERTAINTY).isPresent());
      if (field.isEmpty() || target.isEmpty()) {
        number(item);
        return;
      }
      Draft draft = drafts.get(target.get());
      boolean free = draft.place(field.get()).isEmpty();
      if (!free) {
        if (field.get() == Field.UNCERTAINTY && isFinal(item, draft)) {
          draft.drop(Field.UNCERTAINTY);
        } else {
          number(item);
          return;
        }
      }
      draft.put(field.get(), item.value().address());
      boolean relative = heading.isRelative() || item.unit().equals("%");
      String unit = !item.unit().isEmpty() ? item.unit() : heading.unit();
      draft.unit(field.get(), relative && unit.isEmpty() ? "1" : unit);
      item.reason().ifPresent(reason -> draft.put(Field.REMARK, reason.address()));
      draft.heading(item.label().address());
      headings.put(item.label().address(), field.get());
      evidence += 3;
    }

    /** The items that the formula of a total adds up. */
    private void findSums() {
      items.stream()
          .filter(item -> surroundings.pairs().isContribution(item.value().address()))
          .forEach(summed::add);
      for (FormItem total : items) {
        boolean uncertain =
            total.heading().mark() != Heading.Mark.NONE && Sums.isSum(total.value().cell());
        if (uncertain) {
          items.stream()
              .filter(item -> !item.equals(total) && item.column() == total.column())
              .filter(
                  item ->
                      surroundings.evaluation().references(total.value().cell()).stream()
                          .anyMatch(range -> range.contains(item.value().address())))
              .forEach(summed::add);
        }
      }
    }

    /** Of two uncertainties the one that is computed from the other is the final one. */
    private boolean isFinal(FormItem later, Draft draft) {
      boolean relative = later.heading().isRelative() || later.unit().equals("%");
      return !relative
          && draft
              .place(Field.UNCERTAINTY)
              .filter(
                  earlier ->
                      surroundings.evaluation().references(later.value().cell()).stream()
                          .anyMatch(range -> range.contains(earlier)))
              .isPresent();
    }

    private Optional<Field> field(FormItem item) {
      if (surroundings.pairs().value(item.value().address()).isPresent()) {
        return Optional.of(Field.UNCERTAINTY);
      }
      if (formulas.part(item.value()).isUncertainty()) {
        return Optional.of(Field.UNCERTAINTY);
      }
      Heading heading = item.heading();
      if (heading.mark() != Heading.Mark.NONE
          && heading.roles().stream()
              .noneMatch(role -> role == Role.COMPARISON || role == Role.ACCEPTED)) {
        return PARTS.stream()
            .filter(heading::can)
            .findFirst()
            .flatMap(Field::of)
            .or(() -> Optional.of(Field.UNCERTAINTY));
      }
      if (Spreads.isOfSpread(item.value().cell(), surroundings.evaluation())) {
        return Optional.of(Field.UNCERTAINTY);
      }
      if (heading.roles().contains(Role.COMPARISON) || heading.roles().contains(Role.ACCEPTED)) {
        return Optional.empty();
      }
      if (heading.can(Role.STATISTIC) && isOfLine(heading, item)) {
        return Optional.of(Field.UNCERTAINTY);
      }
      if (heading.can(Role.STATISTIC) || heading.can(Role.COUNT) && !heading.can(Role.REPEAT)) {
        return Optional.empty();
      }
      return PARTS.stream().filter(heading::can).findFirst().flatMap(Field::of);
    }

    /** The standard deviation of a slope is its uncertainty. */
    private boolean isOfLine(Heading heading, FormItem item) {
      return named(heading, item)
          .filter(value -> NativeFunctions.isOfLine(value.value().cell()))
          .isPresent();
    }

    private Optional<FormItem> target(FormItem item, Heading heading, Field field) {
      if (surroundings.pairs().value(item.value().address()).isPresent()) {
        return paired(item);
      }
      Optional<FormItem> byFormula = ofSameLine(item);
      if (byFormula.isPresent()) {
        return byFormula;
      }
      if (!heading.name().isEmpty()) {
        Optional<FormItem> named = named(heading, item);
        if (named.isPresent()) {
          return named;
        }
      }
      return values.stream()
          .filter(value -> value.row() <= item.row() && item.row() - value.row() <= NEAR)
          .filter(value -> value.column() == item.column() || value.row() == item.row())
          .filter(value -> fits(item, value))
          .filter(value -> field != Field.UNCERTAINTY || isSmaller(item, value))
          .reduce((one, other) -> other);
    }

    /** Whether a part can be one of a value, by its unit. */
    private static boolean fits(FormItem item, FormItem value) {
      String of = item.anyUnit();
      if (of.isEmpty() || of.equals("%") || value.anyUnit().isEmpty()) {
        return true;
      }
      var one = UnitReader.STANDARD.read(of).known();
      var other = UnitReader.STANDARD.read(value.anyUnit()).known();
      return one.isEmpty() || other.isEmpty() || one.get().to(other.get()).isPresent();
    }

    private static boolean isSmaller(FormItem item, FormItem value) {
      return !item.value().isNumber()
          || !value.value().isNumber()
          || value.value().number() == 0
          || Math.abs(item.value().number()) <= Math.abs(value.value().number())
          || !item.unit().equals(value.unit());
    }

    private Optional<FormItem> paired(FormItem item) {
      Optional<CellAddress> value = surroundings.pairs().value(item.value().address());
      return values.stream()
          .filter(other -> value.filter(other.value().address()::equals).isPresent())
          .findFirst();
    }

    private Optional<FormItem> ofSameLine(FormItem item) {
      LineFormulas.Part part = formulas.part(item.value());
      return part.isUncertainty()
          ? values.stream()
              .filter(value -> formulas.part(value.value()) == part.of())
              .filter(value -> formulas.sameLine(value.value(), item.value()))
              .reduce((one, other) -> other)
          : Optional.empty();
    }

    private Optional<FormItem> named(Heading heading, FormItem item) {
      List<FormItem> named =
          items.stream()
              .filter(value -> !value.equals(item))
              .filter(value -> value.heading().mark() == Heading.Mark.NONE)
              .filter(value -> !value.heading().can(Role.UNCERTAINTY))
              .filter(value -> Naming.matches(value.heading(), heading.name()))
              .filter(value -> values.isEmpty() || values.contains(value))
              .toList();
      return named.stream()
          .filter(value -> value.row() <= item.row())
          .reduce((one, other) -> other)
          .or(() -> named.stream().findFirst());
    }

    private void number(FormItem item) {
      TypedCell cell = item.value();
      NumberRole role =
          NumberRoles.of(item.heading().roles())
              .orElseGet(
                  () ->
                      formulas.part(cell) == LineFormulas.Part.STATISTIC
                          ? NumberRole.STATISTIC
                          : cell.isFormula() ? NumberRole.CALCULATED : NumberRole.CONSTANT);
      numbers.put(cell.address(), role);
      item.uncertainty().ifPresent(other -> numbers.put(other.address(), role));
    }
  }

  /** Whether a cell is a text that says nothing but plus or minus. */
  static boolean isSign(TypedCell cell) {
    return cell.isText()
        && (cell.text().equals("±") || cell.text().equals("+/-") || cell.text().equals("+-"));
  }

  static boolean isUnit(TypedCell cell, HeadingGrammar grammar) {
    return cell.isText() && grammar.isUnit(cell.text());
  }

  static CellRange areaOf(TypedCell cell) {
    return CellRange.of(cell.address());
  }
}
