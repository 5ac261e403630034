package tenthmark.checker.cli;

import picocli.CommandLine.IVersionProvider;
import tenthmark.checker.report.Program;

/** The version that the jar carries. */
final class Version implements IVersionProvider {

  @Override
  public String[] getVersion() {
    return new String[] {Program.stamp()};
  }
}
