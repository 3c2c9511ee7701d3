package pappus.answers.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import pappus.assessment.Assessment;
import pappus.assessment.flight.Course;
import pappus.assessment.flight.FlightCurves;
import pappus.assessment.flight.FlightEstimate;
import pappus.assessment.flight.Speeds;
import pappus.assessment.flight.Stretch;
import pappus.document.Spoken;
import pappus.doubt.Band;
import pappus.physics.flight.ForwardFlight;
import pappus.scenario.Flight.Style;

/** What is flown where it is not hover, in sentences. */
public final class Journey {
  private static final double FAR_METRES = 10_000;

  private Journey() {}

  /** Seconds to plan with: the band's low end, or that share of the flight where the band is of a range. */
  public static double plannedSeconds(Assessment assessment, Band band) {
    return plannedSeconds(assessment, band, 1);
  }

  /**
   * The same, of which only a share is flown; what comes before and after a stay is flown whole.
   *
   * @param share 0 to 1
   */
  public static double plannedSeconds(Assessment assessment, Band band, double share) {
    var flight = assessment.flight().orElseThrow();
    var planned = share
        * (flight.isForRange()
            ? band.planWith() * flight.seconds()
            : Math.min(band.low(), flight.seconds()));
    return planned + flight.endurance().seconds() - flight.seconds();
  }

  /**
   * When to turn back: by the pack, or before that where a link of a flight out and back ends first.
   *
   * @param curves of the same assessment
   * @param planWith share of the flight to plan with, 0 to 1
   */
  public static Optional<FlightCurves.Landmark> turnBack(
      Assessment assessment, FlightCurves curves, double planWith) {
    var course = assessment.flight().orElseThrow().course();
    return TurnRound.of(assessment, planWith)
        .filter(turn -> turn.link().isPresent())
        .flatMap(turn -> curves.after(
            turn.metres() / course.orElseThrow().stretches().get(0).groundSpeedMPerS()))
        .or(() -> curves.turnBack(course, planWith));
  }

  /**
   * Sentences on the flight of a build that flies; none on a hover.
   *
   * @param planWith share of the kilometres to plan with, 0 to 1
   */
  public static List<String> of(Assessment assessment, double planWith) {
    var flight = assessment.flight().orElseThrow();
    var sentences = new ArrayList<String>();
    flight.course().ifPresent(course -> {
      sentences.add(flown(course));
      course.stay().ifPresent(stay -> sentences.add(stay(flight, course, stay)));
      range(course, assessment, planWith).ifPresent(sentences::add);
      Rounds.of(flight, planWith).ifPresent(rounds -> sentences.add(rounds.text()));
    });
    flight.speeds().ifPresent(found -> {
      sentences.add(speeds(found));
      if (found.isRangeFlattered()
          && flight.course().filter(Course::coversGround).isPresent()) {
        sentences.add(
            "Best range takes %s of the power of hover here, where multirotors were seen to need %s: expect fewer kilometres."
                .formatted(
                    Spoken.number(found.bestRangeOfHover(), 2), ForwardFlight.BEST_RANGE_OF_HOVER));
      }
    });
    return sentences;
  }

  /**
   * What a build that flies flies, and how far; empty for a hover.
   *
   * @param planWith share of the kilometres to plan with, 0 to 1
   */
  public static Optional<String> briefly(Assessment assessment, double planWith) {
    return assessment
        .flight()
        .orElseThrow()
        .course()
        .map(course -> course.style() == Style.PROFILE
            ? range(course, assessment, planWith).map(Spoken::sentence).orElse("")
            : flown(course)
                + range(course, assessment, planWith).map(said -> " " + said).orElse(""));
  }

  /** Power against airspeed, in a sentence; empty for a hover. */
  public static Optional<String> power(FlightEstimate flight) {
    return flight
        .speeds()
        .filter(speeds -> !speeds.curve().isEmpty())
        .map(speeds -> "Power in level flight, calm air: "
            + speeds.curve().stream()
                .filter(step -> step.airspeedMPerS() % 4 == 0)
                .map(step -> "%s W at %s"
                    .formatted(
                        Spoken.number(step.watts(), 0), Spoken.number(step.airspeedMPerS(), 0)))
                .collect(Collectors.joining(", "))
            + " m/s.");
  }

