package pappus.answers.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pappus.answers.build.Journey;
import pappus.assessment.Assessment;
import pappus.assessment.MassTable;
import pappus.assessment.flight.FlightCurves;
import pappus.assessment.flight.FlightEstimate;
import pappus.assessment.flight.PowerSplit;
import pappus.document.Chart;
import pappus.document.Chart.Axis;
import pappus.document.Chart.Mark;
import pappus.document.Chart.Series;
import pappus.document.Chart.Share;
import pappus.document.Spoken;
import pappus.document.Table;
import pappus.doubt.Band;
import pappus.quantity.Units;
import pappus.scenario.Scenario;

/** Pictures of one build that flies: what it weighs, where its power goes, what it does in the air. */
public final class BuildCharts {
  /** What weighs less is one segment with others of its kind. */
  private static final double SMALL_SHARE = 0.03;

  private final Scenario scenario;
  private final Assessment assessment;
  private final FlightEstimate flight;
  private final FlightCurves curves;
  private final Band band;
  private final String prefix;

  /**
   * @param prefix before the names of its charts
   */
  public BuildCharts(
      Scenario scenario, Assessment assessment, FlightCurves curves, Band band, String prefix) {
    this.scenario = scenario;
    this.assessment = assessment;
    this.flight = assessment.flight().orElseThrow();
    this.curves = curves;
    this.band = band;
    this.prefix = prefix;
  }

  /** What it weighs, and where its power goes. */
  public List<Chart> bars() {
    return List.of(mass(), power());
  }

  /** What it does in the air, as far as it can be computed. */
  public List<Chart> inTheAir() {
    var charts = new ArrayList<Chart>();
    if (!curves.flight().isEmpty()) {
      charts.add(volts());
    }
    if (!curves.throttle().isEmpty()) {
      charts.add(throttle());
    }
    if (!curves.power().isEmpty()) {
      charts.add(airspeed());
    }
    return charts;
  }

  private Chart mass() {
    var table = assessment.mass();
    var rows = new ArrayList<List<Object>>();
    for (var line : table.lines()) {
      rows.add(List.of(
          line.label(),
          line.part().map(part -> part.name()).orElse(""),
          line.pieces(),
          line.grams(),
          line.doubtGrams()));
    }
    rows.add(List.of("all-up", "", "", table.grams(), table.doubtGrams()));
    var cap = scenario.massCap();
    return Chart.bar(
        prefix + "mass",
        "What it weighs",
        "%s g all-up, ± %s g one standard deviation; the cap is %s g."
            .formatted(
                Spoken.number(table.grams(), 1),
                Spoken.number(table.doubtGrams(), 1),
                Spoken.number(cap.grams(), 1)),
        Axis.fromZero("mass", "g", 1),
        shares(table.lines(), table.grams()),
        table.grams(),
        table.doubtGrams(),
        List.of(Mark.upright(cap.grams(), "cap " + Spoken.number(cap.grams(), 1) + " g")),
        new Table(
            List.of(
                Table.Column.text("what", "what"),
                Table.Column.text("part", "part"),
                Table.Column.number("pieces", "pieces", 0),
                Table.Column.number("g", "grams", 1),
                Table.Column.number("± g", "doubt_grams", 2)),
            rows));
  }

  /** The heavy ones by themselves, heaviest first; what is cut off lessens the small things. */
  private static List<Share> shares(List<MassTable.Line> lines, double all) {
    var shares = new ArrayList<Share>();
    var small = 0.0;
    for (var line : lines) {
      if (line.grams() >= SMALL_SHARE * all) {
        shares.add(new Share(
            (line.pieces() > 1 ? line.pieces() + " × " : "") + line.label(), line.grams()));
      } else {
        small += line.grams();
      }
    }
    shares.sort(Comparator.comparingDouble((Share share) -> -share.value()));
    if (small > 0) {
      shares.add(new Share("small things", small));
    }
    return shares;
  }

  private Chart power() {
    PowerSplit split = flight.split();
    var shares = List.of(
        new Share("holding it up", split.inducedW()),
        new Share("drag of the blades", split.profileW()),
        new Share("motors", split.motorW()),
        new Share("controllers", split.controllerW()),
        new Share("avionics", split.avionicsW()));
    var rows = new ArrayList<List<Object>>();
    for (var share : shares) {
      rows.add(List.of(share.name(), share.value(), 100 * share.value() / split.totalW()));
    }
    rows.add(List.of("from the battery", split.totalW(), 100));
    return Chart.bar(
        prefix + "power",
        "Where the power goes in hover",
        "%s W at half charge, of which %s %% hold it up."
            .formatted(
                Spoken.number(split.totalW(), 1),
                Spoken.number(100 * split.inducedW() / split.totalW(), 0)),
        Axis.fromZero("power from the battery", "W", 2),
        shares,
        split.totalW(),
        0,
        List.of(),
        new Table(
            List.of(
                Table.Column.text("what for", "what_for"),
                Table.Column.number("W", "watts", 2),
                Table.Column.number("%", "percent", 1)),
            rows));
  }

