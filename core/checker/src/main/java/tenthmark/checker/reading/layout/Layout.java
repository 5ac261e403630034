package tenthmark.checker.reading.layout;

import java.util.List;
import tenthmark.checker.reading.block.Block;

/** One way in which people lay measurements out on a sheet. */
public interface Layout {

  /** Whether it looks at a whole sheet at once, not at each of its blocks. */
  default boolean isOfWholeSheet() {
    return false;
  }

  /** The tables that a block may hold, each with what speaks for it. */
  List<Proposal> propose(Block block, Surroundings surroundings);
}