  private static String flown(Course course) {
    var first = course.stretches().get(0);
    return switch (course.style()) {
      case HOVER -> throw new IllegalStateException("A hover has no course.");
      case LOITER ->
        "It circles at %s m/s through the air."
            .formatted(Spoken.number(first.cruise().airspeedMPerS(), 1));
      case CRUISE ->
        course.stretches().size() == 1
            ? "It flies out and back in calm air at %s m/s."
                .formatted(Spoken.number(first.cruise().airspeedMPerS(), 1))
            : "It flies out against the wind at %s, and back with it at %s."
                .formatted(speeds(first), speeds(course.stretches().get(1)));
      case PROFILE -> profile(course);
    };
  }

  private static String profile(Course course) {
    var legs = new ArrayList<String>();
    for (var stretch : course.stretches()) {
      legs.add(stretch.where().replace("on leg", "leg")
          + " at "
          + (stretch.coversGround()
              ? speeds(stretch)
              : Spoken.number(stretch.cruise().airspeedMPerS(), 1)
                  + " m/s through the air over a spot")
          + ", "
          + (course.stayed().filter(stretch::equals).isPresent() ? "as long as possible, " : "")
          + Spoken.number(stretch.seconds(), 0)
          + " s");
    }
    return (course.stay().isPresent()
            ? "The legs are flown once: %s."
            : "The legs are flown in turn, over and over until the flight ends: %s.")
        .formatted(String.join("; ", legs));
  }

  private static String stay(FlightEstimate flight, Course course, Course.Stay stay) {
    var home = course.secondsAbout(stay, true);
    return Spoken.minutes(flight.endurance().seconds())
        + " min in the air in all. The stay ends with "
        + Spoken.number(100 * stay.leavesAtCharge(), 0)
        + " % of the charge left"
        + (home > 0
            ? ": what follows takes %s s by estimate and is planned as %s s, after which the reserve is left."
                .formatted(Spoken.number(home, 0), Spoken.number(home / stay.planWith(), 0))
            : ", the reserve.");
  }

  private static String speeds(Stretch stretch) {
    return "%s m/s through the air, %s over ground"
        .formatted(
            Spoken.number(stretch.cruise().airspeedMPerS(), 1),
            Spoken.number(stretch.groundSpeedMPerS(), 1));
  }

  private static Optional<String> range(Course course, Assessment assessment, double planWith) {
    var metres = course.rangeMetres();
    if (!course.coversGround() || metres <= 0) {
      return Optional.empty();
    }
    return Optional.of(kilometres(metres)
        + " km over ground in all"
        + TurnRound.of(assessment, planWith).map(turn -> ": " + turn.inWords()).orElse("")
        + ".");
  }

  private static String speeds(Speeds speeds) {
    return "In calm air it stays up longest at %s m/s with %s W and gets farthest at %s m/s with %s W; its top speed is at most %s m/s."
        .formatted(
            Spoken.number(speeds.bestEnduranceMPerS(), 1),
            Spoken.number(speeds.bestEnduranceW(), 0),
            Spoken.number(speeds.bestRangeMPerS(), 1),
            Spoken.number(speeds.bestRangeW(), 0),
            Spoken.number(speeds.topMPerS(), 0));
  }

  /** Kilometres to the tenth, below ten to the twentieth. */
  public static String kilometres(double metres) {
    return metres >= FAR_METRES
        ? Spoken.number(metres / 1000, 1)
        : Spoken.number(StrictMath.rint(metres / 50) / 20, 2);
  }

  /** Rounded down, for what somebody relies on. */
  public static String atMost(double metres) {
    var step = metres >= FAR_METRES ? 100 : 50;
    return kilometres(StrictMath.floor(metres / step) * step);
  }

  /** What builds are ranked by, with its unit: minutes, or kilometres for the goal of range. */
  public static String figure(boolean isForRange, double figure) {
    return isForRange ? kilometres(figure) + " km" : Spoken.minutes(figure) + " min";
  }
}
