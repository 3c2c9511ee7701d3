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
import pappus.offer.OfferedBuild;
import pappus.offer.StandIn;
import pappus.part.Part;
import pappus.part.Role;
import pappus.scenario.OwnLine;

/** An offer with every digit. */
public record OfferJson(
    @JsonPropertyDescription("What the answer is, in a word.")
    String status,

    @JsonPropertyDescription("The tool that wrote it, with version and commit.")
    String tool,

    @JsonPropertyDescription("Who offers.") String shop,
    @JsonPropertyDescription("Whom it is for.") Optional<String> customer,

    @JsonPropertyDescription("By which the shop files it.") Optional<String> number,

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

    @JsonPropertyDescription("What scenarios buy beside a build otherwise than this offer.")
    List<String> besides,

    @JsonPropertyDescription("To heed by who buys.") List<String> cautions) {
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

      @JsonPropertyDescription("Name of what was asked for.")
      String scenario,

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

      @JsonPropertyDescription("With tax once stand-ins take their places, cents.")
      long deliveredCents,

      @JsonPropertyDescription("Ids of what has to be ordered first, spares aside.")
      List<String> toOrder,

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
    static Other of(StandIn one, OfferedBuild build, OfferReport report) {
      var goal = build.scenario().flightGoal();
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
          report.standIn(one, build));
    }
  }

  /**
   * The whole answer.
   *
   * @param report the same in words
   */
  static String of(Offer offer, OfferReport report, String version) {
    var settings = offer.shop().settings();
    return JsonText.of(new OfferJson(
        "offered",
        version,
        settings.shop(),
        offer.customer(),
        offer.number(),
        offer.date().toString(),
        offer.validUntil().toString(),
        settings.currency(),
        IntStream.range(0, offer.builds().size())
            .mapToObj(index -> build(offer, index, report))
            .toList(),
        settings.pricesIncludeTax(),
        settings.added().stream().map(Added::of).toList(),
        settings.leftOut(),
        report.besides(),
        report.cautions()));
  }

  private static Build build(Offer offer, int index, OfferReport report) {
    var build = offer.builds().get(index);
    var goal = build.scenario().flightGoal();
    return new Build(
        report.letter(index),
        build.scenario().name(),
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
        build.deliveredTotals().gross(),
        build.toOrder().stream().map(Part::id).toList(),
        build.lines().stream().map(Line::of).toList(),
        build.standIns().stream().map(one -> Other.of(one, build, report)).toList());
  }
}
