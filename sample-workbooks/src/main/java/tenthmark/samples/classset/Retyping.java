package tenthmark.samples.classset;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Types numbers into submissions that Calc has saved, and calculates nothing: the results stay as
 * they were.
 */
public final class Retyping {

  private Retyping() {}

  /** Takes one argument: the folder of the submissions. */
  public static void main(String[] arguments) throws IOException {
    for (Submission submission : ClassSet.all()) {
      Map<String, Double> retyped = submission.retyped();
      if (!retyped.isEmpty()) {
        type(Path.of(arguments[0], submission.fileName() + ".xlsx"), retyped);
      }
    }
  }

  private static void type(Path file, Map<String, Double> numbers) throws IOException {
    try (InputStream saved = Files.newInputStream(file);
        XSSFWorkbook workbook = new XSSFWorkbook(saved)) {
      numbers.forEach(
          (address, number) -> {
            CellReference place = new CellReference(address);
            workbook
                .getSheetAt(0)
                .getRow(place.getRow())
                .getCell(place.getCol())
                .setCellValue(number);
          });
      try (OutputStream target = Files.newOutputStream(file)) {
        workbook.write(target);
      }
    }
  }
}
