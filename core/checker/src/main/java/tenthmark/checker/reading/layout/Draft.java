package tenthmark.checker.reading.layout;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tenthmark.checker.reading.block.TypedCell;
import tenthmark.checker.reading.words.GivenUncertainty;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.Parts;
import tenthmark.checker.workbook.Cell;
import tenthmark.measurement.formula.CellAddress;

/** A record as a layout proposes it, part by part. */
public final class Draft {

  private final Map<Field, CellAddress> places = new EnumMap<>(Field.class);
  private final Map<Field, String> units = new EnumMap<>(Field.class);
  private final Map<Field, String> said = new EnumMap<>(Field.class);
  private final List<Cell> beside = new ArrayList<>();
  private final List<CellAddress> headings = new ArrayList<>();
  private final int line;
  private Optional<GivenUncertainty> given = Optional.empty();
  private boolean shared;
  private boolean own;

  /**
   * A record.
   *
   * @param line the line of its table
   */
  public Draft(int line) {
    this.line = line;
  }

  /** Puts a part at a cell, if it has none yet. */
  public Draft put(Field field, CellAddress place) {
    places.putIfAbsent(field, place);
    return this;
  }

  /** Takes a part away. */
  public void drop(Field field) {
    places.remove(field);
    units.remove(field);
  }

  /** States the unit of a part, if it has one. */
  public Draft unit(Field field, String unit) {
    if (!unit.isEmpty()) {
      units.putIfAbsent(field, unit);
    }
    return this;
  }

  /** States the text of a part that has no cell of its own. */
  public Draft say(Field field, String text) {
    if (!text.isBlank()) {
      said.putIfAbsent(field, text.strip());
    }
    return this;
  }

  /** Says the name and the unit that a label of its own states, whatever the heading does. */
  Draft relabel(String name, String unit) {
    said.put(Field.QUANTITY, name);
    if (!unit.isEmpty()) {
      units.put(Field.VALUE, unit);
    }
    return this;
  }

  /** States that the uncertainty is a part of the value, whatever its heading says. */
  Draft relative(String part) {
    units.put(Field.UNCERTAINTY, part);
    return this;
  }

  /** The cells of its row or column. */
  public Draft beside(Iterable<TypedCell> cells) {
    cells.forEach(cell -> beside.add(cell.cell()));
    return this;
  }

  /** The cells of its row or column. */
  public List<Cell> cellsBeside() {
    return beside;
  }

  /** Notes that its line holds other records as well, whose cells say nothing of this one. */
  public Draft own() {
    own = true;
    return this;
  }

  /** A heading or label that names the record or one of its parts. */
  public Draft heading(CellAddress heading) {
    headings.add(heading);
    return this;
  }

  /** One uncertainty for this record and others. */
  public Draft given(GivenUncertainty uncertainty) {
    given = Optional.of(uncertainty);
    return this;
  }

  /** An uncertainty whose cell serves others too. */
  public Draft sharing(CellAddress uncertainty, String unit) {
    put(Field.UNCERTAINTY, uncertainty);
    unit(Field.UNCERTAINTY, unit);
    shared = true;
    return this;
  }

  /** Whether its uncertainty serves others too. */
  public boolean isSharing() {
    return shared;
  }

  /** The line of its table. */
  public int line() {
    return line;
  }

  /** Where a part stands. */
  public Optional<CellAddress> place(Field field) {
    return Optional.ofNullable(places.get(field));
  }

  /** The cells of all parts. */
  public Map<Field, CellAddress> places() {
    return places;
  }

  /** The unit that a heading states for a part, or empty. */
  public String unit(Field field) {
    return units.getOrDefault(field, "");
  }

  /** The text of a part that has no cell, or empty. */
  public String said(Field field) {
    return said.getOrDefault(field, "");
  }

  /** The headings that name it. */
  public List<CellAddress> headings() {
    return headings;
  }

  /** Whether it has an uncertainty, or a place for one, or its contributions. */
  public boolean hasUncertainty() {
    return given.isPresent()
        || places.containsKey(Field.UNCERTAINTY)
        || Field.CONTRIBUTIONS.stream().anyMatch(places::containsKey);
  }

  /**
   * Its parts.
   *
   * @param unitTold whether a text on the sheet tells the units of all values
   */
  public Parts parts(boolean unitTold) {
    List<Cell> cells =
        own
            ? beside.stream().filter(cell -> places.containsValue(cell.address())).toList()
            : beside;
    return new Parts(places, units, said, given, unitTold, cells);
  }
}
