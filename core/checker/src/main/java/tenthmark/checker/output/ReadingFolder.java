package tenthmark.checker.output;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/**
 * The folder with a page for each workbook that shows how it was read, laid out as the workbooks
 * are: {@code monday/ada.ods.html} about {@code monday/ada.ods}.
 */
public final class ReadingFolder {

  private final Path folder;
  private final CommonFolder root;

  /**
   * @param folder is made if it does not exist
   * @param files all workbooks, by which the layout is found
   */
  public ReadingFolder(Path folder, List<Path> files) {
    this.folder = folder;
    this.root = CommonFolder.of(files);
  }

  /** Where the page about a workbook stands. */
  public Path page(Path file) {
    Path own = root.relative(file);
    return folder.resolve(own.resolveSibling(own.getFileName() + ".html"));
  }

  /** Writes the page about a workbook. */
  public synchronized void write(Path file, String page) throws IOException {
    WholeFile.write(page(file), page);
  }
}
