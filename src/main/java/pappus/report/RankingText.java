package pappus.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pappus.assessment.Assessment;
import pappus.assessment.FlightEstimate;
import pappus.catalog.Part;
import pappus.catalog.Role;
import pappus.compatibility.StackPlan;
import pappus.doubt.Band;
import pappus.explanation.Cautions;
import pappus.explanation.Journey;
import pappus.explanation.Reasons;
import pappus.explanation.Spoken;
import pappus.ranking.Candidate;
import pappus.ranking.Ranking;
import pappus.scenario.Flight;
import pappus.scenario.Goal;
import pappus.scenario.Scenario;
import pappus.search.Coverage;
import pappus.search.Ending;

/** A ranking, or one build, for a terminal. */
public final class RankingText {
  private static final int REASONED = 3;
  private static final List<Role> NAMED =
      List.of(Role.FRAME, Role.MOTOR, Role.PROPELLER, Role.BATTERY);

  private final Scenario scenario;
  private final int width;

  /**
   * @param width columns of the terminal
   */
  public RankingText(Scenario scenario, int width) {
    this.scenario = scenario;
    this.width = width;
  }

  /** The whole answer. */
  public String of(Ranking ranking) {
    var lines = new ArrayList<String>();
    lines.addAll(heading());
    lines.add("");
    if (ranking.coverage().ending() == Ending.INTERRUPTED) {
      lines.addAll(wrap("You stopped the search early: this is the best it had found by then.", 0));
      lines.add("");
    }
    if (ranking.candidates().isEmpty()) {
      lines.addAll(nothing(ranking));
      return finish(lines);
    }
    lines.add(header());
    var rank = 1;
    for (var candidate : ranking.candidates()) {
      lines.addAll(row(rank++, candidate));
    }
    if (ranking.candidates().stream().anyMatch(candidate -> candidate.equalTo().isPresent())) {
      lines.addAll(wrap(
          "= the shortfall against the first of the group is within the doubt of their difference; * the cheapest of such a group.",
          0));
    }
    if (ranking.candidates().stream()
        .flatMap(candidate -> candidate.assessment().flight().stream())
        .anyMatch(flight -> flight.beyondBelief())) {
      lines.addAll(wrap(
          "? better than such aircraft are known to fly: distrust it until one is measured.", 0));
    }
    for (var i = 0; i < Math.min(REASONED, ranking.candidates().size()); i++) {
      lines.add("");
      lines.addAll(reasons(i, ranking.candidates()));
    }
    lines.add("");
    lines.addAll(wrap(coverage(ranking.coverage(), scenario.goalOrEndurance()), 0));
    lines.add("");
    lines.addAll(cautions(ranking.candidates().get(0).assessment()));
    return finish(lines);
  }

