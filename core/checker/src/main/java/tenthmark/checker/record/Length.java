package tenthmark.checker.record;

import java.util.regex.Pattern;
import tenthmark.checker.unit.MeasurementUnit;
import tenthmark.checker.unit.UnitReader;

/** Lengths between two ends, each of which is read. */
public final class Length {

  private static final MeasurementUnit METRE = UnitReader.STANDARD.read("m").known().orElseThrow();

  /** Readings of one position although the unit is one of length. */
  private static final Pattern ONE_POSITION =
      Pattern.compile(
          "\\b(?:position|height"
              + " above|level|displacement|calipers?|vernier|micrometer|dial|stellung|höhe"
              + " über|\\p{L}*pegel|auslenkung|messschieber|nonius|mikrometer|messuhr|hauteur"
              + " au-dessus|niveau|déplacement|pied à"
              + " coulisse|palmer|micromètre|comparateur|posición|altura"
              + " sobre|nivel|desplazamiento|calibre|pie de rey|nonio|micrómetro|comparador)\\b",
          Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE | Pattern.UNICODE_CHARACTER_CLASS);

  private Length() {}

  /** Whether a record is of a length between two ends. */
  public static boolean isBetweenEnds(MeasurementRecord measurement) {
    return RecordUnits.of(measurement, Field.VALUE).flatMap(unit -> unit.to(METRE)).isPresent()
        && !ONE_POSITION.matcher(measurement.wording()).find();
  }
}
