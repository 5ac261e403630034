package tenthmark.addin.menu.command;

import com.google.auto.service.AutoService;
import com.sun.star.uno.Exception;
import java.io.IOException;
import tenthmark.addin.checking.PlainCopy;
import tenthmark.addin.menu.Command;
import tenthmark.addin.menu.Workplace;

/** Saves a copy for people without the extension. */
@AutoService(Command.class)
public final class SavePlainCopy implements Command {

  @Override
  public String name() {
    return "plain-copy";
  }

  @Override
  public void run(Workplace workplace) throws Exception, IOException {
    PlainCopy.write(workplace, ExtensionFolder.of(workplace));
  }
}
