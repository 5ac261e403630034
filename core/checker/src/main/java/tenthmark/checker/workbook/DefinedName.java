package tenthmark.checker.workbook;

import java.util.Optional;

/**
 * A name that the workbook defines.
 *
 * @param name as it is spelt; letter case does not matter
 * @param sheet the sheet on which it holds, or empty for all sheets
 * @param formula what it stands for, in the notation of {@link Content.Formula#text()}
 */
public record DefinedName(String name, Optional<String> sheet, String formula) {}
