package pappus.answers.shape;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import java.util.Optional;
import pappus.answers.build.Rounds;
import pappus.answers.build.TurnRound;
import pappus.assessment.Assessment;
import pappus.assessment.flight.Course;
import pappus.assessment.flight.Speeds;

/** What is flown where it is not hover. */
record CourseJson(
    @JsonPropertyDescription(
        "The stretch whose limit ends the flight; left out where the charge kept back does.")
    Optional<String> endsWhere,

    @JsonPropertyDescription("Over ground until landing, m; where the flight leads anywhere.")
    Optional<Double> rangeMetres,

    @JsonPropertyDescription(
        "Of a flight out and back: where to turn round, the lesser of what the pack is planned with and of the low end of both links, m.")
    Optional<Double> turnRoundAfterMetres,

    @JsonPropertyDescription("What of them that is: pack, video or control.")
    Optional<String> turnRoundBy,

    @JsonPropertyDescription("Its parts, in the order they are flown.")
    List<Stretch> stretches,

    @JsonPropertyDescription("Where one of them lasts as long as possible.")
    Optional<Stay> stay,

    @JsonPropertyDescription("Of legs that are flown over and over.")
    Optional<Round> rounds,

    @JsonPropertyDescription("What other speeds would need.")
    Optional<Airspeeds> speedsInCalmAir) {
  /** One part of a course, flown steadily. */
  record Stretch(
      @JsonPropertyDescription("Which.") String where,
      @JsonPropertyDescription("Through the air, m/s.") double airspeedMetresPerSecond,

      @JsonPropertyDescription(
          "Over ground along the track, m/s; below 0 if the wind drives it back.")
      double groundSpeedMetresPerSecond,

      @JsonPropertyDescription("Whether it leads from one place to another.")
      boolean coversGround,

      @JsonPropertyDescription("How long it lasts, in each round, s.")
      double seconds,

      @JsonPropertyDescription("Over ground in each round, m.")
      double metres,

      @JsonPropertyDescription("Of the rotors against level, degrees.")
      double tiltDegrees,

      @JsonPropertyDescription("Of one motor, A.") double motorAmps,

      @JsonPropertyDescription("Power at the volts of hover, W.")
      Optional<Double> wattsAtHoverVolts,

      @JsonPropertyDescription(
          "Whether it was computed to need less than hover's least, which is counted.")
      boolean countedAtLeastOfHover) {
    static Stretch of(pappus.assessment.flight.Stretch stretch, double hoverVolts) {
      var cruise = stretch.cruise();
      return new Stretch(
          stretch.where(),
          cruise.airspeedMPerS(),
          stretch.groundSpeedMPerS(),
          stretch.coversGround(),
          stretch.seconds(),
          stretch.metres(),
          StrictMath.toDegrees(cruise.tiltRad()),
          cruise.steady().point().currentA(),
          hoverVolts > 0 ? Optional.of(cruise.steady().busPowerW(hoverVolts)) : Optional.empty(),
          cruise.isClamped());
    }
  }

  /** What lasts as long as possible. */
  record Stay(
      @JsonPropertyDescription("Which.") String where,
      @JsonPropertyDescription("How long, s.") double seconds,

      @JsonPropertyDescription(
          "State of charge kept back for what follows, the reserve included, 0 to 1.")
      double leavesAtCharge,

      @JsonPropertyDescription("Share of its estimate that what follows is planned with, 0 to 1.")
      double planWith) {
    static Stay of(Course course, Course.Stay stay) {
      var stretch = course.stretches().get(stay.stretch());
      return new Stay(stretch.where(), stretch.seconds(), stay.leavesAtCharge(), stay.planWith());
    }
  }

  /** How often all legs are flown. */
  record Round(
      @JsonPropertyDescription("Whole ones.") long whole,
      @JsonPropertyDescription("Whole ones to plan with.") long planWith,

      @JsonPropertyDescription("In the air after the last whole one, s.")
      double leftSeconds,

      @JsonPropertyDescription("How long one lasts, s.") double seconds) {
    static Round of(Rounds rounds) {
      return new Round(
          rounds.whole(), rounds.planned(), rounds.leftSeconds(), rounds.roundSeconds());
    }
  }

  /** Airspeeds and what they need. */
  record Airspeeds(
      @JsonPropertyDescription("Longest flight, m/s.") double bestEnduranceMetresPerSecond,
      @JsonPropertyDescription("Power at it, W.") double bestEnduranceWatts,
      @JsonPropertyDescription("Farthest flight, m/s.") double bestRangeMetresPerSecond,
      @JsonPropertyDescription("Power at it, W.") double bestRangeWatts,

      @JsonPropertyDescription("Shaft power there over that of hover.")
      double bestRangeOfHover,

      @JsonPropertyDescription("Top speed, an upper bound, m/s.")
      double topMetresPerSecondAtMost,

      @JsonPropertyDescription("Power by airspeed.") List<Point> powerAgainstAirspeed) {
    static Airspeeds of(Speeds speeds) {
      return new Airspeeds(
          speeds.bestEnduranceMPerS(),
          speeds.bestEnduranceW(),
          speeds.bestRangeMPerS(),
          speeds.bestRangeW(),
          speeds.bestRangeOfHover(),
          speeds.topMPerS(),
          speeds.curve().stream()
              .map(step -> new Point(step.airspeedMPerS(), step.watts()))
              .toList());
    }
  }

  /** Power at one airspeed. */
  record Point(
      @JsonPropertyDescription("Airspeed, m/s.") double metresPerSecond,
      @JsonPropertyDescription("Power of the pack, W.") double watts) {}

  /**
   * The course of a flight.
   *
   * @param planWith share of the kilometres to plan with
   */
  static CourseJson of(Course course, Assessment assessment, double planWith) {
    var flight = assessment.flight().orElseThrow();
    var turn = TurnRound.of(assessment, planWith);
    var range = Optional.of(course.rangeMetres()).filter(metres -> course.coversGround());
    return new CourseJson(
        course.endsOn().isPresent()
            ? Optional.of(course.stretches().get(course.endsOn().getAsInt()).where())
            : Optional.empty(),
        range,
        turn.map(TurnRound::metres),
        turn.map(TurnRound::by),
        course.stretches().stream()
            .map(stretch -> Stretch.of(stretch, flight.volts()))
            .toList(),
        course.stay().map(stay -> Stay.of(course, stay)),
        Rounds.of(flight, planWith).map(Round::of),
        flight.speeds().map(Airspeeds::of));
  }
}
