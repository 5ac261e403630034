package tenthmark.samples.corpus;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.Workbook;

/**
 * Draws a set of families into a folder: workbooks in a folder for each program and format, which
 * the script {@code corpus.sh} beside this module has them save, and the truth files.
 */
public final class MakeCorpus {

  private MakeCorpus() {}

  /** Takes two arguments: the folder to write to, and the set of families. */
  public static void main(String[] arguments) throws IOException {
    Path folder = Path.of(arguments[0]);
    for (Family family : Family.ofSet(arguments[1])) {
      for (Drawing drawing : family.drawings()) {
        write(drawing, folder);
      }
    }
  }

  private static void write(Drawing drawing, Path folder) throws IOException {
    writeWorkbook(drawing, folder);
    Files.writeString(folder.resolve(drawing.name() + ".truth.yaml"), TruthFile.text(drawing));
  }

  /** Puts the workbook where its program finds it. */
  public static void writeWorkbook(Drawing drawing, Path folder) throws IOException {
    Writer writer = drawing.writer();
    Path place = Files.createDirectories(folder.resolve(writer.folder()));
    Path file = place.resolve(drawing.name() + "." + writer.rawFormat());
    try (Workbook workbook = drawing.finished();
        OutputStream out = Files.newOutputStream(file)) {
      workbook.write(out);
    }
  }
}
