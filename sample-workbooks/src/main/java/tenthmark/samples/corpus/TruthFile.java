package tenthmark.samples.corpus;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.snakeyaml.engine.v2.api.Dump;
import org.snakeyaml.engine.v2.api.DumpSettings;
import org.snakeyaml.engine.v2.common.FlowStyle;

/** The truth about a workbook as YAML: what its drawer stated, and nothing computed. */
final class TruthFile {

  private static final DumpSettings SETTINGS =
      DumpSettings.builder().setDefaultFlowStyle(FlowStyle.AUTO).setWidth(400).build();

  private TruthFile() {}

  static String text(Drawing drawing) {
    Map<String, Object> truth = new LinkedHashMap<>();
    truth.put("layout", drawing.layout());
    truth.put("topic", drawing.topic());
    truth.put("language", drawing.language().code());
    truth.put("written-by", drawing.writer().program());
    truth.put("combine", word(drawing.combine()));
    truth.put("records", drawing.records().stream().map(TruthFile::fields).toList());
    truth.put("others", drawing.others().stream().map(TruthFile::fields).toList());
    return new Dump(SETTINGS).dumpToString(truth);
  }

  private static Map<String, Object> fields(Stated record) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("sheet", record.sheet());
    fields.put("value", record.value());
    fields.put("quantity", record.quantity());
    fields.put("unit", record.unit());
    record
        .number()
        .ifPresent(
            number ->
                fields.put("number", number.scale() > 0 ? number : number.toBigIntegerExact()));
    record.uncertainty().ifPresent(cell -> fields.put("uncertainty", cell));
    if (!record.contributions().isEmpty()) {
      fields.put("contributions", record.contributions());
    }
    if (!record.parameters().isEmpty()) {
      fields.put("parameters", record.parameters());
    }
    record.rationale().ifPresent(cell -> fields.put("rationale", cell));
    fields.put("kind", word(record.kind()));
    return fields;
  }

  private static Map<String, Object> fields(Other other) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("sheet", other.sheet());
    fields.put("range", other.range());
    fields.put("is", word(other.is()));
    return fields;
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }
}
