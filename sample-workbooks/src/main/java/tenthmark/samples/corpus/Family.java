package tenthmark.samples.corpus;

import java.util.List;
import java.util.ServiceLoader;

/**
 * Workbooks of one family of layouts, as people draw them by hand. A family is one class that
 * carries {@code @AutoService(Family.class)}; the last part of its package names the set that it
 * belongs to.
 */
public interface Family {

  /** The workbooks, each with its truth stated beside the drawing. */
  List<Drawing> drawings();

  /** The families of a set, in the order of their names. */
  static List<Family> ofSet(String set) {
    return ServiceLoader.load(Family.class).stream()
        .filter(family -> family.type().getPackageName().endsWith("." + set))
        .sorted((one, other) -> one.type().getName().compareTo(other.type().getName()))
        .map(ServiceLoader.Provider::get)
        .toList();
  }
}
