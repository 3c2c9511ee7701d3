package pappus.answers.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import pappus.assessment.Assessment;
import pappus.assessment.Finding;
import pappus.assessment.Limit;
import pappus.assessment.LimitKind;
import pappus.assessment.flight.Course;
import pappus.assessment.flight.FlightEstimate;
import pappus.document.Spoken;
import pappus.doubt.Band;
import pappus.evidence.BuildFigures;
import pappus.evidence.Figure;
import pappus.evidence.Reason;
import pappus.evidence.Weighing;
import pappus.part.Board;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Role;
import pappus.physics.flight.Ending;
import pappus.physics.flight.FullThrottle;
import pappus.physics.flight.ThrottleLimit;
import pappus.quantity.Sentence;
import pappus.ranking.Candidate;
import pappus.reliance.Doubt;
import pappus.scenario.Waiver;

/** Why a build stands where it stands, in sentences. */
public final class Reasons {
  private static final int MOST_TWINS = 3;

  /** Figures that count otherwise than stated are told from so much on. */
  private static final double TOLD_CHANGE = 0.01;

  private Reasons() {}

  /** Which limit has the least room. */
  public static String binding(Assessment assessment) {
    return assessment
        .tightest()
        .map(limit -> limit.met()
            ? "Tightest limit: " + limit.label() + ", " + room(limit) + "."
            : "Broken: " + broken(limit) + ".")
        .orElse("Nothing could be computed.");
  }

  /** The same in few words. */
  public static String leastRoom(Assessment assessment) {
    return assessment
        .tightest()
        .map(limit -> limit.met()
            ? "Tightest: %s, %s of at %s %s."
                .formatted(
                    limit.is(LimitKind.BUDGET)
                        ? "price"
                        : limit.is(LimitKind.THRUST_TO_WEIGHT) ? "T/W" : limit.label(),
                    amount(limit, limit.value()),
                    limit.most() ? "most" : "least",
                    amount(limit, limit.bound()))
            : "Broken: " + broken(limit) + ".")
        .orElse("Nothing could be computed.");
  }

  /** How much of a limit is used, and how much room is left. */
  public static String room(Limit limit) {
    var used = amount(limit, limit.value());
    var isNone = limit.most() && used.equals(amount(limit, 0));
    return (isNone ? "none" : used)
        + " of at "
        + (limit.most() ? "most " : "least ")
        + amount(limit, limit.bound())
        + (isNone ? "" : ", " + amount(limit, limit.margin()) + " to spare");
  }

  /** What is wrong with a broken limit, with both numbers. */
  public static String broken(Limit limit) {
    return limit.label()
        + " is "
        + amount(limit, limit.value())
        + ", but must be at "
        + (limit.most() ? "most " : "least ")
        + amount(limit, limit.bound());
  }

  private static String amount(Limit limit, double value) {
    var decimals = limit.isCount() ? 0 : Math.abs(value) >= 100 ? 1 : 2;
    var number = Spoken.number(value, decimals);
    if (limit.isCount() && Math.abs(value) == 1) {
      return number + " piece";
    }
    return limit.unit().isEmpty() ? number : number + " " + limit.unit();
  }

  /** What ends the flight, and on which of several stretches. */
  public static String ending(FlightEstimate flight) {
    var sentence = ending(flight.endurance().ending(), flight.course().isEmpty());
    var course = flight.course().filter(flown -> flown.stretches().size() > 1);
    if (course.flatMap(Course::stay).isPresent() && flight.seconds() > 0) {
      sentence = flight.endurance().ending() == Ending.RESERVE
          ? "The stay ends at the charge kept for the legs after it plus the reserve."
          : sentence.replaceFirst("The flight ends", "The stay ends");
    }
    if (course.isEmpty() || course.get().endsOn().isEmpty()) {
      return sentence;
    }
    var where = course.get().stretches().get(course.get().endsOn().getAsInt()).where();
    return sentence.substring(0, sentence.length() - 1) + ", " + where + ".";
  }

  /** What ends the flight, in few words. */
  public static String endsBriefly(FlightEstimate flight) {
    return switch (flight.endurance().ending()) {
      case RESERVE -> "Ends at the reserve.";
      case LANDING_VOLTS -> "Ends at landing voltage, ahead of the reserve.";
      default -> ending(flight);
    };
  }

