package tenthmark.samples.mistakes;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.formula.CellAddress;

/** Mistakes with units. */
final class UnitMistakes {

  private static final String FAMILY = "units";
  private static final Set<String> UNIT = Set.of("unit-unlike-formula");
  private static final Pattern POWER_OF_TEN = Pattern.compile("[*/]10+(\\^\\d)?(?![\\d.])");
  private static final Pattern QUOTIENT =
      Pattern.compile("(?<![A-Z!'$])([A-Z]\\d+)/([A-Z]\\d+)(?![\\d^(])");
  private static final Pattern SQUARE = Pattern.compile("([A-Z]\\d+)\\^2");
  private static final Pattern ROOT = Pattern.compile("SQRT\\(");
  private static final Pattern FIRST = Pattern.compile("(?<![A-Z!'$:.\\d])[A-Z]\\d+(?![\\d(:^])");
  private static final Pattern WHOLE =
      Pattern.compile("^.*?(?<![A-Z!'$:.\\d])([A-Z]\\d+)(?![\\d(:]).*$");
  private static final Pattern RADIANS = Pattern.compile("RADIANS\\(([^()]+)\\)");

  private static final Map<String, String> OTHERS =
      Map.of(
          "mm", "cm", "cm", "mm", "m", "cm", "g", "kg", "kg", "g", "s", "ms", "g/cm³", "kg/m³",
          "m/s", "cm/s", "cm³", "mm³");

  private UnitMistakes() {}

  static List<Mistake> all() {
    return List.of(
        edit("conversion left out", POWER_OF_TEN, found -> ""),
        edit(
            "divided the wrong way round",
            QUOTIENT,
            found -> found.group(2) + "/" + found.group(1)),
        edit("multiplied for divided", QUOTIENT, found -> found.group(1) + "*" + found.group(2)),
        edit("square left out", SQUARE, found -> found.group(1)),
        edit("sine of degrees", RADIANS, found -> found.group(1)),
        edit("cube for a square", SQUARE, found -> found.group(1) + "^3"),
        edit("root forgotten", ROOT, found -> "("),
        edit("divided once too often", FIRST, found -> found.group() + "/" + found.group()),
        edit("input added to the result", WHOLE, found -> found.group() + "+" + found.group(1)),
        edit("converted once too often", WHOLE, found -> "(" + found.group() + ")*1000"),
        new Mistake(
            "unit left out",
            FAMILY,
            Set.of("unit-missing"),
            subject ->
                unitCells(subject)
                    .map(unit -> Planted.blank(unit.cell()).near(inRow(subject, unit.cell())))),
        new Mistake(
            "unit of another size at a value that is used",
            FAMILY,
            UNIT,
            subject ->
                unitCells(subject)
                    .filter(unit -> unit.record().is("measured"))
                    .filter(unit -> isUsed(subject, unit.record().value()))
                    .filter(unit -> OTHERS.containsKey(unit.record().unit()))
                    .map(
                        unit ->
                            Planted.at(
                                    unit.cell(), new Content.Text(OTHERS.get(unit.record().unit())))
                                .near(inRow(subject, unit.cell()))
                                .near(users(subject, unit.record())))),
        new Mistake(
            "unit of another size at a calculated value",
            FAMILY,
            UNIT,
            subject ->
                unitCells(subject)
                    .filter(unit -> unit.record().is("calculated"))
                    .filter(unit -> OTHERS.containsKey(unit.record().unit()))
                    .map(
                        unit ->
                            Planted.at(
                                    unit.cell(), new Content.Text(OTHERS.get(unit.record().unit())))
                                .near(inRow(subject, unit.cell())))));
  }

  private record UnitCell(Stated record, CellAddress cell) {}

  private static Mistake edit(String name, Pattern pattern, Function<Matcher, String> by) {
    return new Mistake(
        name,
        FAMILY,
        UNIT,
        subject ->
            subject
                .records("calculated")
                .filter(record -> !record.unit().isEmpty())
                .flatMap(
                    record ->
                        FormulaMistakes.formula(
                            subject,
                            record,
                            record.value(),
                            text -> {
                              Matcher found = pattern.matcher(text);
                              return found.find()
                                  ? FormulaMistakes.replaced(text, found, by.apply(found))
                                  : text;
                            })));
  }

  /** The cells that hold nothing but the unit, in the row of a value. */
  private static Stream<UnitCell> unitCells(Subject subject) {
    return subject
        .records()
        .filter(record -> !record.unit().isEmpty())
        .flatMap(
            record ->
                Stream.iterate(record.value().column() + 1, column -> column + 1)
                    .limit(26)
                    .map(
                        column ->
                            new CellAddress(record.value().sheet(), column, record.value().row()))
                    .filter(
                        cell ->
                            subject
                                .text(cell)
                                .map(String::strip)
                                .filter(record.unit()::equals)
                                .isPresent())
                    .limit(1)
                    .map(cell -> new UnitCell(record, cell)));
  }

  /** The records that have the unit in common. */
  private static Set<CellAddress> inRow(Subject subject, CellAddress unit) {
    return subject
        .records()
        .filter(record -> record.value().row() == unit.row())
        .filter(record -> record.value().sheet().equals(unit.sheet()))
        .flatMap(record -> record.places().stream())
        .collect(Collectors.toSet());
  }

  private static boolean isUsed(Subject subject, CellAddress value) {
    return subject
        .records("calculated")
        .anyMatch(record -> subject.precedents(record.value()).contains(value));
  }

  private static Set<CellAddress> users(Subject subject, Stated used) {
    return subject
        .records("calculated")
        .filter(record -> subject.precedents(record.value()).contains(used.value()))
        .flatMap(record -> record.places().stream())
        .collect(Collectors.toSet());
  }
}
