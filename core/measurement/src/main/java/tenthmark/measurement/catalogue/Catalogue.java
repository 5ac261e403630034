package tenthmark.measurement.catalogue;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.ServiceLoader;

/** All worksheet functions, by family and name. */
public final class Catalogue {

  private static final Comparator<WorksheetFunction> ORDER =
      Comparator.comparing((WorksheetFunction function) -> function.declaration().family())
          .thenComparing(function -> function.declaration().name());

  private static final int MOST_SLIPS = 2;

  private final List<WorksheetFunction> functions;
  private final Map<String, WorksheetFunction> byName = new HashMap<>();

  private Catalogue(List<WorksheetFunction> functions) {
    this.functions = functions;
    for (WorksheetFunction function : functions) {
      byName.put(function.declaration().displayName(), function);
      byName.put(function.declaration().storedName(), function);
    }
  }

  /** Finds every registered function, whatever class loader runs the caller. */
  public static Catalogue load() {
    return new Catalogue(
        ServiceLoader.load(WorksheetFunction.class, Catalogue.class.getClassLoader()).stream()
            .map(ServiceLoader.Provider::get)
            .sorted(ORDER)
            .toList());
  }

  /** The functions in the order of the reference. */
  public List<WorksheetFunction> functions() {
    return functions;
  }

  /** The function with this display or stored name, in any letter case. */
  public Optional<WorksheetFunction> find(String name) {
    return Optional.ofNullable(byName.get(name.toUpperCase(Locale.ROOT)));
  }

  /** The function whose name somebody may have meant who left out its LAB_ or misspelt it. */
  public Optional<WorksheetFunction> resembling(String name) {
    String typed = name.toUpperCase(Locale.ROOT);
    return find("LAB_" + typed)
        .or(
            () ->
                functions.stream()
                    .filter(function -> slips(typed, function) <= MOST_SLIPS)
                    .min(Comparator.comparingInt(function -> slips(typed, function))));
  }

  private static int slips(String typed, WorksheetFunction function) {
    return Spelling.slips(typed, function.declaration().displayName());
  }
}
