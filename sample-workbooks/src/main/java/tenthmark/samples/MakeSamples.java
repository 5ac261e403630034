package tenthmark.samples;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import tenthmark.samples.lab.Lab;
import tenthmark.samples.plan.Copy;

/**
 * Writes the sample workbooks, without values, into a folder: the script {@code make.sh} beside
 * this module has a real Calc compute and save them.
 */
public final class MakeSamples {

  private MakeSamples() {}

  /** Takes one argument: the folder to write to. */
  public static void main(String[] arguments) throws IOException {
    Path folder = Files.createDirectories(Path.of(arguments[0]));
    write(BenchWorkbook.build(), folder.resolve("first-lab-table.xlsx"));
    write(BenchWorkbook.buildFaulty(), folder.resolve("first-lab-table-faulty.xlsx"));
    Path labs = Files.createDirectories(folder.resolve("labs"));
    for (Lab lab : Lab.all()) {
      for (Copy copy : Copy.values()) {
        write(lab.plan().written(copy), labs.resolve(lab.fileName(copy) + ".xlsx"));
      }
    }
  }

  private static void write(XSSFWorkbook workbook, Path file) throws IOException {
    try (workbook;
        OutputStream out = Files.newOutputStream(file)) {
      workbook.write(out);
    }
  }
}