  /** One build, feasible or not. */
  public String of(Assessment assessment, java.util.Optional<Band> band) {
    var lines = new ArrayList<String>();
    lines.addAll(heading());
    lines.add("");
    lines.addAll(wrap(
        assessment.isFeasible()
            ? "This build goes together and keeps every limit."
            : "This build is not a candidate.",
        0));
    for (var limit : assessment.limits()) {
      if (!limit.met()) {
        lines.addAll(wrap("- Limit (" + limit.id() + "): " + Reasons.broken(limit) + ".", 2));
      }
    }
    for (var finding : Reasons.findings(assessment)) {
      lines.addAll(wrap("- " + finding, 2));
    }
    assessment
        .whyNoFlight()
        .ifPresent(why -> lines.addAll(
            wrap("- No flight can be computed: " + why + (why.endsWith(".") ? "" : "."), 2)));
    assessment.flight().ifPresent(flight -> {
      lines.add("");
      lines.addAll(wrap(
          flown(flight)
              + band.map(found -> ", plan with " + planned(found)).orElse("")
              + "; "
              + Spoken.number(assessment.mass().grams(), 0)
              + " g; thrust over weight "
              + Spoken.number(flight.thrustToWeight(), 1)
              + " in mid-flight, "
              + Spoken.number(flight.freshThrustToWeight(), 1)
              + " fresh; "
              + Spoken.number(flight.split().totalW(), 0)
              + " W in hover"
              + flight
                  .course()
                  .map(course -> ", " + Spoken.number(flight.flownW(), 0) + " W in the mean")
                  .orElse("")
              + ".",
          0));
      Journey.of(flight, band.map(Band::planWith).orElse(1.0))
          .forEach(line -> lines.addAll(wrap(line, 0)));
    });
    assessment.flight().ifPresent(flight -> {
      lines.addAll(wrap(Reasons.ending(flight), 0));
      band.ifPresent(found -> lines.addAll(wrap(Reasons.doubt(found), 0)));
      Reasons.cap(flight).ifPresent(cap -> lines.addAll(wrap(cap, 0)));
      Reasons.counted(assessment.build()).forEach(counted -> lines.addAll(wrap("- " + counted, 2)));
      flight.hints().forEach(hint -> lines.addAll(wrap("- " + hint, 2)));
      Journey.power(flight).ifPresent(power -> lines.addAll(wrap(power, 0)));
      Cautions.windings(assessment, scenario).ifPresent(heat -> lines.addAll(wrap(heat, 0)));
    });
    lines.add("");
    details(assessment).forEach(line -> lines.addAll(wrap(line, 2)));
    lines.add("");
    massTable(assessment).forEach(line -> lines.addAll(wrap(line, 19)));
    lines.add("");
    lines.addAll(limitTable(assessment));
    lines.add("");
    lines.addAll(cautions(assessment));
    return finish(lines);
  }

  private String flown(FlightEstimate flight) {
    var minutes = Spoken.minutes(flight.endurance().seconds()) + " min";
    return isForRange()
        ? Journey.kilometres(flight.rangeMetres()) + " km in " + minutes
        : minutes + (flight.course().isPresent() ? " in the air" : " in hover");
  }

  private String planned(Band band) {
    return isForRange()
        ? Journey.kilometres(band.low()) + " (to " + Journey.kilometres(band.high()) + ")"
        : Spoken.minutes(band.low()) + " (to " + Spoken.minutes(band.high()) + ")";
  }

  private List<String> heading() {
    return Heading.of(scenario).stream().flatMap(line -> wrap(line, 0).stream()).toList();
  }

  /** Kilometres and the time they take where builds are ranked by range. */
  private String header() {
    if (isForRange()) {
      return " #      km  plan on    min      g   T/W  mean W  price";
    }
    return scenario.flight().style() == Flight.Style.HOVER
        ? " #     min  plan on      g   T/W  hover W  price"
        : " #     min  plan on      g   T/W   mean W  price";
  }

  private boolean isForRange() {
    return scenario.goalOrEndurance() == Goal.RANGE;
  }

  private List<String> row(int rank, Candidate candidate) {
    var assessment = candidate.assessment();
    var flight = assessment.flight().orElseThrow();
    var mark = candidate.equalTo().isPresent() ? "=" : " ";
    var minutes = Spoken.minutes(assessment.milliseconds() / 1000.0);
    var figures = isForRange()
        ? String.format(
            Locale.ROOT,
            "%6s  %7s  %5s",
            Journey.kilometres(flight.rangeMetres()),
            Journey.kilometres(candidate.band().low()),
            minutes)
        : String.format(
            Locale.ROOT, "%5s  %7s", minutes, Spoken.minutes(candidate.band().low()));
    var numbers = String.format(
        Locale.ROOT,
        isForRange()
            ? "%2d %s %s  %5.0f  %4.1f  %6.0f  %s%s"
            : "%2d %s %s  %5.0f  %4.1f  %7.0f  %s%s",
        rank,
        mark,
        figures,
        assessment.mass().grams(),
        flight.thrustToWeight(),
        flight.flownW(),
        Spoken.price(assessment.cost().cents(), currency(assessment)),
        (candidate.cheapestOfGroup() ? " *" : "") + (flight.beyondBelief() ? " ?" : ""));
    var lines = new ArrayList<String>();
    lines.add(numbers);
    lines.addAll(wrap("     " + names(assessment), 5));
    return lines;
  }

