package tenthmark.samples.corpus;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One record as its drawer knows it. A cell is an address on the sheet of the value, or begins with
 * the name of another sheet ({@code Results!B4}).
 *
 * @param sheet the sheet of the value
 * @param value the cell of the value, or of the text that holds it
 * @param quantity what a person calls it
 * @param unit as a person understands it, empty for none
 * @param number the value in that unit, to the places written; where the cell is a formula, if the
 *     drawer states it
 * @param uncertainty its cell, or a {@link BigDecimal} where it has none of its own
 * @param contributions cells by kind
 * @param parameters cells of divisions, percentages, reaction times
 * @param rationale the cell where the reason stands, {@code comment B5} or {@code box}
 * @param kind how the value came about
 */
record Stated(
    String sheet,
    String value,
    String quantity,
    String unit,
    Optional<BigDecimal> number,
    Optional<Object> uncertainty,
    Map<String, String> contributions,
    List<String> parameters,
    Optional<String> rationale,
    Kind kind) {}