  private static String ending(Ending ending, boolean hovers) {
    return switch (ending) {
      case RESERVE -> "The flight ends at the reserve.";
      case LANDING_VOLTS -> "The flight ends at landing voltage, ahead of the reserve.";
      case FULL_DUTY ->
        "The flight ends when full throttle no longer holds the "
            + (hovers ? "hover." : "airspeed.");
      case MOTOR_CURRENT -> "No flight: it exceeds the motors' continuous current.";
      case CONTROLLER_CURRENT -> "No flight: it exceeds the controllers' continuous current.";
      case PACK_CURRENT -> "The flight ends at the continuous current of the pack.";
      case CONNECTOR_CURRENT -> "The flight ends at the continuous current of the plug.";
      case LEAD_CURRENT -> "The flight ends at the continuous current of the leads.";
      case UNDELIVERABLE -> "The flight ends when the pack can no longer deliver the power.";
      case TIME -> "The flight ends with the time asked for.";
      case WIND -> "No flight: it makes no headway against the wind.";
    };
  }

  /** To what motor output has to be limited, and for whose sake, where full throttle overtaxes a part. */
  public static Optional<String> cap(FlightEstimate flight) {
    return flight.capped().map(least -> {
      var isFresh = flight.fresh().limit() != ThrottleLimit.FULL_DUTY
          && flight.fresh().duty() <= flight.full().duty();
      return "Limit motor output to %s %% in the flight firmware: above that, %s %s.%s"
          .formatted(
              flight.motorOutputPercent(),
              overtaxed(least.limit()),
              isFresh ? "on a fresh pack" : "in mid-flight",
              isFresh ? inMidFlight(flight.full()) : "");
    });
  }

  private static String overtaxed(ThrottleLimit limit) {
    return switch (limit) {
      case FULL_DUTY -> "nothing is overtaxed";
      case MOTOR -> "the motors exceed their burst current";
      case CONTROLLER -> "the controllers exceed their burst current";
      case PACK -> "the pack exceeds its burst current";
      case CONNECTOR -> "the plug exceeds its burst current";
      case LEAD -> "the leads exceed their burst current";
      case FLOOR_VOLTS -> "the pack sags below its floor volts";
    };
  }

  /** Thrust-to-weight is not that of the limit set for a fresh pack. */
  private static String inMidFlight(FullThrottle full) {
    return full.limit() == ThrottleLimit.FULL_DUTY
        ? " In mid-flight, where thrust is judged, the parts stand full throttle."
        : " In mid-flight, where thrust is judged, that is so above %s %%."
            .formatted((int) (100 * full.duty()));
  }

  /** Which parts could stand in the place of one, since they are the same in every number; a few of many. */
  public static String twins(Part part, List<Part> others) {
    var names = new ArrayList<String>();
    others.stream()
        .limit(MOST_TWINS)
        .forEach(other -> names.add(other.name() + " (" + other.id() + ")"));
    var more = others.size() - names.size();
    return part.name()
        + " has the same figures as "
        + String.join(", ", names)
        + (more > 0 ? " and " + more + " more: take any." : ": take either.");
  }

