package tenthmark.addin.menu.command;

import com.google.auto.service.AutoService;
import com.sun.star.uno.Exception;
import tenthmark.addin.checking.CellComments;
import tenthmark.addin.menu.Command;
import tenthmark.addin.menu.Workplace;

/** Takes the checker's comments off all cells. */
@AutoService(Command.class)
public final class RemoveComments implements Command {

  @Override
  public String name() {
    return "remove-comments";
  }

  @Override
  public void run(Workplace workplace) throws Exception {
    workplace.conversation().tell(CellComments.remove(workplace));
  }
}
