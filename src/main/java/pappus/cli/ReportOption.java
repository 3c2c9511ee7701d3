package pappus.cli;

import picocli.CommandLine.Option;

/** Whether a page with pictures is wanted, for commands that can make one. */
final class ReportOption {
  @Option(
      names = "--report",
      description = "Also write a page with pictures into the folder of results.")
  private boolean wanted;

  boolean isWanted() {
    return wanted;
  }
}
