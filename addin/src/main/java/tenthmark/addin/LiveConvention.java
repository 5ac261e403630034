package tenthmark.addin;

import static com.sun.star.uno.UnoRuntime.queryInterface;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.EventObject;
import com.sun.star.sheet.XCalculatable;
import com.sun.star.table.XCellRange;
import com.sun.star.util.XModifyBroadcaster;
import com.sun.star.util.XModifyListener;
import java.time.Duration;
import java.util.Optional;
import java.util.function.Supplier;
import tenthmark.measurement.catalogue.ArgumentException;
import tenthmark.measurement.catalogue.WorkbookConvention;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.recording.Convention;
import tenthmark.measurement.wording.Message;

/**
 * The convention that a document holds, read once for all calls of a recalculation. Functions that
 * follow it do not refer to its cells, so when one of these changes all is computed anew.
 */
final class LiveConvention implements Supplier<Convention>, XModifyListener {

  /** After so long the document is asked again: the name may be new, or stand for other cells. */
  private static final long PAUSE = Duration.ofMillis(500).toNanos();

  /** What the document says, or why that cannot be read. */
  private record Answer(Optional<Convention> convention, Optional<Message> refusal) {

    Convention get() {
      return convention.orElseThrow(() -> new ArgumentException(refusal.orElseThrow()));
    }
  }

  private final XPropertySet document;
  private Optional<Answer> known = Optional.empty();
  private long asked;
  private Optional<CellRange> watched = Optional.empty();

  LiveConvention(XPropertySet document) {
    this.document = document;
  }

  /**
   * The convention; {@code bench} where the document holds none.
   *
   * @throws ArgumentException if what it holds cannot be read
   */
  @Override
  public synchronized Convention get() {
    if (known.isEmpty() || System.nanoTime() - asked > PAUSE) {
      ask();
    }
    return known.get().get();
  }

  private void ask() {
    known = Optional.of(answer());
    asked = System.nanoTime();
  }

  private Answer answer() {
    OfficeCells cells = OfficeCells.of(document);
    watch(cells);
    try {
      return new Answer(Optional.of(WorkbookConvention.in(cells)), Optional.empty());
    } catch (ArgumentException unreadable) {
      return new Answer(Optional.empty(), Optional.of(unreadable.said()));
    }
  }

  private void watch(OfficeCells cells) {
    Optional<CellRange> range = WorkbookConvention.range(cells);
    if (!range.equals(watched)) {
      range.flatMap(cells::range).ifPresent(this::listen);
      watched = range;
    }
  }

  private void listen(XCellRange range) {
    queryInterface(XModifyBroadcaster.class, range).addModifyListener(this);
  }

  /** Calc tells of cells that were only computed anew, too. */
  @Override
  public void modified(EventObject changed) {
    if (isOther()) {
      queryInterface(XCalculatable.class, document).calculateAll();
    }
  }

  private synchronized boolean isOther() {
    Optional<Answer> before = known;
    ask();
    return !known.equals(before);
  }

  @Override
  public void disposing(EventObject closed) {
    // Nothing is held that outlives the document.
  }
}
