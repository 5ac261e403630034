package tenthmark.measurement.formula;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** The functions that the engine can carry an uncertainty through. */
final class Functions {

  private static final List<String> PREFIXES =
      List.of("_XLFN.", "COM.MICROSOFT.", "COM.SUN.STAR.SHEET.ADDIN.ANALYSIS.GET");

  private static final Map<String, String> OTHER_NAMES =
      Map.ofEntries(
          Map.entry("STDEV.S", "STDEV"),
          Map.entry("STDEV.P", "STDEVP"),
          Map.entry("VAR.S", "VAR"),
          Map.entry("VAR.P", "VARP"),
          Map.entry("PERCENTILE.INC", "PERCENTILE"),
          Map.entry("QUARTILE.INC", "QUARTILE"),
          Map.entry("COVARIANCE.P", "COVAR"),
          Map.entry("PEARSON", "CORREL"),
          Map.entry("FORECAST.LINEAR", "FORECAST"),
          Map.entry("ORG.OPENOFFICE.CONVERT", "CONVERT"),
          Map.entry("CONVERT_OOO", "CONVERT"));

  private final Map<String, Function> byName = new HashMap<>();

  Functions() {
    Stream.of(Unary.values()).map(Elementwise.OfOne::new).forEach(this::put);
    Stream.of(Binary.POWER, Binary.ATAN2, Binary.MOD)
        .map(Elementwise.OfTwo::new)
        .forEach(this::put);
    put(new Elementwise.OfOneOrTwo(Unary.LOG10, Binary.LOG));
    put(new Elementwise.OfOneOrTwo(Unary.ROUND, Binary.ROUND));
    put(new Elementwise.OfOneOrTwo(Unary.ROUNDUP, Binary.ROUNDUP));
    put(new Elementwise.OfOneOrTwo(Unary.ROUNDDOWN, Binary.ROUNDDOWN));
    put(new Elementwise.OfOneOrTwo(Unary.TRUNC, Binary.TRUNC));
    Stream.of(Statistic.values()).forEach(this::put);
    Stream.of(Count.values()).forEach(this::put);
    Stream.of(Pairing.values()).forEach(this::put);
    Stream.of(CellByCell.values()).forEach(this::put);
    Stream.of(Logic.values()).forEach(this::put);
    Stream.of(Errors.values()).forEach(this::put);
    Stream.of(Lookup.values()).forEach(this::put);
    Stream.of(Ranking.values()).forEach(this::put);
    Stream.of(Conditional.values()).forEach(this::put);
    put(new Forecast());
    put(new Conversion());
  }

  private void put(Function function) {
    byName.put(function.name(), function);
  }

  /** The function with this name, in any letter case and as any file format writes it. */
  Optional<Function> find(String name) {
    String plain = plain(name);
    return Optional.ofNullable(byName.get(OTHER_NAMES.getOrDefault(plain, plain)));
  }

  Set<String> names() {
    return Set.copyOf(byName.keySet());
  }

  /** A function's name in upper case, without the prefix that a file format puts before it. */
  static String plain(String name) {
    String upper = name.toUpperCase(Locale.ROOT);
    return PREFIXES.stream()
        .filter(upper::startsWith)
        .findFirst()
        .map(prefix -> upper.substring(prefix.length()))
        .orElse(upper);
  }
}
