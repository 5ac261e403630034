package tenthmark.samples;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import tenthmark.samples.classset.ClassSet;
import tenthmark.samples.classset.Submission;
import tenthmark.samples.guide.RulePage;
import tenthmark.samples.lab.Lab;
import tenthmark.samples.plan.Copy;

/**
 * Writes the sample workbooks, without values, and the guide to the rules into a folder: the script
 * {@code make.sh} beside this module has a real Calc compute and save them.
 */
public final class MakeSamples {

  private MakeSamples() {}

  /** Takes one argument: the folder to write to. */
  public static void main(String[] arguments) throws IOException {
    Path folder = Files.createDirectories(Path.of(arguments[0]));
    write(BenchWorkbook.build(), folder.resolve("first-lab-table.xlsx"));
    write(BenchWorkbook.buildFaulty(), folder.resolve("first-lab-table-faulty.xlsx"));
    writeLabs(Files.createDirectories(folder.resolve("labs")));
    writeClassSet(folder.resolve("class-set"));
    Path guides = Files.createDirectories(folder.resolve("guides"));
    Files.writeString(guides.resolve("rules.md"), RulePage.text());
  }

  private static void writeLabs(Path folder) throws IOException {
    for (Lab lab : Lab.all()) {
      for (Copy copy : Copy.values()) {
        write(lab.plan().written(copy), folder.resolve(lab.fileName(copy) + ".xlsx"));
      }
      Files.writeString(folder.resolve(lab.file() + ".md"), lab.instructions());
      Files.writeString(folder.resolve(lab.file() + ".yaml"), lab.profile());
    }
  }

  /** Each submission goes into a folder named as the format that it will be saved in. */
  private static void writeClassSet(Path folder) throws IOException {
    for (Submission submission : ClassSet.all()) {
      String last = submission.savedWithoutExtension() ? "-without-extension" : "";
      Path format = Files.createDirectories(folder.resolve(submission.format() + last));
      write(
          submission.calculated().written(Copy.COMPLETED),
          format.resolve(submission.fileName() + ".xlsx"));
    }
    Files.writeString(folder.resolve("class-set.md"), ClassSet.list());
    Files.writeString(folder.resolve("class-set.yaml"), ClassSet.profile());
    Files.writeString(folder.resolveSibling("class-set-roster.csv"), ClassSet.roster());
    Files.writeString(folder.resolveSibling("class-set-remarks.csv"), ClassSet.remarks());
  }

  private static void write(XSSFWorkbook workbook, Path file) throws IOException {
    try (workbook;
        OutputStream out = Files.newOutputStream(file)) {
      workbook.write(out);
    }
  }
}
