package tenthmark.addin.checking;

import com.sun.star.table.XCell;
import com.sun.star.uno.Exception;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tenthmark.addin.document.Comment;
import tenthmark.addin.document.SheetCells;
import tenthmark.addin.document.Spreadsheet;
import tenthmark.addin.menu.RefusalException;
import tenthmark.addin.menu.Workplace;
import tenthmark.measurement.wording.Sentences;

/** The checker's comments on the cells of a spreadsheet. A student's own are never touched. */
public final class CellComments {

  private final Spreadsheet document;
  private final Sentences texts;

  private CellComments(Spreadsheet document, Sentences texts) {
    this.document = document;
    this.texts = texts;
  }

  /**
   * What became of comments.
   *
   * @param done how many were put or taken away
   * @param left how many cells or comments were left as they are
   */
  private record Count(int done, int left) {}

  private record Place(String sheet, String cell) {}

  /**
   * Puts findings on their cells as one step, instead of what is there from us, and says how many.
   * Cells with a comment of another, and sheets that are protected, are left.
   */
  public static String put(Workplace workplace, List<Finding> findings) throws Exception {
    CellComments comments = new CellComments(workplace.spreadsheet(), workplace.texts());
    return comments.change("comments.put", () -> comments.put(findings), workplace);
  }

  /**
   * Takes our comments away as one step, and says how many. Those that somebody has changed, and
   * those on protected sheets, are left.
   */
  public static String remove(Workplace workplace) throws Exception {
    CellComments comments = new CellComments(workplace.spreadsheet(), workplace.texts());
    return comments.change("comments.removed", comments::remove, workplace);
  }

  @FunctionalInterface
  private interface Work {

    Count run() throws Exception;
  }

  private String change(String key, Work work, Workplace workplace) throws Exception {
    if (document.isReadOnly()) {
      throw new RefusalException("document.read-only");
    }
    List<Count> counts = new ArrayList<>();
    document.change(workplace.title(), () -> counts.add(work.run()));
    Count count = counts.get(0);
    String done = texts.say(key, Integer.toString(count.done()));
    String left = texts.say(key + ".left", Integer.toString(count.left()));
    return count.left() == 0 ? done : done + " " + left;
  }

  private Count put(List<Finding> findings) throws Exception {
    remove();
    int done = 0;
    Map<Place, String> comments = comments(findings);
    for (Map.Entry<Place, String> comment : comments.entrySet()) {
      done += put(comment.getKey(), Marked.of(comment.getValue())) ? 1 : 0;
    }
    return new Count(done, comments.size() - done);
  }

  private Map<Place, String> comments(List<Finding> findings) {
    Map<Place, String> comments = new LinkedHashMap<>();
    for (Finding finding : findings) {
      comments.merge(
          new Place(finding.sheet(), finding.cell()),
          new FindingTexts(texts).inFull(finding),
          (one, other) -> one + "\n\n" + other);
    }
    return comments;
  }

  private boolean put(Place place, String text) throws Exception {
    Optional<SheetCells> sheet = document.sheet(place.sheet());
    if (sheet.isEmpty() || sheet.get().isProtected()) {
      return false;
    }
    XCell cell = sheet.get().cell(place.cell());
    if (sheet.get().hasComment(cell)) {
      return false;
    }
    sheet.get().comment(cell, text);
    return true;
  }

  private Count remove() throws Exception {
    int done = 0;
    int left = 0;
    for (SheetCells sheet : document.sheets()) {
      for (Comment comment : sheet.comments()) {
        if (Marked.isOurs(comment.text()) && !sheet.isProtected()) {
          sheet.remove(comment);
          done++;
        } else if (Marked.isOurs(comment.text()) || Marked.isChanged(comment.text())) {
          left++;
        }
      }
    }
    return new Count(done, left);
  }
}
