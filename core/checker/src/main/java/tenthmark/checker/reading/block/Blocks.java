package tenthmark.checker.reading.block;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tenthmark.measurement.formula.CellRange;

/**
 * Parts a sheet into blocks: cells lie together if they touch, be it with one blank row between
 * them. A blank column parts tables that stand side by side.
 */
public final class Blocks {

  private static final int ROWS = 2;
  private static final int COLUMNS = 1;

  private final TypedSheet sheet;
  private final List<TypedCell> cells;
  private final Map<Long, Integer> indexes = new HashMap<>();
  private final int[] parent;

  private Blocks(TypedSheet sheet) {
    this.sheet = sheet;
    this.cells = sheet.cells();
    this.parent = new int[cells.size()];
  }

  /** The blocks of a sheet in the order of their first cells. */
  public static List<Block> of(TypedSheet sheet) {
    return new Blocks(sheet).parted();
  }

  private List<Block> parted() {
    for (int i = 0; i < cells.size(); i++) {
      parent[i] = i;
      occupy(i);
    }
    Map<Integer, List<TypedCell>> parts = new LinkedHashMap<>();
    for (int i = 0; i < cells.size(); i++) {
      parts.computeIfAbsent(root(i), root -> new ArrayList<>()).add(cells.get(i));
    }
    return parts.values().stream().map(this::block).toList();
  }

  /** Joins a cell, with all that is merged into it, to those before it that it touches. */
  private void occupy(int index) {
    TypedCell cell = cells.get(index);
    CellRange area =
        sheet
            .mergedFrom(cell.address())
            .filter(Blocks::isSmall)
            .orElse(CellRange.of(cell.address()));
    for (int row = area.top(); row <= area.bottom(); row++) {
      for (int column = area.left(); column <= area.right(); column++) {
        touch(index, column, row);
        indexes.put(key(column, row), index);
      }
    }
  }

  private static boolean isSmall(CellRange area) {
    return (long) area.height() * area.width() < 200;
  }

  private void touch(int index, int column, int row) {
    for (int above = row - ROWS; above <= row + ROWS; above++) {
      for (int beside = column - COLUMNS; beside <= column + COLUMNS; beside++) {
        Integer other = indexes.get(key(beside, above));
        if (other != null) {
          parent[root(other)] = root(index);
        }
      }
    }
  }

  private static long key(int column, int row) {
    return ((long) row << 32) | (column & 0xffffffffL);
  }

  private int root(int index) {
    int root = index;
    while (parent[root] != root) {
      parent[root] = parent[parent[root]];
      root = parent[root];
    }
    return root;
  }

  private Block block(List<TypedCell> part) {
    int left = Integer.MAX_VALUE;
    int top = Integer.MAX_VALUE;
    int right = 0;
    int bottom = 0;
    for (TypedCell cell : part) {
      left = Math.min(left, cell.address().column());
      right = Math.max(right, cell.address().column());
      top = Math.min(top, cell.address().row());
      bottom = Math.max(bottom, cell.address().row());
    }
    return new Block(sheet, new CellRange(sheet.name(), left, top, right, bottom), part);
  }
}
