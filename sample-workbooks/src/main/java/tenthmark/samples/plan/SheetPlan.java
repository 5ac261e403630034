package tenthmark.samples.plan;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * A sheet and what stands on it.
 *
 * @param name of the sheet
 * @param widths of its columns, in characters
 * @param blocks from top to bottom
 * @param hidden whether a program does not show it
 */
public record SheetPlan(String name, List<Integer> widths, List<Block> blocks, boolean hidden) {

  /** Copies the lists. */
  public SheetPlan {
    widths = List.copyOf(widths);
    blocks = List.copyOf(blocks);
  }

  /** A sheet that is shown. */
  public SheetPlan(String name, List<Integer> widths, List<Block> blocks) {
    this(name, widths, blocks, false);
  }

  /** A sheet whose columns are as wide as its first table's. */
  public static SheetPlan of(String name, Table first, Block... others) {
    return new SheetPlan(
        name,
        first.columns().stream().map(Column::width).toList(),
        Stream.concat(Stream.of(first), Arrays.stream(others)).toList());
  }
}
