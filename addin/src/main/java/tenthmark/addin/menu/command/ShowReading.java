package tenthmark.addin.menu.command;

import com.google.auto.service.AutoService;
import com.sun.star.uno.Exception;
import java.io.IOException;
import java.util.Optional;
import tenthmark.addin.checking.Checker;
import tenthmark.addin.checking.ReadingWindow;
import tenthmark.addin.menu.Command;
import tenthmark.addin.menu.Workplace;

/** Shows what the checker takes each cell of the spreadsheet for. */
@AutoService(Command.class)
public final class ShowReading implements Command {

  @Override
  public String name() {
    return "reading";
  }

  @Override
  public void run(Workplace workplace) throws Exception, IOException {
    Checker checker = new Checker(workplace, ExtensionFolder.of(workplace));
    checker.read(
        file ->
            ReadingWindow.show(
                workplace,
                file,
                checker.profile(),
                () -> OpenReference.open(workplace, Optional.empty())));
  }
}
