package tenthmark.checker.fuzz;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** A part of a workbook that Calc saved. */
enum Part {
  ODS_CONTENT("lab-table.ods", "content.xml"),
  XLSX_SHEET("lab-table.xlsx", "xl/worksheets/sheet1.xml"),
  XLSX_INDEX("lab-table.xlsx", "xl/workbook.xml"),
  XLSX_TEXTS("lab-table.xlsx", "xl/sharedStrings.xml"),
  XLSX_RELATIONSHIPS("lab-table.xlsx", "xl/_rels/workbook.xml.rels"),
  XLSX_TYPES("lab-table.xlsx", "[Content_Types].xml");

  private final String name;
  private final Map<String, byte[]> parts;

  Part(String file, String name) {
    this.name = name;
    this.parts = parts(Seeds.SAVED.resolve(file));
  }

  private static Map<String, byte[]> parts(Path file) {
    Map<String, byte[]> parts = new LinkedHashMap<>();
    try (ZipFile zip = new ZipFile(file.toFile())) {
      for (ZipEntry entry : zip.stream().toList()) {
        parts.put(entry.getName(), zip.getInputStream(entry).readAllBytes());
      }
      return parts;
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  byte[] original() {
    return parts.get(name);
  }

  /** The workbook with other content of this part. */
  byte[] fileWith(byte[] content) {
    ByteArrayOutputStream target = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(target)) {
      zip.setLevel(1);
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        zip.write(part.getKey().equals(name) ? content : part.getValue());
        zip.closeEntry();
      }
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
    return target.toByteArray();
  }
}
