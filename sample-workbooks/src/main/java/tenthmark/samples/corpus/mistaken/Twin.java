package tenthmark.samples.corpus.mistaken;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.snakeyaml.engine.v2.api.Dump;
import org.snakeyaml.engine.v2.api.DumpSettings;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;

/** A correct workbook's twin, with mistakes of a student put in. */
final class Twin {

  private static final DumpSettings SETTINGS =
      DumpSettings.builder().setWidth(400).setMultiLineFlow(false).build();

  private final String name;
  private final List<Mistake> mistakes = new ArrayList<>();
  private String sheet = "";

  /** A twin of the workbook of that name. */
  Twin(String name) {
    this.name = name;
  }

  /** What follows is on this sheet. */
  Twin on(String sheet) {
    this.sheet = sheet;
    return this;
  }

  /** One more mistake. */
  Twin mistake(String cell, String kind, String written, String sentence) {
    mistakes.add(new Mistake(sheet, cell, kind, written, sentence));
    return this;
  }

  String name() {
    return name;
  }

  List<Mistake> mistakes() {
    return mistakes;
  }

  /** The workbook as it was before the mistakes. */
  Drawing correct() {
    return Stream.of("fresh", "last")
        .flatMap(set -> Family.ofSet(set).stream())
        .flatMap(family -> family.drawings().stream())
        .filter(drawing -> drawing.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("nothing is drawn as " + name));
  }

  Drawing mistaken() {
    Drawing drawing = correct();
    mistakes.forEach(mistake -> mistake.make(drawing));
    return drawing;
  }

  /** The mistakes as YAML. */
  String text() {
    return new Dump(SETTINGS).dumpToString(mistakes.stream().map(Twin::fields).toList());
  }

  private static Map<String, Object> fields(Mistake mistake) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("sheet", mistake.sheet());
    fields.put("cell", mistake.cell());
    fields.put("kind", mistake.kind());
    fields.put("sentence", mistake.sentence());
    return fields;
  }
}
