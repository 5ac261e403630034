package tenthmark.addin.menu.command;

import com.sun.star.deployment.PackageInformationProvider;
import java.net.URI;
import java.nio.file.Path;
import tenthmark.addin.menu.Workplace;

/** Where the office has unpacked the extension. */
final class ExtensionFolder {

  private static final String IDENTIFIER = "org.tenthmark.calc";

  private ExtensionFolder() {}

  static Path of(Workplace workplace) {
    String location =
        PackageInformationProvider.get(workplace.office()).getPackageLocation(IDENTIFIER);
    return Path.of(URI.create(location));
  }
}