  /**
   * Why a candidate stands before the next one.
   *
   * @param goal what builds are ranked by
   */
  public static String standing(Candidate candidate, Candidate next, GoalWords goal) {
    var mine = candidate.assessment();
    var theirs = next.assessment();
    var gained = Assessment.figure(mine.flown() - theirs.flown());
    var forRange = mine.flight().filter(FlightEstimate::isForRange).isPresent();
    var hovers = mine.flight().filter(flight -> flight.course().isPresent()).isEmpty();
    var text = new StringBuilder("Ahead of the next by ");
    text.append(
        !goal.isOfFlight()
            ? goal.margin(mine, theirs)
            : forRange
                ? Spoken.number(gained, gained < 10 ? 1 : 0) + " m"
                : gained >= 60
                    ? Spoken.minutes(gained) + " min"
                    : Spoken.number(gained, gained < 10 ? 1 : 0) + " s");
    var facts = new ArrayList<String>();
    if (!goal.isOfFlight()) {
      facts.add("flies " + new Figures(forRange).against(theirs, mine));
    }
    compare(facts, theirs.mass().grams() - mine.mass().grams(), 0.5, 0, " g lighter", " g heavier");
    if (mine.flight().isPresent() && theirs.flight().isPresent()) {
      compare(
          facts,
          theirs.flight().get().flownW() - mine.flight().get().flownW(),
          0.05,
          1,
          hovers ? " W less in hover" : " W less in flight",
          hovers ? " W more in hover" : " W more in flight");
    }
    compare(
        facts,
        (theirs.cost().cents() - mine.cost().cents()) / 100.0,
        0.5,
        0,
        " " + currency(mine) + " cheaper",
        " " + currency(mine) + " dearer");
    var changed = Role.MAIN.stream()
        .filter(role -> !mine.build()
            .part(role)
            .map(Part::id)
            .equals(theirs.build().part(role).map(Part::id)))
        .map(Role::label)
        .toList();
    if (!facts.isEmpty()) {
      text.append(": ").append(String.join(", ", facts));
    }
    text.append("; differs in ").append(String.join(", ", changed)).append('.');
    if (!goal.isOfFlight()) {
      return text.toString();
    }
    var doubt = candidate.band().deviationOfDifference(next.band());
    if (Math.abs(candidate.band().estimate() - next.band().estimate()) < doubt) {
      text.append(" Too close to call.");
    }
    var usual = withUsualBoard(candidate);
    if (usual < candidate.band().estimate() && usual < withUsualBoard(next)) {
      text.append(
              " It ranks here on its board's stated part-load loss; at the usual loss it would reach ")
          .append(
              forRange ? Spoken.number(usual / 1000, 1) + " km." : Spoken.minutes(usual) + " min.");
    }
    return text.toString();
  }

  /** What a candidate would reach with controllers as usual, to first order; as it is, if its board states no loss. */
  private static double withUsualBoard(Candidate candidate) {
    var loss = candidate.assessment().build().board().map(Board::controllerLoss);
    var share = candidate
        .assessment()
        .flight()
        .orElseThrow()
        .figures()
        .board()
        .rippleShare(Weighing.EXPECTED);
    var estimate = candidate.band().estimate();
    return loss.isEmpty()
        ? estimate
        : candidate.band().contributions().stream()
            .filter(one -> one.doubt() == Doubt.LOSS)
            .mapToDouble(
                one -> estimate - one.effect() / one.deviation() * Math.log(share.orElse(1)))
            .findFirst()
            .orElse(estimate);
  }

  private static void compare(
      List<String> facts, double better, double least, int decimals, String good, String bad) {
    if (Math.abs(better) >= least) {
      facts.add(Spoken.number(Math.abs(better), decimals) + (better > 0 ? good : bad));
    }
  }

  /** Of its prices. */
  public static String currency(Assessment assessment) {
    return assessment.cost().lines().isEmpty()
        ? ""
        : assessment.cost().lines().get(0).part().price().currency();
  }

  /** What makes the endurance unsure, the largest first, and what measurement would help. */
  public static String doubt(Band band) {
    var largest =
        band.largestFirst().stream().limit(2).map(one -> one.doubt().label()).toList();
    var text = new StringBuilder(
        "Band ±" + percent(band.halfWidth()) + " %; mostly " + String.join(" and ", largest) + ".");
    // What leaves the band as it is told is not worth a word.
    var worth = band.worthMeasuring().stream()
        .filter(one -> !percent(band.halfWidthAfter(one)).equals(percent(band.halfWidth())))
        .toList();
    for (var i = 0; i < worth.size(); i++) {
      var after = percent(band.halfWidthAfter(worth.get(i)));
      text.append(
          i == 0
              ? " " + Spoken.sentence(worth.get(i).label()) + " would take it to ±" + after + " %"
              : ", " + worth.get(i).label() + " to ±" + after + " %");
    }
    return text.append(worth.isEmpty() ? "" : ".").toString();
  }

  private static String percent(double share) {
    return Spoken.number(100 * share, 0);
  }

  /** What stands above {@link #counted}: what would settle them is the same for all. */
  public static final String COUNTED =
      "Figures not counted as listed; thrust-stand rows would settle them, a discharge those of the pack:";

  /** Figures of a build that count otherwise than their records state, and why. */
  public static List<String> counted(Build build, BuildFigures figures) {
    return figures.all(build).stream()
        .filter(one -> Math.abs(one.figure().change() - 1) >= TOLD_CHANGE)
        .map(one -> counted(one.part(), one.figure()))
        .toList();
  }

