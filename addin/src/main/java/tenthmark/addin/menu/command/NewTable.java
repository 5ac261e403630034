package tenthmark.addin.menu.command;

import com.google.auto.service.AutoService;
import com.sun.star.uno.Exception;
import tenthmark.addin.menu.Command;
import tenthmark.addin.menu.Workplace;
import tenthmark.addin.table.RecordTables;

/** Begins a record table at the cursor. */
@AutoService(Command.class)
public final class NewTable implements Command {

  @Override
  public String name() {
    return "new-table";
  }

  @Override
  public void run(Workplace workplace) throws Exception {
    new RecordTables(workplace).begin();
  }
}
