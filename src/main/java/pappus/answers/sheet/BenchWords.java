package pappus.answers.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import pappus.answers.build.Reasons;
import pappus.assessment.Assessment;
import pappus.assessment.flight.Draw;
import pappus.assessment.flight.FlightEstimate;
import pappus.document.Spoken;
import pappus.fitting.Hardware;
import pappus.fitting.Placing;
import pappus.fitting.PowerPlan;
import pappus.fitting.StackPlan;
import pappus.part.Battery;
import pappus.part.Frame;
import pappus.part.Part;
import pappus.part.Role;
import pappus.part.Screw;
import pappus.part.Sundry;
import pappus.scenario.Scenario;

/** What is said at the bench: notes below the tables, and the first power-up. */
public final class BenchWords {
  /** Common practice, no published source. */
  public static final String SCREWS =
      "Try each motor screw before you tighten it: too long and it cuts the winding, too short and it strips. Turn every bell by hand after tightening.";

  public static final String PORTS =
      "Ports are counted here, not named: the board's manual says where each one is. One direction: only the board's TX is used.";

  public static final String RAILS =
      "A rail carries its consumers and a fifth more (common practice, no published source). Watts are at the consumer's input, at the radio power that the scenario names.";

  /** The lengths are the planner's: common practice, no published source. */
  public static final String WIRES =
      "Motor wires reach along half the diagonal with 15 mm to spare (common practice, no published source). Hold a wire to its arm before you cut it. Keep pack leads short.";

  public static final String CONNECTORS =
      "Check polarity with a meter on both halves before they ever meet. Amps are what such plugs carry continuously (common practice, no published source).";

  public static final String ANTENNAS =
      "Plugs that look alike need not mate; opposite circular hands lose most of the signal.";

  public static final String WEIGHING =
      "Weigh small parts ten at a time. Write the grams of each line, all pieces together, into weighing.csv: weigh --masses reads it and skips blanks.";

  public static final String SPARES =
      "Without spares: a second set of propellers and one motor are usual (common practice, no published source). Prices are those of the catalogue.";

  /** Twice what is expected, to the next half ampere, and one at least: engineering estimate. */
  private static final double LIMITER_TIMES = 2;

  /** A rail further off than this is not right: engineering estimate. */
  private static final double RAIL_SHARE = 0.05;

  private BenchWords() {}

  /** What a slice of a stack that is no part is for. */
  public static String filling(StackPlan.Filling filling) {
    return switch (filling) {
      case SPACER_TO_CARBON -> "spacers, so that nothing touches the carbon";
      case SPACER_BETWEEN_BOARDS -> "spacers between boards";
      case ADAPTER -> "adapter";
      case BOARD -> "board";
      case PLUG_ROOM -> "room for plugs";
      case SPARE -> "kept free";
    };
  }

  /** How high a column is, and what is left above it. */
  public static String height(StackPlan.Column column, Optional<Frame.PlateHeight> height) {
    var needed = "The %s column needs %s mm"
        .formatted(column.position().name(), millimetres(column.neededMillimetres()));
    if (column.position().open() || height.isEmpty()) {
      return needed + "; no plate is above it.";
    }
    var between = height.get().millimetres();
    return needed
        + "; order the frame with %s mm standoffs, which leaves %s mm."
            .formatted(millimetres(between), millimetres(between - column.neededMillimetres()));
  }

  private static String millimetres(double value) {
    return Spoken.number(value, 1).replaceFirst("\\.0$", "");
  }

  /** Where the pack is strapped, and what is near it. */
  public static String bay(Frame.Bay.Side side, Placing placing) {
    var overhang = placing.overhangMillimetres();
    return "It is strapped "
        + (side == Frame.Bay.Side.TOP ? "on top" : "underneath")
        + (overhang >= 0.5
            ? ", and reaches %s mm beyond its bay".formatted(Spoken.number(overhang, 0))
            : "")
        + placing
            .discClearanceMillimetres()
            .map(gap -> "; %s mm from the nearest propeller disc".formatted(Spoken.number(gap, 0)))
            .orElse("")
        + ". Balance the finished aircraft on two fingers between front and rear motors, and move the pack until it hangs level.";
  }

  /** How much of a strap is needed. */
  public static String strap(double neededMillimetres) {
    return ", of which the pack needs %s mm".formatted(Spoken.number(neededMillimetres, 0));
  }

  /**
   * What to do with a wire.
   *
   * @param missing mm; below zero for what is too much
   */
  public static String cut(double missing) {
    var millimetres = Spoken.number(Math.abs(missing), 0);
    return millimetres.equals("0")
        ? "as it comes"
        : missing > 0
            ? "add %s mm each".formatted(millimetres)
            : "cut off %s mm each".formatted(millimetres);
  }

  /** Wire that motors lack, which is not among the parts; empty where theirs is long enough. */
  public static Optional<String> wireToBuy(Hardware.MotorWire wire) {
    var missing = StrictMath.ceil(wire.missingMillimetres());
    return missing <= 0
        ? Optional.empty()
        : Optional.of(
            "Wire to lengthen the motors' own is no part of the catalogue and not in the price: %s pieces of %s mm, AWG %s, and the overlap of each joint."
                .formatted(wire.wires(), Spoken.number(missing, 0), wire.gauge()));
  }

  /** How a part is sold, and of what serves several builds how many. */
  public static String unit(Part part) {
    var sold = part.sold();
    var word = sold.unit().name().toLowerCase(Locale.ROOT);
    var unit = sold.pieces() == 1 ? word : word + " of " + sold.pieces();
    return part instanceof Sundry sundry && sundry.serves() != null && sundry.serves() > 1
        ? unit + ", for " + sundry.serves() + " builds"
        : unit;
  }

