package tenthmark.samples;

import java.util.List;

/**
 * A mistake put on purpose into the faulty copy of the first lab table.
 *
 * @param mistake what a student did, in words
 * @param cell where it is, on the records sheet
 * @param content what stands there instead; empty for nothing
 */
record PlantedFault(String mistake, String cell, Object content) {

  static List<PlantedFault> all() {
    return List.of(
        new PlantedFault("the crank arm was read at one end only", "G5", 1),
        new PlantedFault("the total of the tyre pressure was forgotten", "M7", ""),
        new PlantedFault("the total of the foam grip is smaller than its parts", "M9", 1.5),
        new PlantedFault("a tenth was judged on the digital balance", "H11", 0.1),
        new PlantedFault("the reading of the spoke is not a tenth for each end", "H13", 0.005),
        new PlantedFault("the spoke has no rationale", "B14", ""),
        new PlantedFault("the reaction time was left out", "K15", ""),
        new PlantedFault("the mass has no unit", "D11", ""),
        new PlantedFault("the mean time is not rounded", "N17", "41.18333 \u00b1 0.4 s"));
  }
}
