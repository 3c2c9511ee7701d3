package pappus.answers.ranking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import pappus.answers.build.BuildLines;
import pappus.answers.build.Figures;
import pappus.answers.build.Heading;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.assessment.LimitKind;
import pappus.assessment.Purpose.Measure;
import pappus.document.Spoken;
import pappus.doubt.Band;
import pappus.part.Part;
import pappus.part.Role;
import pappus.ranking.Picks;
import pappus.ranking.Ranking;
import pappus.scenario.Scenario;

/**
 * Writes the first screen of a ranking's page: the pick, and what giving up a little of it saves.
 *
 * <p>Why: src/site/markdown/decisions.md#a-page-answers-on-its-first-screen
 */
final class FirstScreens {
  private static final int NAMES = 26;

  private final Scenario scenario;
  private final double deviations;
  private final Ranking ranking;
  private final PageBuilds builds;
  private final Figures figures;

  FirstScreens(Assessor assessor, Ranking ranking, PageBuilds builds) {
    this.scenario = assessor.scenario();
    this.deviations = assessor.deviations();
    this.ranking = ranking;
    this.builds = builds;
    this.figures = new Figures(scenario.isForRange());
  }

  /**
   * Of a ranking with a candidate at least.
   *
   * @param told the build in large
   * @param band how sure its flight is
   * @param anchor where its details stand
   */
  FirstScreen of(Assessment told, Band band, String anchor) {
    var picks = ranking.picks();
    var price = steepest(build -> build.cost().cents() / 100.0);
    var mass = steepest(build -> build.mass().grams());
    return new FirstScreen(
        Heading.chips(scenario),
        chosen(told, band, anchor),
        savings(price, mass),
        picks.mostFlight().map(first -> first.kind().word()).orElse(""),
        sentence(
            price,
            "money buys",
            build -> Spoken.price(build.cost().cents(), BuildLines.currency(build)),
            "price"),
        sentence(mass, "mass buys", build -> Spoken.number(build.mass().grams(), 0) + " g", "mass"),
        standing(told));
  }

  private FirstScreen.Chosen chosen(Assessment told, Band band, String anchor) {
    var ordering = Measure.ordering(scenario);
    var unit = " " + figures.unit();
    var price = Spoken.price(told.cost().cents(), BuildLines.currency(told));
    var grams = Spoken.number(told.mass().grams(), 0) + " g";
    var thrust = Spoken.number(told.flight().orElseThrow().thrustToWeight(), 1);
    var beside = new ArrayList<FirstScreen.Told>();
    beside.add(new FirstScreen.Told(
        figures.expected(told) + unit,
        "expected, %s to %s".formatted(figures.planned(told), figures.planned(band.high()))));
    beside.add(new FirstScreen.Told(grams, massRoom(told)));
    beside.add(new FirstScreen.Told(price, priceRoom(told)));
    var figure = switch (ordering) {
      case FLIGHT, PLAN_WITH -> figures.planned(told);
      case PRICE -> price;
      case MASS -> grams;
      case THRUST -> thrust;
      case PIECES -> "" + told.cost().piecesToBuy();
    };
    return new FirstScreen.Chosen(
        builds.number(told),
        anchor,
        figure,
        switch (ordering) {
          case FLIGHT, PLAN_WITH -> figures.unit() + " to plan with";
          case PRICE -> "the cheapest";
          case MASS -> "the lightest";
          case THRUST -> "thrust over weight";
          case PIECES -> "pieces to buy";
        },
        Role.MAIN.stream()
            .flatMap(role -> told.build().part(role).stream())
            .map(Part::name)
            .toList(),
        beside);
  }

  private String massRoom(Assessment build) {
    var left = scenario.massCap().grams() - build.mass().neededMilligrams(deviations) / 1000.0;
    return Spoken.number(left, 0) + " g of room";
  }

  private static String priceRoom(Assessment build) {
    return build.limits().stream()
        .filter(limit -> limit.is(LimitKind.BUDGET))
        .findFirst()
        .map(limit -> Spoken.number(limit.margin(), 0) + " of room")
        .orElse("no budget");
  }

  private String standing(Assessment told) {
    var picks = ranking.picks();
    var pick = picks.of(told);
    if (told.isBeyondBelief()) {
      return Figures.DOUBTED_MEANS;
    }
    if (pick.isPresent() && !pick.get().isProven()) {
      return "Not proven: the best as far as was looked.";
    }
    return "";
  }

  private List<FirstScreen.Saving> savings(
      Optional<Picks.GivenUp> price, Optional<Picks.GivenUp> mass) {
    var picks = ranking.picks();
    if (picks.mostFlight().isEmpty()) {
      return List.of();
    }
    var best = picks.mostFlight().get();
    var naming = new Naming(ranking.candidates(), picks);
    var savings = new ArrayList<FirstScreen.Saving>();
    for (var given : picks.givingUp()) {
      var build = given.build();
      var planWith = given.planWith() / 1000.0;
      var known = naming.known(build);
      savings.add(new FirstScreen.Saving(
          builds.number(build),
          figures.planned(planWith),
          figures.change(best.band().low(), planWith),
          Spoken.priceChange(
              build.cost().cents() - best.build().cost().cents(), BuildLines.currency(build)),
          Spoken.change(build.mass().grams() - best.build().mass().grams(), 0),
          known.isEmpty()
              ? BuildLines.within(BuildLines.otherwise(build, best.build()), NAMES)
              : known,
          price.filter(given::equals).isPresent(),
          mass.filter(given::equals).isPresent()));
    }
    return savings;
  }

  /** What saves most for each step of flight that is told to be given up, the least of them first among equals. */
  private Optional<Picks.GivenUp> steepest(ToDoubleFunction<Assessment> measure) {
    var steepest = Optional.<Picks.GivenUp>empty();
    if (ranking.picks().mostFlight().isEmpty()) {
      return steepest;
    }
    var best = ranking.picks().mostFlight().get();
    var most = 0.0;
    for (var given : ranking.picks().givingUp()) {
      var saved = measure.applyAsDouble(best.build()) - measure.applyAsDouble(given.build());
      var lost = figures.told(best.band().low()) - figures.told(given.planWith() / 1000.0);
      // What is told to lose nothing still loses less than the least step that is told.
      var steepness = saved / Math.max(lost, figures.step() / 2);
      if (saved > 0 && steepness > most) {
        most = steepness;
        steepest = Optional.of(given);
      }
    }
    return steepest;
  }

  /** What more of something brings, told from the steepest saving on. */
  private String sentence(
      Optional<Picks.GivenUp> saving,
      String buys,
      Function<Assessment, String> from,
      String measure) {
    var best = ranking.picks().mostFlight();
    if (best.isEmpty()) {
      return "Flights against " + measure + ".";
    }
    var isProven = ranking.picks().isProven();
    return saving
        .map(given -> "%s %s, %s %s to plan with."
            .formatted(
                isProven ? "Above" : "As far as was looked: above",
                from.apply(given.build()),
                buys,
                figures.lost(best.get().band().low(), given.planWith() / 1000.0)))
        .orElseGet(() -> "%s that plans with four fifths of it saves 2 %% of the %s."
            .formatted(isProven ? "Nothing" : "As far as was looked, nothing", measure));
  }
}
