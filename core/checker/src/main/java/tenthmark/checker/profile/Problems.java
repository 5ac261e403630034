package tenthmark.checker.profile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.Node;

/** The problems found so far. */
final class Problems {

  private static final Comparator<Problem> PLACE =
      Comparator.comparing(Problem::included)
          .thenComparingInt(Problem::line)
          .thenComparingInt(Problem::column);

  private final List<Problem> found = new ArrayList<>();

  void add(Node node, String message) {
    add(node.getStartMark().orElseThrow(), message);
  }

  void add(Problem problem) {
    found.add(problem);
  }

  void add(Mark mark, String message) {
    found.add(new Problem(mark.getName(), mark.getLine() + 1, mark.getColumn() + 1, message));
  }

  List<Problem> fromTopToBottom() {
    return found.stream().sorted(PLACE).toList();
  }
}
