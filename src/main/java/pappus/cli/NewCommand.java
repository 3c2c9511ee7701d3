package pappus.cli;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import pappus.catalog.CatalogReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** A scenario to begin with. */
@Command(
    name = "new",
    description =
        "Prints a scenario on standard output, from options and, on a terminal, from questions; every default taken is named.",
    footer = {
      "pappus new --mass-cap 250 --budget 400 --goggles analogue > mine.json",
      "pappus new --thrust 3 --flight loiter --cells 4 --propeller 5 > mine.json"
    })
final class NewCommand implements Callable<Integer> {
  @Spec
  private CommandSpec spec;

  @Option(
      names = "--mass-cap",
      paramLabel = "GRAMS",
      description = "Mass cap, g: all-up mass must stay below it; default 250.")
  private @Nullable String massCap;

  @Option(
      names = "--thrust",
      paramLabel = "RATIO",
      description = "Least thrust-to-weight, 1 to 20; default 2.")
  private @Nullable String thrust;

  @Option(
      names = "--budget",
      paramLabel = "MONEY",
      description = "The most it may cost, in the currency of the catalogue; default no limit.")
  private @Nullable String budget;

  @Option(
      names = "--flight",
      paramLabel = "STYLE",
      description = "How it flies: hover, loiter or cruise; default hover.")
  private @Nullable String flight;

  @Option(
      names = "--goggles",
      paramLabel = "FAMILY",
      description = "Video family of the goggles; default any.")
  private @Nullable String goggles;

  @Option(
      names = "--radio",
      paramLabel = "LINK",
      description = "Link family of the radio; default any.")
  private @Nullable String radio;

  @Option(
      names = "--cells",
      paramLabel = "N",
      description = "Cells in series of the pack; default any.")
  private @Nullable String cells;

  @Option(
      names = "--propeller",
      paramLabel = "INCHES",
      description = "Diameter of the propellers, within a quarter of an inch; default any.")
  private @Nullable String propeller;

  @Option(
      names = "--at-hand",
      paramLabel = "ID,ID",
      description = "Parts the builder has already, which cost nothing; default none.")
  private @Nullable String atHand;

  @Mixin
  private CatalogOptions catalogs = new CatalogOptions();

  @Option(names = "--quiet", description = "Ask nothing, and name no defaults.")
  private boolean quiet;

  @Override
  public Integer call() {
    var err = Printer.err(spec.commandLine());
    var beginning = new Beginning(CatalogReader.read(catalogs.folders()).catalog());
    var said = said();
    var problems = beginning.problems(said);
    if (!problems.isEmpty()) {
      problems.forEach(err::line);
      return ExitCode.USAGE;
    }
    if (!quiet
        && said.size() < Opening.values().length
        && Terminal.isThere(Terminal.IN)
        && Terminal.isThere(Terminal.ERR)) {
      var in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
      new Questions(beginning, in, err).ask(said);
    } else if (!quiet) {
      beginning.taken(said).ifPresent(err::line);
    }
    Printer.out(spec.commandLine()).document(beginning.text(said));
    return ExitCode.OK;
  }

  private Map<Opening, String> said() {
    var said = new EnumMap<Opening, String>(Opening.class);
    put(said, Opening.MASS_CAP, massCap);
    put(said, Opening.THRUST, thrust);
    put(said, Opening.BUDGET, budget);
    put(said, Opening.FLIGHT, flight);
    put(said, Opening.GOGGLES, goggles);
    put(said, Opening.RADIO, radio);
    put(said, Opening.CELLS, cells);
    put(said, Opening.PROPELLER, propeller);
    put(said, Opening.AT_HAND, atHand);
    return said;
  }

  private static void put(Map<Opening, String> said, Opening opening, @Nullable String value) {
    if (value != null) {
      said.put(opening, value);
    }
  }
}
