package pappus.answers.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pappus.answers.build.Journey;
import pappus.answers.build.LinkWords;
import pappus.answers.build.Reasons;
import pappus.answers.build.TurnRound;
import pappus.assessment.Assessment;
import pappus.assessment.flight.FlightCurves;
import pappus.assessment.flight.FlightEstimate;
import pappus.document.Spoken;
import pappus.document.Table;
import pappus.doubt.Band;
import pappus.links.Reach;
import pappus.scenario.Flight.Style;
import pappus.scenario.Scenario;

/** The card for the first flights. */
final class FlightCard {
  private final Scenario scenario;
  private final Assessment assessment;
  private final FlightEstimate flight;
  private final FlightCurves curves;
  private final Band band;
  private final int cells;

  /**
   * @param assessment of a build that flies
   * @param curves of it
   * @param band of it
   */
  FlightCard(Scenario scenario, Assessment assessment, FlightCurves curves, Band band) {
    this.scenario = scenario;
    this.assessment = assessment;
    this.flight = assessment.flight().orElseThrow();
    this.curves = curves;
    this.band = band;
    this.cells = assessment.build().battery().orElseThrow().cellsInSeries();
  }

  List<SheetSection> sections() {
    var sections = new ArrayList<>(List.of(hover(), landmarks()));
    if (flight.course().isPresent()) {
      sections.add(course());
    }
    if (!LinkWords.of(assessment).isEmpty()) {
      sections.add(links());
    }
    sections.add(suspects());
    return sections;
  }

  private SheetSection hover() {
    var rows = new ArrayList<List<Object>>();
    curves.fresh().ifPresent(point -> rows.add(hover("fresh", point)));
    curves.halfEmpty().ifPresent(point -> rows.add(hover("half-empty", point)));
    return new SheetSection(
        "hover",
        "In hover",
        new Table(
            List.of(
                Table.Column.text("pack", "pack"),
                Table.Column.number("throttle %", "throttle_percent", 0),
                Table.Column.number("W", "watts", 0),
                Table.Column.number("A", "amps", 1),
                Table.Column.number("V", "volts", 1),
                Table.Column.number("V a cell", "volts_per_cell", 2)),
            rows),
        hoverWords());
  }

  private List<String> hoverWords() {
    return Reasons.cap(flight)
        .filter(cap -> flight.motorOutputPercent() > 0)
        .map(cap -> List.of(FirstFlight.THROTTLE, cap, stick(flight.motorOutputPercent())))
        .orElse(List.of(FirstFlight.THROTTLE));
  }

  /** What is limited is spread over all of the stick's way. */
  private static String stick(int percent) {
    return "With that limit set, the stick stands at the throttle divided by %s."
        .formatted(Spoken.number(percent / 100.0, 2));
  }

  private List<Object> hover(String pack, FlightCurves.HoverPoint point) {
    return List.of(
        pack,
        100 * point.duty(),
        point.watts(),
        point.amps(),
        point.volts(),
        point.volts() / cells);
  }

  private SheetSection landmarks() {
    var planned = Journey.plannedSeconds(assessment, band);
    var rows = new ArrayList<List<Object>>();
    // Who lands earlier has to turn back earlier: each timer has a turn back of its own.
    Journey.turnBack(assessment, curves, FirstFlight.FIRST_PACKS * band.planWith())
        .ifPresent(at -> rows.add(landmark("turn back, first packs", at, false)));
    curves
        .after(Journey.plannedSeconds(assessment, band, FirstFlight.FIRST_PACKS))
        .ifPresent(at -> rows.add(landmark("land: timer, first packs", at, true)));
    Journey.turnBack(assessment, curves, band.planWith())
        .ifPresent(at -> rows.add(landmark("turn back", at, false)));
    curves.after(planned).ifPresent(at -> rows.add(landmark("land: timer", at, true)));
    curves.land().ifPresent(at -> {
      var row = new ArrayList<Object>(landmark("estimate, no margin", at, false));
      row.set(1, shown(Math.round(at.seconds() / 30) * 30));
      rows.add(row);
    });
    return new SheetSection(
        "landmarks",
        "When to turn back, and when to land",
        new Table(
            List.of(
                Table.Column.text("what", "what"),
                Table.Column.text("min:s", "clock"),
                Table.Column.number("s", "seconds", 0),
                Table.Column.number("V in flight", "volts", 1),
                Table.Column.number("V a cell", "volts_per_cell", 2),
                Table.Column.number("mAh used", "used_mah", 0),
                Table.Column.text("charger puts back, mAh", "charged_mah")),
            rows),
        landmarkWords());
  }

  private List<String> landmarkWords() {
    var profile = flight.course().filter(course -> course.style() == Style.PROFILE);
    if (profile.isEmpty()) {
      return List.of(FirstFlight.LANDMARKS);
    }
    return List.of(
        FirstFlight.LANDMARKS,
        profile.get().stay().isPresent() ? FirstFlight.STAY : FirstFlight.WAY_HOME);
  }

