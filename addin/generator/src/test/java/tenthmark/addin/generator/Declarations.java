package tenthmark.addin.generator;

import java.util.List;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Example;
import tenthmark.measurement.catalogue.Family;
import tenthmark.measurement.catalogue.FunctionRole;
import tenthmark.measurement.catalogue.Kinds;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.catalogue.ResultKind;

/** Declarations that no catalogue would hold, to try the generator on. */
final class Declarations {

  private Declarations() {}

  static Declaration with(String name, ResultKind result, Parameter<?>... parameters) {
    return new Declaration(
        name,
        Family.RESULTS,
        FunctionRole.OTHER,
        result,
        "Says a < b && \"c\" > 'd' ]]> µ.",
        "When <b>bold</b> & \"loud\" is wanted.",
        List.of(parameters),
        "u <= |v| & <script>alert(1)</script>",
        "\"Tables & <figures>\"",
        Example.of(
            "=LAB_" + name + "(A1;\"<b>\")", List.of(List.of("<td>", 0.1), List.of("")), "1 & 2"));
  }

  static Declaration everyType(ResultKind result) {
    return with(
        "EVERY",
        result,
        Parameter.required("formula", "Cell & formula.", Kinds.reference()),
        Parameter.required("value", "A number < 2.", Kinds.number()),
        Parameter.repeated("more", "Others.", Kinds.number()));
  }
}
