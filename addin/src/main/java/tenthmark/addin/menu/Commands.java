package tenthmark.addin.menu;

import java.util.List;
import java.util.Optional;
import java.util.ServiceLoader;

/** All commands. */
public record Commands(List<Command> all) {

  /** Copies the list. */
  public Commands {
    all = List.copyOf(all);
  }

  /** Finds every registered command, whatever class loader runs the caller. */
  public static Commands load() {
    return new Commands(
        ServiceLoader.load(Command.class, Commands.class.getClassLoader()).stream()
            .map(ServiceLoader.Provider::get)
            .toList());
  }

  /** The command with this name. */
  public Optional<Command> find(String name) {
    return all.stream().filter(command -> command.name().equals(name)).findFirst();
  }
}
