package tenthmark.samples;

import java.util.List;

/**
 * A mistake put on purpose into the faulty copy of the first lab table.
 *
 * @param mistake what a student did, in words
 * @param cell where it is, on the records sheet
 * @param content what stands there instead
 * @param rule the checker rule that finds it
 */
record PlantedFault(String mistake, String cell, Object content, String rule) {

  static List<PlantedFault> all() {
    return List.of();
  }
}
