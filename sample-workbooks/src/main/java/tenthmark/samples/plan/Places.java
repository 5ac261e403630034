package tenthmark.samples.plan;

import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Where the named cells of a workbook are, so that formulas need no addresses. */
public final class Places {

  private static final Pattern NAMED = Pattern.compile("\\{([^}]+)}");

  private record Place(String sheet, String address) {}

  private final Map<String, Place> places = new HashMap<>();
  private String sheet = "";

  /** Names that follow are of cells on this sheet. */
  void on(String name) {
    sheet = name;
  }

  void put(String key, String address) {
    if (places.put(key, new Place(sheet, address)) != null) {
      throw new IllegalArgumentException("two cells are named " + key);
    }
  }

  /** The address of a named cell on its sheet. */
  public String address(String key) {
    return place(key).address();
  }

  /** The sheet of a named cell. */
  public String sheet(String key) {
    return place(key).sheet();
  }

  /**
   * A formula with addresses instead of names, as it is written on a sheet in a row. A name that
   * begins with a dollar sign gives an address that stays the same when the formula is copied.
   */
  String resolved(String formula, String ownSheet, String row) {
    return NAMED
        .matcher(formula)
        .replaceAll(
            name -> {
              boolean fixed = name.group(1).startsWith("$");
              String key = name.group(1).substring(fixed ? 1 : 0);
              String own = row + "." + key;
              Place place = places.containsKey(own) ? place(own) : place(key);
              String elsewhere = place.sheet().equals(ownSheet) ? "" : place.sheet() + "!";
              return Matcher.quoteReplacement(
                  elsewhere + (fixed ? fixed(place.address()) : place.address()));
            })
        .replaceAll(":\\w+!", ":");
  }

  /** An address that stays the same when a formula is copied, as in {@code $B$4}. */
  public static String fixed(String address) {
    return address.replaceAll("([A-Z]+)([0-9]+)", "\\$$1\\$$2");
  }

  private Place place(String key) {
    Place place = places.get(key);
    if (place == null) {
      throw new IllegalArgumentException("no cell is named " + key);
    }
    return place;
  }
}
