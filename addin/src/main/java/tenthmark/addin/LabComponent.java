package tenthmark.addin;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.lang.XServiceInfo;
import com.sun.star.lib.uno.helper.WeakBase;
import com.sun.star.uno.XComponentContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import tenthmark.addin.notice.Offer;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.recording.Convention;
import tenthmark.measurement.wording.Sentences;

/**
 * What the generated methods share: they hand over a function's name and its arguments as Calc
 * passes them, and get the result as Calc takes it.
 */
public abstract class LabComponent extends WeakBase implements XServiceInfo {

  static final String SERVICE = "tenthmark.Lab";

  private final Catalogue catalogue = Catalogue.load();
  private final OpenDocuments documents = new OpenDocuments();
  private final Sentences sentences;

  LabComponent(XComponentContext context) {
    this.sentences = OfficeLocale.of(context).sentences();
    Offer.begin(context);
  }

  /** A number. */
  protected final double number(String name, Object[] arguments) throws IllegalArgumentException {
    return number(name, LabComponent::bench, arguments);
  }

  /** A number, by the convention of a document. */
  protected final double number(String name, Supplier<Convention> convention, Object[] arguments)
      throws IllegalArgumentException {
    Value result = call(name, convention, arguments);
    if (result instanceof Value.Numeric numeric) {
      return numeric.number();
    }
    throw new IllegalStateException(name + " gave no number: " + result);
  }

  /** A text. */
  protected final String text(String name, Object[] arguments) throws IllegalArgumentException {
    return text(name, LabComponent::bench, arguments);
  }

  /** A text, by the convention of a document. */
  protected final String text(String name, Supplier<Convention> convention, Object[] arguments)
      throws IllegalArgumentException {
    Value result = call(name, convention, arguments);
    return (String) CellValues.toCalc(result);
  }

  /** A number or a text. */
  protected final Object either(String name, Object[] arguments) throws IllegalArgumentException {
    return either(name, LabComponent::bench, arguments);
  }

  /** A number or a text, by the convention of a document. */
  protected final Object either(String name, Supplier<Convention> convention, Object[] arguments)
      throws IllegalArgumentException {
    return CellValues.toCalc(call(name, convention, arguments));
  }

  /** Several rows of numbers and texts. */
  protected final Object[][] table(String name, Object[] arguments)
      throws IllegalArgumentException {
    return table(name, LabComponent::bench, arguments);
  }

  /** Several rows of numbers and texts, by the convention of a document. */
  protected final Object[][] table(String name, Supplier<Convention> convention, Object[] arguments)
      throws IllegalArgumentException {
    Value result = call(name, convention, arguments);
    if (result instanceof Value.Table table) {
      return table.rows().stream()
          .map(row -> row.stream().map(CellValues::toCalc).toArray())
          .toArray(Object[][]::new);
    }
    return new Object[][] {{CellValues.toCalc(result)}};
  }

  /** The arguments of a function whose last parameter takes any number of values. */
  protected static Object[] flat(Object[] arguments) {
    int last = arguments.length - 1;
    return Stream.concat(
            Arrays.stream(arguments, 0, last), Arrays.stream((Object[]) arguments[last]))
        .toArray();
  }

  /** The cells of a document during one call. */
  protected final OfficeCells cells(XPropertySet document) {
    return new OfficeCells(documents.of(document));
  }

  /** Of a function that no convention concerns. */
  private static Convention bench() {
    return Convention.BENCH;
  }

  /** The convention of a document, looked up only where a function asks for it. */
  protected final Supplier<Convention> convention(XPropertySet document) {
    return () -> documents.of(document).convention().get();
  }

  private Value call(String name, Supplier<Convention> convention, Object[] arguments)
      throws IllegalArgumentException {
    List<Value> values = new ArrayList<>(arguments.length);
    for (Object argument : arguments) {
      values.add(CellValues.fromCalc(argument));
    }
    Value result = catalogue.find(name).orElseThrow().call(values, sentences, convention);
    if (result instanceof Value.Fault fault) {
      throw new IllegalArgumentException(fault.reason(), this, (short) 0);
    }
    return result;
  }

  @Override
  public final String getImplementationName() {
    return Lab.class.getName();
  }

  @Override
  public final boolean supportsService(String name) {
    return SERVICE.equals(name);
  }

  @Override
  public final String[] getSupportedServiceNames() {
    return new String[] {SERVICE};
  }
}
