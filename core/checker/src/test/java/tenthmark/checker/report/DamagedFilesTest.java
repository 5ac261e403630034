package tenthmark.checker.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Files damaged at random, with a fixed seed: each gives findings or one line, and no exception.
 */
class DamagedFilesTest {

  private static final int TIMES = 60;

  @TempDir Path folder;

  private final FileChecker checker = FileChecker.load();

  @ParameterizedTest
  @ValueSource(strings = {"lab-table.ods", "lab-table.xlsx", "lab-table.xls"})
  void inTheirBytes(String name) throws Exception {
    byte[] whole = Files.readAllBytes(saved(name));
    Random random = new Random(20261125);
    for (int i = 0; i < TIMES; i++) {
      check(damaged(whole, random), name);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "lab-table.ods, content.xml",
    "lab-table.xlsx, xl/worksheets/sheet1.xml",
    "lab-table.xlsx, xl/workbook.xml",
    "lab-table.xlsx, xl/sharedStrings.xml"
  })
  void inTheXmlWithin(String name, String part) throws Exception {
    byte[] whole = Files.readAllBytes(saved(name));
    Random random = new Random(20261125);
    for (int i = 0; i < TIMES; i++) {
      check(withPartDamaged(whole, part, random), name);
    }
  }

  private void check(byte[] content, String name) throws IOException {
    Path file = folder.resolve(name);
    Files.write(file, content);

    FileReport report = checker.check(file);

    assertThat(report.problem().orElse("")).doesNotContain("the checker failed");
    assertThat(file).hasBinaryContent(content);
  }

  private static Path saved(String name) {
    return Path.of("src/test/resources/saved-by-calc", name);
  }

  /** Some bytes changed, a slice left out, or a slice doubled. */
  private static byte[] damaged(byte[] whole, Random random) {
    int from = random.nextInt(whole.length);
    int to = Math.min(whole.length, from + 1 + random.nextInt(60));
    byte[] head = Arrays.copyOf(whole, from);
    byte[] slice = Arrays.copyOfRange(whole, from, to);
    byte[] tail = Arrays.copyOfRange(whole, to, whole.length);
    return switch (random.nextInt(3)) {
      case 0 -> joined(head, tail);
      case 1 -> joined(head, slice, slice, tail);
      default -> {
        random.nextBytes(slice);
        yield joined(head, slice, tail);
      }
    };
  }

  private static byte[] joined(byte[]... parts) {
    ByteArrayOutputStream joined = new ByteArrayOutputStream();
    Arrays.stream(parts).forEach(joined::writeBytes);
    return joined.toByteArray();
  }

  private static byte[] withPartDamaged(byte[] archive, String part, Random random)
      throws IOException {
    ByteArrayOutputStream target = new ByteArrayOutputStream();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(archive));
        ZipOutputStream out = new ZipOutputStream(target)) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        byte[] content = in.readAllBytes();
        out.putNextEntry(new ZipEntry(entry.getName()));
        out.write(entry.getName().equals(part) ? damaged(content, random) : content);
        out.closeEntry();
      }
    }
    return target.toByteArray();
  }
}
