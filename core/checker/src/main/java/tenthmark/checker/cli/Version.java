package tenthmark.checker.cli;

import java.util.Optional;
import picocli.CommandLine.IVersionProvider;

/** The version that the jar carries. */
final class Version implements IVersionProvider {

  @Override
  public String[] getVersion() {
    String version =
        Optional.ofNullable(Version.class.getPackage().getImplementationVersion())
            .orElse("(not packaged)");
    return new String[] {"tenthmark-checker " + version};
  }
}
