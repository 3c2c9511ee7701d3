package pappus.cli;

import pappus.answers.result.Commit;
import picocli.CommandLine.IVersionProvider;

/** Version, commit and Java of this run. */
final class Version implements IVersionProvider {
  @Override
  public String[] getVersion() {
    return new String[] {tool(), "Java " + System.getProperty("java.version")};
  }

  /** Version and commit, as results carry them. */
  static String tool() {
    var version = Main.class.getPackage().getImplementationVersion();
    return "pappus " + (version == null ? "from sources" : version) + ", commit " + Commit.id();
  }
}
