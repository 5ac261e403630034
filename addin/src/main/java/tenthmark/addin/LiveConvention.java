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

/**
 * The convention that a document holds, read once for all calls of a recalculation. Functions that
 * follow it do not refer to its cells, so when one of these changes all is computed anew.
 */
final class LiveConvention implements Supplier<Convention>, XModifyListener {

  /** After so long the document is asked again: the name may be new, or stand for other cells. */
  private static final long PAUSE = Duration.ofMillis(500).toNanos();

  private final XPropertySet document;
  private Optional<Supplier<Convention>> known = Optional.empty();
  private long read;
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
    if (known.isEmpty() || System.nanoTime() - read > PAUSE) {
      known = Optional.of(read());
      read = System.nanoTime();
    }
    return known.get().get();
  }

  private Supplier<Convention> read() {
    OfficeCells cells = OfficeCells.of(document);
    watch(cells);
    try {
      Convention convention = WorkbookConvention.in(cells);
      return () -> convention;
    } catch (ArgumentException unreadable) {
      return () -> {
        throw unreadable;
      };
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

  @Override
  public void modified(EventObject changed) {
    synchronized (this) {
      known = Optional.empty();
    }
    queryInterface(XCalculatable.class, document).calculateAll();
  }

  @Override
  public void disposing(EventObject closed) {
    // Nothing is held that outlives the document.
  }
}