  /** What the scale must not say. */
  public static String cap(Scenario scenario, double grams) {
    var cap = scenario.massCap();
    return "Ready to fly it must weigh %s %s g%s; %s g are expected. What grows later counts too: repairs, mud, a heavier spare propeller."
        .formatted(
            cap.strict() ? "below" : "at most",
            Spoken.number(cap.grams(), 1),
            cap.because(),
            Spoken.number(grams, 1));
  }

  /** Volts of the pack as it is charged for the scenario. */
  static double fullVolts(Battery battery, Scenario scenario) {
    var asked = scenario.flight().chargedToVoltsPerCell();
    var full = battery.chemistry().fullVolts();
    return battery.cellsInSeries() * (asked == null ? full : Math.min(asked, full));
  }

  /** First power-up with propellers off, step by step. */
  public static List<String> firstPowerUp(Assessment assessment, Scenario scenario) {
    var steps = new ArrayList<String>();
    var build = assessment.build();
    steps.add(
        "Propellers off. They stay off until the last step, and the pack stays unplugged until first power.");
    steps.add("Turn every bell by hand: it must turn freely and touch nothing."
        + assessment
            .fitting()
            .hardware()
            .motorScrew()
            .map(screw -> intoMotor(screw, assessment))
            .orElse(""));
    steps.add(
        "With a meter: red to plus and black to minus at both plugs; no contact between plus and minus at the board's pads, nor between either and the carbon"
            + build
                .capacitor()
                .map(
                    part ->
                        "; the capacitor may sound the meter for a moment while it fills, and its marked leg is minus")
                .orElse("")
            + ".");
    build
        .videoSender()
        .ifPresent(
            sender -> steps.add(
                "Antennas on, on every port, before any power: without one a transmitter burns in a moment. Put a fan on the video transmitter, which has no airflow on the bench, and set it to its lowest power as soon as it can be set; local rules set its power and channel."));
    assessment
        .flight()
        .ifPresent(flight -> build
            .battery()
            .ifPresent(battery -> steps.add(current(flight, fullVolts(battery, scenario)))));
    assessment
        .fitting()
        .powerPlan()
        .ifPresent(plan -> build.board().ifPresent(board -> {
          var rails = plan.rails(board);
          if (!rails.isEmpty()) {
            steps.add(volts(rails));
          }
        }));
    steps.add(
        "Receiver: bind it, and see every stick and switch move the right way in the flight software.");
    assessment
        .fitting()
        .stackPlan()
        .filter(plan -> plan.columns().stream()
            .flatMap(column -> column.layers().stream())
            .anyMatch(StackPlan.Layer::turned))
        .ifPresent(
            turned -> steps.add(
                "A board stands on its corner: tell the flight software, then tilt the aircraft by hand and see the picture tilt alike."));
    assessment.flight().flatMap(Reasons::cap).ifPresent(steps::add);
    steps.add(
        "Take the limiter out: motors draw more than it passes, and nobody heeds a limiter that trips all the time. Then the motors: spin them one at a time from the flight software, and note order and direction; swap any two of a motor's three wires, or tell its controller, where it turns the wrong way.");
    steps.add(
        "Failsafe, still without propellers: let the motors idle, switch the radio off, and see them stop.");
    steps.add(
        "Let the motors idle for one minute, unplug, and feel them and the board: lukewarm is right, hot is not. Then look for the one that differs from the others.");
    steps.add(
        "Last: propellers on, two turning each way, the marked side up and every screw or nut tight. From now on power it up outdoors only, with nobody near. Local rules and licensed practice come first.");
    return List.copyOf(steps);
  }

  private static String intoMotor(Screw screw, Assessment assessment) {
    return assessment
        .build()
        .frame()
        .map(frame -> " Its screws go %s mm in."
            .formatted(millimetres(screw.lengthMillimetres() - frame.armThicknessMillimetres())))
        .orElse("");
  }

  private static String current(FlightEstimate flight, double volts) {
    var watts = flight.draws().stream().mapToDouble(Draw::watts).sum();
    var amps = volts > 0 ? watts / volts : 0;
    return "First power, through a current limiter set to %s A (at least 1 A, else twice what is expected: engineering estimate): with motors at rest it should draw about %s W, %s A at the %s V of a full pack, less while video power is set below that of the scenario. Smoke, a smell, or the limiter at work: unplug at once and look for the short."
        .formatted(
            Spoken.number(limiterAmps(amps), 1),
            Spoken.number(watts, 1),
            Spoken.number(amps, 2),
            Spoken.number(volts, 1));
  }

  /** To the next half ampere, A. */
  static double limiterAmps(double amps) {
    return Math.max(1, StrictMath.ceil(LIMITER_TIMES * amps * 2) / 2);
  }

  private static String volts(List<PowerPlan.Rail> rails) {
    return "Rails, with the meter: "
        + rails.stream()
            .map(rail -> "%s V (%s to %s) for %s"
                .formatted(
                    millimetres(rail.volts()),
                    Spoken.number((1 - RAIL_SHARE) * rail.volts(), 2),
                    Spoken.number((1 + RAIL_SHARE) * rail.volts(), 2),
                    rail.consumers().stream().map(Role::label).collect(Collectors.joining(", "))))
            .collect(Collectors.joining("; "))
        + " (within a twentieth: engineering estimate).";
  }
}
