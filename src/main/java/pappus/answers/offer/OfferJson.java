package pappus.answers.offer;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import pappus.answers.shape.BandJson;
import pappus.answers.shape.FlightJson;
import pappus.files.json.JsonText;
import pappus.offer.Offer;
import pappus.offer.OfferLine;
import pappus.offer.StandIn;
import pappus.part.Role;
import pappus.scenario.Goal;
import pappus.scenario.OwnLine;
import pappus.scenario.Scenario;

/** An offer with every digit. */
public record OfferJson(
    @JsonPropertyDescription("What the answer is, in a word.")
    String status,

    @JsonPropertyDescription("The tool that wrote it, with version and commit.")
    String tool,

    @JsonPropertyDescription("Name of what was asked for.") String scenario,
    @JsonPropertyDescription("Who offers.") String shop,

    @JsonPropertyDescription("Day it was made, as in ISO 8601.")
    String date,

    @JsonPropertyDescription("Last day it holds, as in ISO 8601.")
    String validUntil,

    @JsonPropertyDescription("Three capital letters as in ISO 4217.")
    String currency,

    @JsonPropertyDescription("What is offered.") List<Build> builds,

    @JsonPropertyDescription("Whether prices of lines include the tax.")
    boolean pricesIncludeTax,

    @JsonPropertyDescription("What comes on top of each build.")
    List<Added> added,

    @JsonPropertyDescription("What is not included.") List<String> notIncluded,

    @JsonPropertyDescription(
        "What the scenario buys beside a build otherwise than this offer; left out where there is no such thing.")
    Optional<String> besides,

    @JsonPropertyDescription("To heed before building.") List<String> cautions) {
  /** What comes on top. */
  record Added(
      @JsonPropertyDescription("What it is.") String text,
      @JsonPropertyDescription("Its price, cents.") long cents) {
    static Added of(OwnLine extra) {
      return new Added(extra.text(), extra.cents());
    }
  }

  /** A build that is offered. */
  record Build(
      @JsonPropertyDescription("Letter it is told by.") String letter,
      @JsonPropertyDescription("Rank in the result.") int rank,
      @JsonPropertyDescription("What it is best at.") List<String> labels,

      @JsonPropertyDescription("The build as commands take it.")
      String build,

      @JsonPropertyDescription("Flight to plan with, s.") Optional<Double> planWithSeconds,
      @JsonPropertyDescription("Range to plan with, m.") Optional<Double> planWithMetres,

      @JsonPropertyDescription("Whether it flies better than such aircraft are known to.")
      boolean beyondBelief,

      @JsonPropertyDescription("At take-off, g.") double grams,
      @JsonPropertyDescription("Without tax, cents.") long netCents,
      @JsonPropertyDescription("The tax, cents.") long taxCents,
      @JsonPropertyDescription("With tax, cents.") long grossCents,
      @JsonPropertyDescription("Every part.") List<Line> lines,

      @JsonPropertyDescription("What is to be done about parts that are short.")
      List<Other> standIns) {}

  /** A line of a build. */
  record Line(
      @JsonPropertyDescription("Id of the part.") String part,
      @JsonPropertyDescription("Its name.") String name,
      @JsonPropertyDescription("How many fly.") int pieces,
      @JsonPropertyDescription("How it is sold.") String unit,

      @JsonPropertyDescription("Selling units to buy, spares among them.")
      int units,

      @JsonPropertyDescription("Of those beyond what flies.")
      int spareUnits,

      @JsonPropertyDescription("Price of all of them, cents; 0 for what the customer has.")
      long cents,

      @JsonPropertyDescription("Whether it can be had.") String standing) {
    static Line of(OfferLine line) {
      return new Line(
          line.part().id(),
          line.part().name(),
          line.pieces(),
          OfferReport.unit(line),
          line.units(),
          line.spareUnits(),
          line.cents(),
          FlightJson.key(line.standing()));
    }
  }

  /** What is to be done about a part that is short. */
  record Other(
      @JsonPropertyDescription("Its role; left out for small things that come along.")
      Optional<Role> role,

      @JsonPropertyDescription("Id of the part that is short.")
      String out,

      @JsonPropertyDescription("Selling units of it in stock.")
      int inStock,

      @JsonPropertyDescription("Id of the part that could stand in.")
      Optional<String> in,

      @JsonPropertyDescription("The build with it.") Optional<String> build,

      @JsonPropertyDescription("Flight to plan with then, s.")
      Optional<Double> planWithSeconds,

      @JsonPropertyDescription("Range to plan with then, m.")
      Optional<Double> planWithMetres,

      @JsonPropertyDescription("Mass added, g; below 0 for less.")
      Optional<Double> gramsMore,

      @JsonPropertyDescription("Price of the build then, with tax, cents.")
      Optional<Long> grossCents,

      @JsonPropertyDescription("The same in words.") String text) {
    static Other of(StandIn one, Goal goal, OfferReport report) {
      var swap = one.swap();
      return new Other(
          one.role(),
          one.line().part().id(),
          one.line().inStock(),
          swap.map(found -> found.part().id()),
          swap.map(found -> found.assessment().build().toString()),
          swap.flatMap(found -> BandJson.seconds(one.planWith(), goal)),
          swap.flatMap(found -> BandJson.metres(one.planWith(), goal)),
          swap.map(found -> found.gramsMore()),
          swap.map(found -> one.totals().gross()),
          report.standIn(one));
    }
  }

  /**
   * The whole answer.
   *
   * @param report the same in words
   */
  static String of(Scenario scenario, Offer offer, OfferReport report, String version) {
    var goal = scenario.flightGoal();
    var settings = offer.shop().settings();
    return JsonText.of(new OfferJson(
        "offered",
        version,
        scenario.name(),
        settings.shop(),
        offer.date().toString(),
        offer.validUntil().toString(),
        settings.currency(),
        IntStream.range(0, offer.builds().size())
            .mapToObj(index -> build(offer, index, goal, report))
            .toList(),
        settings.pricesIncludeTax(),
        settings.added().stream().map(Added::of).toList(),
        settings.leftOut(),
        report.besides(),
        report.cautions()));
  }

  private static Build build(Offer offer, int index, Goal goal, OfferReport report) {
    var build = offer.builds().get(index);
    return new Build(
        report.letter(index),
        build.rank(),
        build.labels(),
        build.assessment().build().toString(),
        BandJson.seconds(build.planWith(), goal),
        BandJson.metres(build.planWith(), goal),
        build.assessment().isBeyondBelief(),
        build.assessment().mass().grams(),
        build.totals().net(),
        build.totals().tax(),
        build.totals().gross(),
        build.lines().stream().map(Line::of).toList(),
        build.standIns().stream().map(one -> Other.of(one, goal, report)).toList());
  }
}
