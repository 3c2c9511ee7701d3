package pappus.assessment.flight;

import java.util.List;
import java.util.OptionalDouble;
import pappus.physics.airframe.Airframe;
import pappus.physics.battery.Delivery;
import pappus.physics.battery.Load;
import pappus.physics.battery.Pack;
import pappus.physics.flight.EfficiencyBand;
import pappus.physics.flight.Hover;

/** What is known of builds only begun if such aircraft are known to reach their efficiency in hover. Safe for several threads. */
public final class BeliefBound {
  /** Masses at which belief is looked at are so many times apart. */
  private static final double HEAVIER = 1.01;

  /** Between two of them it may be less by such a share of how far it moves, and by so much, W. */
  private static final double UNEVEN = 0.25;

  private static final double UNEVEN_WATTS = 0.003;

  /** Far above the rounding of an efficiency. */
  private static final double ROUNDING = 1e-9;

  /** All else may warm the pack by so much of the ideal power, which is about a fifth of what the motors take. */
  private static final double WARMING = 0.6;

  private final BegunAircraft begun;
  private final CoursePlanner courses;

  BeliefBound(BegunAircraft begun, CoursePlanner courses) {
    this.begun = begun;
    this.courses = courses;
  }

  /**
   * What builds draw beside the motors at least if their efficiency in hover is one that such aircraft are known to reach.
   * At a mass that is what the ideal power allows less what the motors take at the most volts; both rise smoothly with
   * mass, so that between two masses it is no less than at one of them, but for little.
   *
   * @param fromGrams no such build is lighter
   * @param toGrams no such build is heavier
   * @param ohm least resistance of board and lead, Ω
   * @param losses most ripple of the controllers over that of the law; absent: by the law
   */
  public BelievedDraw draw(
      double fromGrams, double toGrams, double ohm, List<OptionalDouble> losses, FrameAir air) {
    var behind = begun.pack().behind(ohm);
    var draw = new BelievedDraw.Builder();
    try {
      var light = powers(fromGrams, behind, losses, air);
      for (var grams = fromGrams; grams < toGrams; grams *= HEAVIER) {
        var heavier = Math.min(toGrams, grams * HEAVIER);
        var heavy = powers(heavier, behind, losses, air);
        var highest = EfficiencyBand.warning(heavier / 1000).highest();
        var low = light.beside(highest);
        var high = heavy.beside(highest);
        // Of builds that draw more than what warms the pack here nothing is said.
        draw.from(
            grams,
            Math.min(
                light.warming, Math.min(low, high) - UNEVEN * Math.abs(high - low) - UNEVEN_WATTS));
        light = heavy;
      }
      return draw.build();
    } catch (IllegalArgumentException outsideTheModel) {
      return BelievedDraw.ANY;
    }
  }

  /**
   * Whether the efficiency in hover of a build of which all is decided that counts is one that such aircraft are known to
   * reach.
   *
   * @param whole the numbers that it has
   */
  public boolean admits(PartialBound.Least whole) {
    try {
      var airframe = new Airframe(
          whole.grams() / 1000,
          whole.air().leastLost(begun.diameterMm()),
          whole.air().leastDragArea(whole.grams(), begun.battery()));
      var hover = hover(airframe, whole.loss(), whole.watts());
      var load = hover.steady().load();
      var highest = EfficiencyBand.warning(whole.grams() / 1000).highest();
      return !(begun.pack().behind(whole.ohm()).warmedBy(load).deliver(load, Pack.HALF_CHARGE)
              instanceof Delivery.Delivered now)
          || hover.efficiency(now.terminalVolts()) <= highest * (1 + ROUNDING);
    } catch (IllegalArgumentException outsideTheModel) {
      return true;
    }
  }

  /**
   * Of a hover, W.
   *
   * @param motors the most that they take for it beside no more than {@code warming} of all else
   */
  private record Powers(double ideal, double motors, double warming) {
    double beside(double efficiency) {
      return ideal / efficiency - motors;
    }
  }

  private Powers powers(double grams, Pack behind, List<OptionalDouble> losses, FrameAir air) {
    var ideal = Hover.of(
            begun.aircraft(new Airframe(grams / 1000, 0, 0), OptionalDouble.empty(), 0))
        .idealPowerW();
    var warming = WARMING * ideal;
    return new Powers(
        ideal,
        losses.stream()
            .mapToDouble(loss -> motorsW(grams, warming, behind, loss, air))
            .max()
            .orElse(0),
        warming);
  }

  /** Most power that the motors take from the pack in hover, at the most volts that it may have, W. */
  private double motorsW(
      double grams, double warming, Pack behind, OptionalDouble loss, FrameAir air) {
    var light = hover(grams, loss, air.leastLost(begun.diameterMm()));
    var heavy = hover(grams, loss, air.mostLost(begun.diameterMm()));
    var warm =
        behind.warmedBy(Load.ofPower(warming + heavy.steady().busPowerW(behind.openVolts(1))));
    return warm.deliver(light.steady().load(), Pack.HALF_CHARGE) instanceof Delivery.Delivered now
        ? heavy.steady().busPowerW(now.terminalVolts())
        : 0;
  }

  private Hover hover(double grams, OptionalDouble loss, double thrustLost) {
    var airframe = new Airframe(grams / 1000, thrustLost, 0);
    return hover(airframe, loss, 0);
  }

  private Hover hover(Airframe airframe, OptionalDouble loss, double watts) {
    return courses.hover(begun.steadily(begun.aircraft(airframe, loss, watts)), 1);
  }
}
