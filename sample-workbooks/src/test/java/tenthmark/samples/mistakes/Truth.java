package tenthmark.samples.mistakes;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import tenthmark.measurement.formula.CellAddress;

/** What whoever drew a workbook of the corpus says is in it. */
record Truth(String layout, List<Stated> records, Map<CellAddress, String> others) {

  private static final String CELL = "(?:.+!)?[A-Z]{1,2}\\d+";

  @SuppressWarnings("unchecked")
  static Truth read(Path file) {
    Map<String, Object> yaml;
    try {
      yaml =
          (Map<String, Object>)
              new Load(LoadSettings.builder().build()).loadFromString(Files.readString(file));
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
    List<Stated> records =
        ((List<Map<String, Object>>) yaml.getOrDefault("records", List.of()))
            .stream().map(Truth::record).toList();
    Map<CellAddress, String> others = new LinkedHashMap<>();
    for (Map<String, Object> other :
        (List<Map<String, Object>>) yaml.getOrDefault("others", List.of())) {
      cells((String) other.get("sheet"), String.valueOf(other.get("range")))
          .forEach(cell -> others.put(cell, (String) other.get("is")));
    }
    return new Truth((String) yaml.get("layout"), records, others);
  }

  @SuppressWarnings("unchecked")
  private static Stated record(Map<String, Object> yaml) {
    String sheet = (String) yaml.get("sheet");
    Map<String, CellAddress> contributions = new LinkedHashMap<>();
    ((Map<String, Object>) yaml.getOrDefault("contributions", Map.of()))
        .forEach(
            (kind, cell) ->
                cell(sheet, cell).ifPresent(address -> contributions.put(kind, address)));
    return new Stated(
        (String) yaml.get("kind"),
        String.valueOf(yaml.getOrDefault("unit", "")),
        cell(sheet, yaml.get("value")).orElseThrow(),
        cell(sheet, yaml.get("uncertainty")),
        contributions,
        cell(sheet, yaml.get("rationale")));
  }

  /** The cell that a text names, if it names one. */
  private static Optional<CellAddress> cell(String sheet, Object written) {
    String text = String.valueOf(written);
    return text.matches(CELL) ? Optional.of(address(sheet, text)) : Optional.empty();
  }

  private static CellAddress address(String sheet, String place) {
    int mark = place.indexOf('!');
    String bare = place.substring(mark + 1);
    int column = 0;
    int letters = 0;
    while (Character.isLetter(bare.charAt(letters))) {
      column = column * 26 + bare.charAt(letters++) - 'A' + 1;
    }
    return new CellAddress(
        mark < 0 ? sheet : place.substring(0, mark),
        column - 1,
        Integer.parseInt(bare.substring(letters)) - 1);
  }

  private static List<CellAddress> cells(String sheet, String ranges) {
    List<CellAddress> cells = new ArrayList<>();
    for (String range : ranges.split("\\s*,\\s*", -1)) {
      String[] ends = range.split(":", -1);
      CellAddress first = address(sheet, ends[0]);
      CellAddress last = ends.length > 1 ? address(first.sheet(), ends[1]) : first;
      for (int row = first.row(); row <= last.row(); row++) {
        for (int column = first.column(); column <= last.column(); column++) {
          cells.add(new CellAddress(first.sheet(), column, row));
        }
      }
    }
    return cells;
  }
}