  private static String names(Assessment assessment) {
    return String.join(
        ", ",
        NAMED.stream()
            .flatMap(role -> assessment.build().part(role).stream())
            .map(part -> Spoken.safe(part.name()))
            .toList());
  }

  private List<String> reasons(int index, List<Candidate> candidates) {
    var candidate = candidates.get(index);
    var assessment = candidate.assessment();
    var flight = assessment.flight().orElseThrow();
    var lines = new ArrayList<String>();
    lines.addAll(wrap((index + 1) + ". " + names(assessment), 3));
    if (index + 1 < candidates.size()) {
      lines.addAll(wrap("   " + Reasons.standing(candidate, candidates.get(index + 1)), 3));
    }
    Journey.of(flight, candidate.band().planWith())
        .forEach(line -> lines.addAll(wrap("   " + line, 3)));
    lines.addAll(wrap("   " + Reasons.binding(assessment), 3));
    lines.addAll(wrap("   " + Reasons.ending(flight) + " " + Reasons.doubt(candidate.band()), 3));
    Reasons.countedBriefly(assessment.build())
        .ifPresent(counted -> lines.addAll(wrap("   " + counted, 3)));
    Reasons.cap(flight).ifPresent(cap -> lines.addAll(wrap("   " + cap, 3)));
    lines.addAll(wrap(
        "   Chance of keeping the mass cap: " + chance(assessment) + "; avionics take "
            + Spoken.number(100 * flight.split().avionicsW() / flight.split().totalW(), 0)
            + " % of the power in hover.",
        3));
    lines.addAll(wrap("   With " + accessories(assessment) + ".", 3));
    for (var line : places(assessment)) {
      lines.addAll(wrap("   " + line, 3));
    }
    for (var finding : Reasons.findings(assessment)) {
      lines.addAll(wrap("   - " + finding, 5));
    }
    for (var hint : flight.hints()) {
      lines.addAll(wrap("   - " + hint, 5));
    }
    var variants = candidate.variants();
    if (!variants.isEmpty()) {
      lines.addAll(wrap("   Also, with one part changed: " + variant(assessment, variants), 3));
    }
    return lines;
  }

  private String variant(Assessment row, List<Assessment> variants) {
    var texts = new ArrayList<String>();
    for (var other : variants.subList(0, Math.min(3, variants.size()))) {
      for (var role : NAMED) {
        var theirs = other.build().part(role).orElseThrow();
        if (!row.build().part(role).map(Part::id).equals(java.util.Optional.of(theirs.id()))) {
          texts.add(Spoken.safe(theirs.name())
              + " ("
              + Journey.figure(isForRange(), other.objective() / 1000.0)
              + ", "
              + Spoken.price(other.cost().cents(), currency(other))
              + ")");
        }
      }
    }
    return String.join("; ", texts) + ".";
  }

  private List<String> details(Assessment assessment) {
    var lines = new ArrayList<String>();
    assessment
        .build()
        .parts()
        .forEach((role, part) ->
            lines.add(role.label() + ": " + Spoken.safe(part.name()) + " [" + part.id() + "]"));
    lines.addAll(places(assessment));
    return lines;
  }

  /** The parts that the row does not name. */
  private static String accessories(Assessment assessment) {
    return String.join(
        ", ",
        assessment.build().parts().entrySet().stream()
            .filter(entry -> !NAMED.contains(entry.getKey()))
            .map(entry ->
                entry.getKey().label() + " " + Spoken.safe(entry.getValue().name()))
            .toList());
  }

  private static List<String> places(Assessment assessment) {
    var lines = new ArrayList<String>();
    assessment.fitting().stackPlan().ifPresent(plan -> lines.add(stack(plan) + "."));
    assessment
        .fitting()
        .placing()
        .ifPresent(placing -> lines.add("Pack: its middle "
            + Spoken.number(Math.abs(placing.packXMillimetres()), 0)
            + " mm "
            + (placing.packXMillimetres() >= 0 ? "before" : "behind")
            + " the middle of the motors."));
    return lines;
  }

