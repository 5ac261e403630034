package tenthmark.checker.output;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.StreamSupport;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import tenthmark.checker.grade.Grade;
import tenthmark.checker.report.FileReport;

/**
 * A zip archive for a section, to be handed back as it is: for each student's newest workbook the
 * page and the annotated copy, under the name that the workbook came in with.
 *
 * @param name of its file
 * @param reports on the newest workbooks
 */
record SectionArchive(String name, List<FileReport> reports) {

  /** Of students whose section is not known. */
  private static final String REST = "without-section";

  /** What an archive is called. */
  private static final String ENDING = ".zip";

  /** The same bytes for the same content, whenever it is written (1 January 1980, the earliest). */
  private static final long TIME = 315_532_800_000L;

  /** One for each section, in the order of the grades. */
  static List<SectionArchive> of(List<Grade> grades) {
    Map<String, List<FileReport>> sections = new LinkedHashMap<>();
    for (Grade grade : grades) {
      grade
          .report()
          .ifPresent(
              report ->
                  sections.computeIfAbsent(section(grade), none -> new ArrayList<>()).add(report));
    }
    return sections.entrySet().stream()
        .map(section -> new SectionArchive(section.getKey() + ENDING, section.getValue()))
        .toList();
  }

  /** A name that every file system takes. */
  private static String section(Grade grade) {
    String name =
        grade.participant().student().section().replaceAll("[^\\p{L}\\p{N} _-]+", "-").strip();
    return name.isEmpty() ? REST : name;
  }

  /** The name of a workbook in the archive that it came in; of one that came in none, its own. */
  static String name(Path file) {
    List<String> steps =
        StreamSupport.stream(file.spliterator(), false).map(Path::toString).toList();
    for (int step = 0; step < steps.size() - 1; step++) {
      if (steps.get(step).toLowerCase(Locale.ROOT).endsWith(ENDING)) {
        return String.join("/", steps.subList(step + 1, steps.size()));
      }
    }
    return steps.get(steps.size() - 1);
  }

  /**
   * The archive.
   *
   * @param files what a student gets, by the name in the archive; what is not there is left out
   */
  byte[] content(Function<FileReport, Map<String, Path>> files) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      Map<String, Integer> taken = new HashMap<>();
      for (FileReport report : reports) {
        for (Map.Entry<String, Path> file : files.apply(report).entrySet()) {
          if (Files.isRegularFile(file.getValue())) {
            int count = taken.merge(file.getKey(), 1, Integer::sum);
            add(zip, count == 1 ? file.getKey() : count + "/" + file.getKey(), file.getValue());
          }
        }
      }
    }
    return bytes.toByteArray();
  }

  private static void add(ZipOutputStream zip, String name, Path file) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setTime(TIME);
    zip.putNextEntry(entry);
    Files.copy(file, zip);
    zip.closeEntry();
  }
}
