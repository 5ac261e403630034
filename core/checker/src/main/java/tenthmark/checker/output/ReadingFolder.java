package tenthmark.checker.output;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import tenthmark.checker.report.Unwritten;

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

  /** Writes the page about a workbook, if it could be read; gives it if it cannot be written. */
  public synchronized List<Unwritten> write(Path file, Optional<String> page) {
    Writing writing = new Writing();
    page.ifPresent(text -> writing.text("its page", page(file), () -> text));
    return writing.unwritten();
  }
}
