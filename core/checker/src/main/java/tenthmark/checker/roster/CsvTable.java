package tenthmark.checker.roster;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A table in a text file, as spreadsheet programs and course lists write it: commas, semicolons or
 * tabs between values, in UTF-8 or, where it is not that, in the code page of Western Windows.
 *
 * @param headings of the columns, each once, in their order
 * @param rows below the headings
 */
public record CsvTable(List<String> headings, List<Row> rows) {

  /**
   * One row.
   *
   * @param line which row of the file it is, from 1
   * @param values by heading; what is missing at its end is empty
   */
  public record Row(long line, Map<String, String> values) {

    /** The value under a heading in whatever letter case; empty without such a column. */
    public String value(String heading) {
      return values.entrySet().stream()
          .filter(value -> value.getKey().equalsIgnoreCase(heading))
          .map(Map.Entry::getValue)
          .findFirst()
          .orElse("");
    }
  }

  private static final long LARGEST = 16 << 20;

  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private static final Charset WESTERN = Charset.forName("windows-1252");

  /**
   * Reads a file.
   *
   * @throws IOException if it cannot be read as a table; its message says why in a line
   */
  public static CsvTable read(Path file) throws IOException {
    if (Files.size(file) > LARGEST) {
      throw new IOException("the file is larger than " + (LARGEST >> 20) + " MiB");
    }
    return of(text(Files.readAllBytes(file)));
  }

  private static String text(byte[] bytes) {
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return text.indexOf(BYTE_ORDER_MARK) == 0 ? text.substring(1) : text;
    } catch (CharacterCodingException other) {
      return new String(bytes, WESTERN);
    }
  }

  static CsvTable of(String text) throws IOException {
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setDelimiter(delimiter(text))
            .setIgnoreSurroundingSpaces(true)
            .setTrim(true)
            .get();
    try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
      List<CSVRecord> records = parser.getRecords();
      if (records.isEmpty()) {
        throw new IOException("the file is empty");
      }
      List<String> headings = records.get(0).toList();
      return new CsvTable(
          headings.stream().filter(heading -> !heading.isEmpty()).distinct().toList(),
          records.stream().skip(1).map(row -> row(headings, row)).toList());
    } catch (UncheckedIOException | IllegalArgumentException damage) {
      throw new IOException("the file is no table of comma-separated values", damage);
    }
  }

  /** The sign that stands most often in the line of headings. */
  private static String delimiter(String text) {
    String headings = text.lines().findFirst().orElse("");
    return Stream.of(",", ";", "\t")
        .max(
            Comparator.comparingLong(
                sign -> headings.chars().filter(c -> c == sign.charAt(0)).count()))
        .orElseThrow();
  }

  private static Row row(List<String> headings, CSVRecord values) {
    Map<String, String> byHeading = new LinkedHashMap<>();
    for (int column = 0; column < headings.size(); column++) {
      byHeading.putIfAbsent(headings.get(column), column < values.size() ? values.get(column) : "");
    }
    byHeading.remove("");
    return new Row(values.getRecordNumber(), byHeading);
  }

  /** The column with this heading in whatever letter case. */
  public Optional<String> heading(String wanted) {
    return headings.stream().filter(heading -> heading.equalsIgnoreCase(wanted)).findFirst();
  }
}
