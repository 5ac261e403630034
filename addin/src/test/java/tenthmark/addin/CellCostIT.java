package tenthmark.addin;

import static com.sun.star.uno.UnoRuntime.queryInterface;
import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.sheet.FillDirection;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellSeries;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import tenthmark.addin.bare.BareExtension;
import tenthmark.addin.office.Launcher;
import tenthmark.addin.office.Office;
import tenthmark.addin.office.Profile;
import tenthmark.addin.office.UserFolder;
import tenthmark.addin.office.Workbook;
import tenthmark.addin.office.Workbook.Format;

/**
 * What a cell costs: the time in which a headless Calc, just started, loads a workbook and computes
 * its formulas anew, for a native formula, a function in Java that does next to nothing, and ours,
 * side by side. A measurement for a quiet machine, so it runs only when {@code -Dtenthmark.costs=}
 * says how often each is taken; the shortest counts.
 */
@EnabledIfSystemProperty(named = "tenthmark.costs", matches = "\\d+")
class CellCostIT {

  private static final int TIMES = Integer.getInteger("tenthmark.costs", 0);
  private static final List<Integer> SIZES = List.of(1, 20_000, 100_000);

  private static final String NATIVE_OF_FIVE = "=4*PI()^2*A1*B1/C1^2+D1*E1";

  /** What is measured, in column G of each row. */
  private enum Formula {
    NATIVE("=A1*0.5", false),
    BARE("=TENTHMARK.BARE.HALF(A1)", false),
    LAB_READING("=TENTHMARK.LAB.READING(A1;\"fine\";2)", false),
    LAB_RESULT("=TENTHMARK.LAB.RESULT(A1;0.5;\"mm\")", false),
    NATIVE_AGAIN(NATIVE_OF_FIVE, true),
    LAB_CARRY("=TENTHMARK.LAB.CARRY(F1;A1:E1;$I$1:$M$1)", true);

    private final String text;

    /** Whether the sheet has five inputs and, in column F, a native formula of them. */
    private final boolean ofFive;

    Formula(String text, boolean ofFive) {
      this.text = text;
      this.ofFive = ofFive;
    }

    private Formula besideIt() {
      return ofFive ? NATIVE_AGAIN : NATIVE;
    }

    private boolean isBesideIt() {
      return this == besideIt();
    }
  }

  private record Sheet(Formula formula, int rows) {}

  /** Seconds by the clock and of the processor. */
  private record Cost(double clock, double processor) {

    private Cost least(Cost other) {
      return new Cost(Math.min(clock, other.clock), Math.min(processor, other.processor));
    }

    private Cost minus(Cost other) {
      return new Cost(clock - other.clock, processor - other.processor);
    }

    private Cost times(double factor) {
      return new Cost(clock * factor, processor * factor);
    }
  }

  @Test
  @Timeout(value = 3, unit = TimeUnit.HOURS)
  void ofCellsThatAreLoadedAndComputed(@TempDir Path scratch) throws Exception {
    Profile profile = Profile.withExtension().withRecalculationOnLoad();
    try (UserFolder folder = UserFolder.create(Launcher.installed(), profile)) {
      folder.add(BareExtension.in(scratch));
      Map<Sheet, Path> files = files(folder, scratch);
      Map<Sheet, Cost> costs = new HashMap<>();
      for (int time = 0; time < TIMES; time++) {
        for (Formula formula : Formula.values()) {
          for (int rows : SIZES) {
            Sheet sheet = new Sheet(formula, rows);
            costs.merge(sheet, cost(folder, files.get(sheet), rows), Cost::least);
          }
        }
      }
      print(costs);
    }
  }

  private static void print(Map<Sheet, Cost> costs) {
    System.out.printf(
        "%-14s %8s %17s %25s %25s%n",
        "", "cells", "seconds", "µs a cell after the first", "of which beyond native");
    for (Formula formula : Formula.values()) {
      for (int rows : SIZES) {
        Cost whole = costs.get(new Sheet(formula, rows));
        System.out.printf(
            "%-14s %,8d %8.2f %8.2f", formula, rows, whole.clock(), whole.processor());
        if (rows > 1) {
          Cost cell = cell(costs, formula, rows);
          Cost more = cell.minus(cell(costs, formula.besideIt(), rows));
          System.out.printf(" %12.1f %12.1f", cell.clock(), cell.processor());
          System.out.print(
              formula.isBesideIt()
                  ? ""
                  : " %12.1f %12.1f".formatted(more.clock(), more.processor()));
        }
        System.out.println();
      }
    }
    System.out.println("first by the clock, then of the processor");
  }

  /** Microseconds that each cell after the first one costs. */
  private static Cost cell(Map<Sheet, Cost> costs, Formula formula, int rows) {
    Cost first = costs.get(new Sheet(formula, 1));
    return costs.get(new Sheet(formula, rows)).minus(first).times(1e6 / (rows - 1));
  }

  private static Map<Sheet, Path> files(UserFolder folder, Path scratch) throws Exception {
    Map<Sheet, Path> files = new HashMap<>();
    try (Office office = folder.start()) {
      for (Formula formula : Formula.values()) {
        for (int rows : SIZES) {
          files.put(new Sheet(formula, rows), file(office, formula, rows, scratch));
        }
      }
    }
    return files;
  }

  private static Path file(Office office, Formula formula, int rows, Path scratch)
      throws Exception {
    try (Workbook workbook = office.create()) {
      Object[] inputs =
          formula.ofFive ? new Object[] {1.5, 2.25, 3.5, 1.25, 0.5} : new Object[] {1.5};
      queryInterface(
              XCellRangeData.class, workbook.range((formula.ofFive ? "A1:E" : "A1:A") + rows))
          .setDataArray(Collections.nCopies(rows, inputs).toArray(Object[][]::new));
      if (formula.ofFive) {
        workbook.setAll("I1:M1", new String[][] {{"0.01", "0.01", "0.01", "0.01", "0.01"}});
        fill(workbook, "F", NATIVE_OF_FIVE, rows);
      }
      fill(workbook, "G", formula.text, rows);
      String name = formula + "-" + rows;
      Path saved = workbook.save(name, Format.ODS);
      return Files.move(saved, scratch.resolve(saved.getFileName()));
    }
  }

  private static void fill(Workbook workbook, String column, String formula, int rows)
      throws Exception {
    workbook.set(column + "1", formula);
    queryInterface(XCellSeries.class, workbook.range(column + "1:" + column + rows))
        .fillAuto(FillDirection.TO_BOTTOM, 1);
  }

  private static Cost cost(UserFolder folder, Path file, int rows) throws Exception {
    try (Office office = folder.start()) {
      double before = processor(office);
      long began = System.nanoTime();
      try (Workbook workbook = office.openOnMainThread(file)) {
        assertThat(workbook.error("G" + rows)).isZero();
        return new Cost((System.nanoTime() - began) / 1e9, processor(office) - before);
      }
    }
  }

  private static double processor(Office office) {
    return office.processorTime().toMillis() / 1000.0;
  }
}
