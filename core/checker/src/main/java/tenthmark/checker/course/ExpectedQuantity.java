package tenthmark.checker.course;

import java.util.List;
import java.util.Optional;
import tenthmark.checker.unit.UnitText;

/**
 * A quantity that the course expects in a workbook.
 *
 * @param name what the course calls it
 * @param symbol if it has one
 * @param also what students call it besides
 * @param unit in which the accepted value is given
 * @param accepted the accepted value, if there is one
 * @param origin where its value has to come from
 * @param required whether a workbook without it lacks something
 * @param physical whether the object itself contributes to its uncertainty
 * @param apparatus the name of the instrument that it is measured with, if it is given
 */
public record ExpectedQuantity(
    String name,
    Optional<String> symbol,
    List<String> also,
    UnitText.Known unit,
    Optional<AcceptedValue> accepted,
    Origin origin,
    boolean required,
    boolean physical,
    Optional<String> apparatus) {

  /** Copies the other names. */
  public ExpectedQuantity {
    also = List.copyOf(also);
  }

  /** Whether a text is one of its names, but for case, punctuation and what is in brackets. */
  public boolean isNamed(String text) {
    return Names.of(name, also).include(text);
  }
}
