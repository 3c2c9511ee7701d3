package pappus.change;

import java.util.List;
import java.util.Optional;
import pappus.assessment.Assessment;
import pappus.assessment.Supply;
import pappus.catalog.Catalog;
import pappus.catalog.Shelf;
import pappus.part.Parts;
import pappus.ranking.Finder;
import pappus.scenario.MassCap;
import pappus.scenario.Scenario;
import pappus.search.Enumeration;
import pappus.shop.SmallShop;
import pappus.whatif.relax.Demand;
import pappus.whatif.relax.Relaxation;
import pappus.whatif.relax.Relaxer;

/** Scenarios for the few parts of the shop, and what comes of them by trying every build. */
public final class Asking {
  public static final Catalog FEW = SmallShop.few();

  private Asking() {}

  /** Hovering with a strict cap and so much thrust-to-weight; the fields given are added. */
  public static Scenario hover(double grams, double thrust, String fields) {
    return limited(SmallShop.scenario(fields), grams, thrust);
  }

  /** Any scenario with a strict cap and so much thrust-to-weight. */
  static Scenario limited(Scenario scenario, double grams, double thrust) {
    var cap = new MassCap(grams, true, "a law", null);
    return Parts.with(Parts.with(scenario, "massCap", cap), "leastThrustToWeight", thrust);
  }

  public static String budget(double amount) {
    return ", \"budget\": {\"amount\": " + amount + ", \"currency\": \"EUR\"}";
  }

  public static Asked asked(Scenario scenario) {
    return asked(scenario, FEW);
  }

  public static Asked asked(Scenario scenario, Catalog catalog) {
    return new Asked(scenario, new Supply(catalog, Shelf.EMPTY));
  }

  static Finder finder() {
    return new Finder(Finder.Way.AUTO, Finder.EFFORT, Finder.FEWER_MOVES, done -> {});
  }

  public static Relaxation relax(Asked asked) {
    return new Relaxer(asked, finder()).relax();
  }

  public static Relaxation relax(Scenario scenario) {
    return relax(asked(scenario));
  }

  /** The best of all builds, by trying each. */
  public static Optional<Assessment> best(Asked asked) {
    return Enumeration.best(asked.question());
  }

  public static Optional<Assessment> best(Scenario scenario) {
    return best(asked(scenario));
  }

  /** Every build that goes together and flies, whatever it weighs, costs and lifts. */
  public static List<Assessment> together(Scenario scenario) {
    return Enumeration.feasible(asked(limited(scenario, 25_000, 1)).question());
  }

  public static List<String> ids(List<Demand> demands) {
    return demands.stream().map(Demand::id).toList();
  }

  /** The changes that help, as "id from to". */
  public static List<String> changes(Relaxation relaxation) {
    return relaxation.reliefs().stream()
        .map(relief -> (relief.demand().id() + " " + relief.from() + " " + relief.to()).strip())
        .toList();
  }
}
