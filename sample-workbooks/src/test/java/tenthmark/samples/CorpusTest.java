package tenthmark.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Correct workbooks as other people draw them: what the checker reads of their records, and what it
 * blames although nothing is wrong.
 */
class CorpusTest {

  /** What was read of the workbooks of one layout. */
  private record Row(int present, int read, int right, int blamed) {
    private Row plus(Row other) {
      return new Row(
          present + other.present, read + other.read, right + other.right, blamed + other.blamed);
    }
  }

  /**
   * The reader was built with the first set at hand; the others were opened to it later, so that
   * none of the floors says how tables are read that nobody who builds it has seen.
   */
  @ParameterizedTest
  @CsvSource({
    "corpus, 0.96, 0",
    "corpus-later, 0.99, 0",
    "corpus-acceptance, 0.99, 0",
    "corpus-fresh, 0.99, 0",
    "corpus-last, 0.74, 2",
    "corpus-final, 0.94, 0"
  })
  void isReadRightAndHardlyBlamed(Path set, double leastRight, int mostBlamed) throws IOException {
    Map<String, Row> rows = new TreeMap<>();
    Row sum = new Row(0, 0, 0, 0);
    List<String> misses = new ArrayList<>();
    try (Stream<Path> files = Files.list(set)) {
      for (Path truth :
          files.filter(file -> file.toString().endsWith(".truth.yaml")).sorted().toList()) {
        CorpusWorkbook workbook = CorpusWorkbook.read(truth);
        Row row =
            new Row(
                workbook.present(),
                workbook.read(),
                workbook.right(),
                workbook.falseFindings().size());
        rows.merge(workbook.layout(), row, Row::plus);
        sum = sum.plus(row);
        misses.addAll(workbook.misses());
      }
    }
    print(rows, sum);
    misses.forEach(System.out::println);

    assertThat(sum.present()).isGreaterThan(0);
    assertThat(sum.right()).as("records read right").isGreaterThanOrEqualTo(share(leastRight, sum));
    assertThat(sum.blamed()).as("false findings").isLessThanOrEqualTo(mostBlamed);
  }

  private static int share(double part, Row sum) {
    return (int) Math.ceil(part * sum.present());
  }

  private static void print(Map<String, Row> rows, Row sum) {
    String form = "%-28s %7s %5s %6s %7s%n";
    System.out.printf(form, "layout", "present", "read", "right", "blamed");
    rows.forEach(
        (layout, row) ->
            System.out.printf(form, layout, row.present, row.read, row.right, row.blamed));
    System.out.printf(form, "all", sum.present, sum.read, sum.right, sum.blamed);
  }
}