  /** In one line, each figure that counts otherwise than stated and as what; empty if all count as stated. */
  public static Optional<String> countedBriefly(Build build, BuildFigures figures) {
    var changes = figures.all(build).stream()
        .map(BuildFigures.Of::figure)
        .filter(figure -> Math.abs(figure.change() - 1) >= TOLD_CHANGE)
        .map(figure -> String.format(
            Locale.ROOT,
            "%s %s as %s by %s",
            figure.name(),
            figure(figure.stated().orElse(figure.posterior()), figure.unit()),
            figure(figure.posterior(), ""),
            drawnBy(figure)))
        .toList();
    return changes.isEmpty()
        ? Optional.empty()
        : Optional.of("Not counted as listed: " + String.join("; ", changes) + ".");
  }

  private static String counted(Part part, Figure figure) {
    return String.format(
        Locale.ROOT,
        "%s, %s: %s listed, %s counted, %s usual; drawn by %s; doubt %s %%, spread of its class %s %%.",
        part.name(),
        figure.name(),
        figure(figure.stated().orElse(figure.posterior()), figure.unit()),
        figure(figure.posterior(), figure.unit()),
        figure(figure.prior(), ""),
        drawnBy(figure),
        percent(figure.doubt()),
        percent(figure.priorDeviation()));
  }

  private static String drawnBy(Figure figure) {
    var words = figure.drawnBy().stream().map(Reason::words).toList();
    return words.isEmpty() ? Reason.CLASS.words() : String.join(", ", words);
  }

  private static String figure(double value, String unit) {
    var decimals = value >= 100 ? 0 : value >= 10 ? 1 : value >= 1 ? 2 : 3;
    return Spoken.number(value, decimals) + (unit.isEmpty() ? "" : " " + unit);
  }

  /** What a rule has to say besides "fits". */
  static String said(Finding finding) {
    return finding
        .verdict()
        .match(
            fits -> "",
            clash -> clash.reason().text().replaceAll("\\.$", ""),
            missing -> "not known: " + missing.missingFact().text());
  }

  /** Rules that are broken and set aside, with why. */
  public static List<String> setAside(Assessment assessment) {
    return assessment.findings().stream()
        .filter(finding -> finding.waiver().isPresent())
        .map(finding -> "Set aside (%s, %s): %s."
            .formatted(
                finding.rule(), finding.waiver().map(Waiver::reason).orElse(""), said(finding)))
        .toList();
  }

  /** Everything fit rules have to say besides "fits": clashes first, then what is not known, then notes. */
  public static List<String> findings(Assessment assessment) {
    var clashes = assessment.findings().stream().flatMap(Reasons::clash);
    return Stream.of(clashes, notKnown(assessment).stream(), notes(assessment).stream())
        .flatMap(texts -> texts)
        .toList();
  }

  private static Stream<String> clash(Finding finding) {
    return finding
        .verdict()
        .match(
            fits -> Stream.empty(),
            clash -> Stream.of(finding
                    .waiver()
                    .map(waiver -> "Set aside (" + finding.rule() + ", " + waiver.reason() + "): ")
                    .orElse("Clash (" + finding.rule() + "): ")
                + clash.reason().text()),
            missing -> Stream.empty());
  }

  /** What the catalogue does not say and fit rules ask: to be looked up before anything is bought. */
  public static List<String> notKnown(Assessment assessment) {
    return assessment.findings().stream()
        .flatMap(finding -> finding
            .verdict()
            .<Stream<String>>match(
                fits -> Stream.empty(),
                clash -> Stream.empty(),
                missing -> Stream.of("Not known (" + finding.rule() + "): "
                    + missing.missingFact().text() + ".")))
        .toList();
  }

  /** What is to be minded where parts fit, or were let pass. */
  public static List<String> toMind(Assessment assessment) {
    return Stream.concat(
            assessment.findings().stream().flatMap(Reasons::clash), notes(assessment).stream())
        .toList();
  }

  private static List<String> notes(Assessment assessment) {
    return assessment.findings().stream()
        .flatMap(finding -> finding
            .verdict()
            .<Stream<String>>match(
                fits -> fits.notes().stream().map(Sentence::text),
                clash -> Stream.empty(),
                missing -> Stream.empty()))
        .toList();
  }
}