  private Chart volts() {
    var rows = new ArrayList<List<Object>>();
    for (var moment : curves.flight()) {
      rows.add(List.of(
          moment.seconds() / 60,
          moment.volts(),
          moment.currentA(),
          moment.usedCoulomb() / 3.6,
          100 * moment.charge()));
    }
    var marks = new ArrayList<Mark>();
    var said = new ArrayList<String>();
    Journey.turnBack(assessment, curves, band.planWith())
        .ifPresent(home -> mark("turn back", home, marks, said));
    curves
        .after(Journey.plannedSeconds(assessment, band))
        .ifPresent(end -> mark("land", end, marks, said));
    var cells = assessment.build().battery().orElseThrow().cellsInSeries();
    return Chart.xy(
        prefix + "volts",
        "Volts of the pack over the flight",
        "%s; volts in flight, %s cells.".formatted(Spoken.sentence(String.join(", ", said)), cells),
        Axis.fromZero("time in the air", "min", 1),
        Axis.of("pack", "V", 2),
        List.of(Series.ofTable("pack", 0, 1)),
        marks,
        new Table(
            List.of(
                Table.Column.number("min", "minutes", 2),
                Table.Column.number("V", "volts", 2),
                Table.Column.number("A", "amps", 2),
                Table.Column.number("mAh used", "used_mah", 0),
                Table.Column.number("charge %", "charge_percent", 0)),
            rows));
  }

  private static void mark(
      String what, FlightCurves.Landmark moment, List<Mark> marks, List<String> said) {
    var volts = Spoken.number(moment.volts(), 2) + " V";
    marks.add(Mark.upright(moment.seconds() / 60, what + ", " + volts));
    said.add(
        "%s at %s after %s min".formatted(what, volts, Spoken.number(moment.seconds() / 60, 1)));
  }

  private Chart throttle() {
    var kept = 1 - assessment.flight().orElseThrow().thrustLost();
    var grams = assessment.mass().grams();
    var rows = new ArrayList<List<Object>>();
    for (var one : curves.throttle()) {
      var thrust = 1000 * kept * one.thrustN() / Units.GRAVITY_M_PER_S2;
      rows.add(
          List.of(100 * one.duty(), thrust, thrust / grams, one.busCurrentA(), one.busVolts()));
    }
    var hover = 100 * flight.duty();
    return Chart.xy(
        prefix + "throttle",
        "Thrust against throttle",
        "It hovers at %s %% of throttle; the most is %s times its weight, at the charge at which thrust is judged."
            .formatted(Spoken.number(hover, 0), Spoken.number(flight.thrustToWeight(), 1)),
        Axis.fromZero("throttle", "%", 0),
        Axis.fromZero("thrust", "gf", 0),
        List.of(Series.ofTable("thrust of all motors", 0, 1)),
        List.of(
            Mark.upright(hover, "hover"),
            Mark.across(grams, "weight"),
            Mark.across(
                scenario.leastThrustToWeight() * grams,
                "asked for, %s of its weight"
                    .formatted(Spoken.number(scenario.leastThrustToWeight(), 1)))),
        new Table(
            List.of(
                Table.Column.number("throttle %", "throttle_percent", 1),
                Table.Column.number("gf", "thrust_gf", 0),
                Table.Column.number("over weight", "over_weight", 2),
                Table.Column.number("A", "amps", 1),
                Table.Column.number("V", "volts", 2)),
            rows));
  }

  private Chart airspeed() {
    var rows = new ArrayList<List<Object>>();
    for (var step : curves.power()) {
      rows.add(List.of(step.airspeedMPerS(), 3.6 * step.airspeedMPerS(), step.watts()));
    }
    var marks = new ArrayList<Mark>();
    flight.speeds().ifPresent(speeds -> {
      marks.add(Mark.upright(speeds.bestEnduranceMPerS(), "stays up longest"));
      marks.add(Mark.upright(speeds.bestRangeMPerS(), "gets farthest"));
    });
    return Chart.xy(
        prefix + "airspeed",
        "Power against airspeed",
        "In calm air, from standing to the top speed, which is an upper bound; the least tried part of the physics.",
        Axis.fromZero("airspeed", "m/s", 1),
        Axis.fromZero("power from the battery", "W", 1),
        List.of(Series.ofTable("power", 0, 2)),
        marks,
        new Table(
            List.of(
                Table.Column.number("m/s", "airspeed_m_per_s", 1),
                Table.Column.number("km/h", "airspeed_km_per_h", 0),
                Table.Column.number("W", "watts", 1)),
            rows));
  }
}
