package tenthmark.addin.checking;

/**
 * One finding, as the checker's JSON holds it.
 *
 * @param rule id of the rule
 * @param severity error, warning or note
 * @param sheet name of the sheet
 * @param cell the cell on the sheet, such as B4
 * @param found what stands there
 * @param expected what should stand there
 * @param fix how to put it right
 * @param points what it costs, by the course's profile
 */
public record Finding(
    String rule,
    String severity,
    String sheet,
    String cell,
    String found,
    String expected,
    String fix,
    double points) {}