  private static String stack(StackPlan plan) {
    var columns = plan.columns().stream()
        .map(column -> Spoken.safe(column.position().name())
            + ": "
            + String.join(
                " under ",
                column.layers().stream().map(layer -> layer.what().label()).toList()))
        .toList();
    return "Places: "
        + String.join("; ", columns)
        + plan.height()
            .map(height -> "; plates " + Spoken.number(height.millimetres(), 0) + " mm apart")
            .orElse("; no plate above");
  }

  private List<String> massTable(Assessment assessment) {
    var lines = new ArrayList<String>();
    for (var line : assessment.mass().lines()) {
      lines.addAll(wrap(
          String.format(
              Locale.ROOT,
              "%8.1f g  ±%4.1f  %s%s",
              line.grams(),
              line.doubtGrams(),
              line.pieces() > 1 ? line.pieces() + " × " : "",
              line.part()
                  .map(part -> line.label() + ", " + Spoken.safe(part.name()))
                  .orElse(line.label())),
          18));
    }
    lines.addAll(wrap(
        String.format(
            Locale.ROOT,
            "%8.1f g  ±%4.1f  all-up; %s chance of keeping the cap; costs %s",
            assessment.mass().grams(),
            assessment.mass().doubtGrams(),
            chance(assessment),
            Spoken.price(assessment.cost().cents(), currency(assessment))),
        18));
    return lines;
  }

  private List<String> limitTable(Assessment assessment) {
    var lines = new ArrayList<String>();
    for (var limit : assessment.limits()) {
      if (limit.met() && limit.id().equals("flight-time")) {
        continue;
      }
      lines.addAll(wrap(
          limit.met()
              ? "kept    " + limit.id() + ": " + Reasons.room(limit)
              : "broken  " + limit.id() + ": " + Reasons.broken(limit),
          8));
    }
    return lines;
  }

  private List<String> nothing(Ranking ranking) {
    var lines = new ArrayList<String>();
    lines.addAll(wrap("No build keeps every rule and limit, as far as was looked.", 0));
    ranking.closest().ifPresent(closest -> {
      lines.addAll(wrap("In the way of the one that comes closest:", 0));
      closest.limits().stream()
          .filter(limit -> !limit.met())
          .forEach(limit -> lines.addAll(
              wrap("- Limit (" + limit.id() + "): " + Reasons.broken(limit) + ".", 2)));
      Reasons.findings(closest).forEach(finding -> lines.addAll(wrap("- " + finding, 2)));
      details(closest).forEach(line -> lines.addAll(wrap(line, 2)));
    });
    lines.add("");
    lines.addAll(wrap(coverage(ranking.coverage(), scenario.goalOrEndurance()), 0));
    return lines;
  }

  /** How far the ranking can be trusted. */
  static String coverage(Coverage coverage, Goal goal) {
    var looked = String.format(
        Locale.ROOT,
        (goal == Goal.RANGE ? "Farthest" : "Longest")
            + " found, not proven: %,d builds assessed, %,d of them feasible, out of %.1e ways to fill the roles.",
        coverage.assessed(),
        coverage.feasible(),
        coverage.combinations());
    if (coverage.ending() == Ending.CLOCK) {
      return looked + " The clock ended the search: it may differ on another run.";
    }
    return coverage.ending() == Ending.INTERRUPTED
        ? looked + " You stopped the search: this is the best so far."
        : looked + " It ended after its full number of changes.";
  }

  private List<String> cautions(Assessment assessment) {
    var lines = new ArrayList<String>();
    for (var caution : Cautions.of(assessment, scenario)) {
      lines.addAll(wrap("! " + caution, 2));
    }
    return lines;
  }

  /** Never a hundred: a normal sum promises nothing that far out. */
  private String chance(Assessment assessment) {
    var chance = assessment.mass().chanceUnder(scenario.massCap());
    return chance > 0.99 ? "over 99 %" : Spoken.number(100 * chance, 0) + " %";
  }

  private static String currency(Assessment assessment) {
    return assessment.cost().lines().get(0).part().price().currency();
  }

  private List<String> wrap(String text, int indent) {
    return Wrapped.lines(text, indent, width);
  }

  private static String finish(List<String> lines) {
    return String.join("\n", lines) + "\n";
  }
}
