package tenthmark.addin.menu.command;

import com.google.auto.service.AutoService;
import com.sun.star.uno.Exception;
import tenthmark.addin.graph.Graphs;
import tenthmark.addin.menu.Command;
import tenthmark.addin.menu.Workplace;

/** Draws the selected points with their uncertainties and the line fitted to them. */
@AutoService(Command.class)
public final class DrawGraph implements Command {

  @Override
  public String name() {
    return "graph";
  }

  @Override
  public void run(Workplace workplace) throws Exception {
    Graphs.draw(workplace);
  }
}
