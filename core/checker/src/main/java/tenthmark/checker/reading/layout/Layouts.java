package tenthmark.checker.reading.layout;

import java.util.List;
import tenthmark.checker.reading.TableGuide;
import tenthmark.checker.reading.block.Direction;

/** All layouts that the checker knows. */
public final class Layouts {

  private Layouts() {}

  /** The layouts, with the tables that a course says how to read. */
  public static List<Layout> with(List<TableGuide> guides) {
    return List.of(
        new GuidedTables(guides),
        new HeadedTables(Direction.ROWS),
        new HeadedTables(Direction.COLUMNS),
        new Forms(),
        new LineMatrices(),
        new NamedCells(),
        new LabResults(),
        new StatedTexts(),
        new FormulaRecords());
  }
}
