package tenthmark.measurement.functions;

import tenthmark.measurement.catalogue.Argument;
import tenthmark.measurement.catalogue.Kind;
import tenthmark.measurement.catalogue.Kinds;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.recording.Combine;
import tenthmark.measurement.recording.Convention;
import tenthmark.measurement.result.RecordText;
import tenthmark.measurement.wording.Message;

/** Parameters that mean the same in several families of worksheet functions. */
final class CommonParameters {

  static final Parameter<Combine> COMBINE =
      Parameter.byConvention(
          "combine",
          "Straight (sum) or quadrature (root of the sum of squares, for independent ones). Left"
              + " out: the workbook's, else straight.",
          Kinds.choice(Combine.class),
          Convention::combine);

  static final Parameter<String> UNIT =
      Parameter.optional(
          "unit",
          "Unit to write behind the numbers, such as mm. None if left out.",
          new Kind<>(Kind.Form.TEXT, Message.of("allowed.unit"), CommonParameters::unitIn),
          "");

  private static final Kind<String> TEXT = Kinds.text();

  private CommonParameters() {}

  private static String unitIn(Argument argument) {
    String unit = TEXT.read(argument).strip();
    if (!RecordText.UNIT.matcher(unit).matches()) {
      throw argument.refused();
    }
    return unit;
  }
}