  private List<Object> landmark(String what, FlightCurves.Landmark at, boolean isFlownTo) {
    var used = at.milliampHours();
    var doubt = FirstFlight.chargeDoubt(band) * used;
    return List.of(
        what,
        clock(at.seconds()),
        at.seconds(),
        at.volts(),
        at.volts() / cells,
        used,
        isFlownTo
            ? "%s to %s".formatted(Spoken.number(used - doubt, 0), Spoken.number(used + doubt, 0))
            : "");
  }

  /**
   * As a timer shows it, rounded down to the half minute in which every answer tells a flight, below a minute to ten
   * seconds: what is rounded up lands too late.
   */
  static String clock(double seconds) {
    var step = seconds < 60 ? 10 : 30;
    return shown((long) Math.floor(seconds / step) * step);
  }

  private static String shown(long seconds) {
    return String.format(Locale.ROOT, "%d:%02d", seconds / 60, seconds % 60);
  }

  private SheetSection course() {
    var rows = new ArrayList<List<Object>>();
    flight.course().ifPresent(course -> {
      for (var stretch : course.stretches()) {
        rows.add(List.of(
            stretch.where().isEmpty() ? "the flight" : stretch.where(),
            stretch.cruise().airspeedMPerS(),
            stretch.groundSpeedMPerS(),
            flight.volts() > 0
                ? (Object) stretch.cruise().steady().busPowerW(flight.volts())
                : ""));
      }
    });
    var says = new ArrayList<>(Journey.of(assessment, band.planWith()));
    TurnRound.of(assessment, FirstFlight.FIRST_PACKS * band.planWith())
        .ifPresent(turn -> says.add(
            turn.link().isPresent()
                ? "First packs: turn round there too."
                : "First packs: turn round after %s km.".formatted(Journey.atMost(turn.metres()))));
    says.add("%s W on average. The first flight is a hover all the same."
        .formatted(Spoken.number(flight.flownW(), 0)));
    Journey.power(flight).ifPresent(says::add);
    return new SheetSection(
        "course",
        "As it is flown",
        new Table(
            List.of(
                Table.Column.text("where", "where"),
                Table.Column.number("m/s through the air", "airspeed_m_s", 1),
                Table.Column.number("m/s over ground", "ground_speed_m_s", 1),
                Table.Column.number("W", "watts", 0)),
            rows),
        says);
  }

  private Reach reach() {
    return assessment.fitting().reach();
  }

  private SheetSection links() {
    var rows = reach()
        .links()
        .map(link -> List.<Object>of(
            link.way().label(),
            link.milliwatts(),
            link.lowMetres(),
            link.metres(),
            link.highMetres(),
            link.shadowedMetres(),
            link.budget().mismatchDb()))
        .toList();
    var says = new ArrayList<>(LinkWords.of(assessment));
    if (!rows.isEmpty()) {
      says.set(0, LinkWords.band());
      LinkWords.unknown(assessment).ifPresent(says::add);
    }
    return new SheetSection(
        "links",
        "How far the links reach",
        new Table(
            List.of(
                Table.Column.text("link", "link"),
                Table.Column.number("mW", "milliwatts", 0),
                Table.Column.number("low, m", "low_metres", 0),
                Table.Column.number("likeliest, m", "metres", 0),
                Table.Column.number("high, m", "high_metres", 0),
                Table.Column.number("in a null, m", "shadowed_metres", 0),
                Table.Column.number("dB lost to polarisation", "mismatch_decibels", 0)),
            rows),
        says);
  }

  private SheetSection suspects() {
    var rows = new ArrayList<List<Object>>();
    var basis = new ArrayList<String>();
    for (var one : FirstFlight.suspects(assessment, curves, band, scenario)) {
      rows.add(suspect(one, "higher", one.higher()));
      if (!one.lower().isEmpty()) {
        rows.add(suspect(one, "lower", one.lower()));
      }
      basis.add(one.reading() + " (" + one.basis() + ")");
    }
    return new SheetSection(
        "suspects",
        "When readings differ",
        new Table(
            List.of(
                Table.Column.text("reading", "reading"),
                Table.Column.number("expected", "expected", 1),
                Table.Column.text("", "unit"),
                Table.Column.number("from", "from", 1),
                Table.Column.text("if", "if"),
                Table.Column.text("suspect", "suspect")),
            rows),
        List.of(
            FirstFlight.READINGS, "Basis of the differences: " + String.join("; ", basis) + "."));
  }

  private static List<Object> suspect(FirstFlight.Suspect one, String side, String what) {
    return List.of(one.reading(), one.expected(), one.unit(), one.from(), side, what);
  }

  /** The card of a build, or nothing where it does not fly. */
  static Optional<FlightCard> of(
      Scenario scenario,
      Assessment assessment,
      Optional<FlightCurves> curves,
      Optional<Band> band) {
    return curves.flatMap(
        found -> band.map(sure -> new FlightCard(scenario, assessment, found, sure)));
  }
}
