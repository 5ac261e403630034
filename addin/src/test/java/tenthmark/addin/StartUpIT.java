package tenthmark.addin;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import tenthmark.addin.office.Launcher;
import tenthmark.addin.office.Office;
import tenthmark.addin.office.Profile;
import tenthmark.addin.office.UserFolder;
import tenthmark.addin.office.Workbook;
import tenthmark.addin.office.Workbook.Format;

/**
 * What the extension adds to the time from the start of a headless Calc until a document is open:
 * with and without it in turn, in profiles that were used before. A measurement for a quiet
 * machine, so it runs only when {@code -Dtenthmark.starts=} says how often.
 */
@EnabledIfSystemProperty(named = "tenthmark.starts", matches = "\\d+")
class StartUpIT {

  private static final int STARTS = Integer.getInteger("tenthmark.starts", 0);
  private static final double ALLOWED = 1.1;

  /** One start until the document is open, in seconds. */
  private record Start(double clock, double processor) {}

  @Test
  void costsAtMostATenth(@TempDir Path scratch) throws Exception {
    List<Launcher> offices = new ArrayList<>(List.of(Launcher.installed()));
    Launcher.second().ifPresent(offices::add);
    for (Launcher launcher : offices) {
      try (UserFolder with = UserFolder.create(launcher, Profile.withExtension());
          UserFolder without = UserFolder.create(launcher, Profile.plain())) {
        Path document = ordinary(without, scratch);
        start(with, document);
        List<Start> withIt = new ArrayList<>();
        List<Start> withoutIt = new ArrayList<>();
        for (int i = 0; i < STARTS; i++) {
          withoutIt.add(start(without, document));
          withIt.add(start(with, document));
        }
        System.out.println(launcher.command() + ", " + STARTS + " starts each");
        ratio("clock", withoutIt, withIt, Start::clock);
        double processor = ratio("processor", withoutIt, withIt, Start::processor);
        // Other work on the machine lengthens the time by the clock.
        assertThat(processor).isLessThan(ALLOWED);
      }
    }
  }

  /** The ratio of the means: the system counts the processor's time in hundredths of a second. */
  private static double ratio(
      String what, List<Start> without, List<Start> with, ToDoubleFunction<Start> seconds) {
    DoubleSummaryStatistics times = without.stream().mapToDouble(seconds).summaryStatistics();
    DoubleSummaryStatistics longer = with.stream().mapToDouble(seconds).summaryStatistics();
    double ratio = longer.getAverage() / times.getAverage();
    System.out.printf(
        "%s: %s without, %s with; ratio of the means %.3f, of the medians %.3f%n",
        what, shown(times), shown(longer), ratio, median(with, seconds) / median(without, seconds));
    return ratio;
  }

  private static String shown(DoubleSummaryStatistics times) {
    return "%.3f s (%.2f to %.2f)".formatted(times.getAverage(), times.getMin(), times.getMax());
  }

  /** A document as anyone has it, without functions of the extension. */
  private static Path ordinary(UserFolder folder, Path scratch) throws Exception {
    try (Office office = folder.start();
        Workbook workbook = office.create()) {
      String[][] cells = new String[200][10];
      for (int row = 0; row < cells.length; row++) {
        for (int column = 0; column < cells[row].length; column++) {
          cells[row][column] = column == 9 ? "=SUM(A" + (row + 1) + ":I" + (row + 1) + ")" : "1.5";
        }
      }
      workbook.setAll("A1:J200", cells);
      return Files.copy(
          workbook.save("ordinary", Format.ODS), scratch.resolve(folder.hashCode() + ".ods"));
    }
  }

  private static Start start(UserFolder folder, Path document) throws Exception {
    long began = System.nanoTime();
    try (Office office = folder.start();
        Workbook workbook = office.open(document)) {
      Start start =
          new Start((System.nanoTime() - began) / 1e9, office.processorTime().toMillis() / 1000.0);
      assertThat(workbook.number("J200")).isEqualTo(13.5);
      return start;
    }
  }

  private static double median(List<Start> starts, ToDoubleFunction<Start> seconds) {
    double[] sorted = starts.stream().mapToDouble(seconds).sorted().toArray();
    return (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2;
  }
}
