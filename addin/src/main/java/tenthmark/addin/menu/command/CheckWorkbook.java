package tenthmark.addin.menu.command;

import com.google.auto.service.AutoService;
import com.sun.star.uno.Exception;
import java.io.IOException;
import java.util.Optional;
import tenthmark.addin.checking.Checker;
import tenthmark.addin.checking.FindingsWindow;
import tenthmark.addin.menu.Command;
import tenthmark.addin.menu.Workplace;

/** Checks the spreadsheet as it is, and shows what was found. */
@AutoService(Command.class)
public final class CheckWorkbook implements Command {

  @Override
  public String name() {
    return "check";
  }

  @Override
  public void run(Workplace workplace) throws Exception, IOException {
    Checker checker = new Checker(workplace, ExtensionFolder.of(workplace));
    checker.check(
        checked ->
            FindingsWindow.show(
                workplace,
                checked,
                checker.profile(),
                () -> OpenReference.open(workplace, Optional.empty())));
  }
}
