package tenthmark.addin.menu.command;

import com.google.auto.service.AutoService;
import com.sun.star.uno.Exception;
import tenthmark.addin.menu.Command;
import tenthmark.addin.menu.Workplace;
import tenthmark.addin.table.RecordTables;

/** Adds a record to the table at the cursor. */
@AutoService(Command.class)
public final class AddRecord implements Command {

  @Override
  public String name() {
    return "add-record";
  }

  @Override
  public void run(Workplace workplace) throws Exception {
    new RecordTables(workplace).addRecord();
  }
}
