package pappus.physics.flight;

import java.util.OptionalInt;
import pappus.physics.battery.Discharge;
import pappus.physics.battery.Pack;
import pappus.quantity.Require;
import pappus.quantity.Root;

/**
 * A flight out to a point and back from it, as far as the pack lets it come home.
 *
 * <p>Why: src/site/markdown/decisions.md#out-and-back-in-wind-is-flown-once
 *
 * @param endurance of the whole
 * @param outSeconds of the way out
 * @param backSeconds of the way back
 * @param metresEachWay over ground to where it turns round
 * @param endsOut whether the way out meets its limit before the charge for the way back is all that is left; it
 *     then comes home with more than it had to keep
 */
public record OutAndBack(
    Endurance endurance,
    double outSeconds,
    double backSeconds,
    double metresEachWay,
    boolean endsOut) {

  /** One of the two ways, above 0 m/s over ground. */
  public record Way(SteadyFlight flight, double groundSpeedMPerS) {
    public Way {
      Require.positive("groundSpeedMPerS", groundSpeedMPerS);
    }
  }

  /** From take-off to landing where it took off. */
  public static OutAndBack of(Way out, Way back, Pack pack, LandingRule rule, Limits continuous) {
    var start = pack.startCharge();
    var outTimed = Endurance.Timed.of(out.flight, pack, rule, continuous);
    var farthest = outTimed.endurance();
    if (farthest.seconds() == 0) {
      return new OutAndBack(farthest, 0, 0, 0, true);
    }
    var from = farthest.discharge().endCharge();
    if (homeMetres(back, pack, rule, continuous, from)
        >= farthest.seconds() * out.groundSpeedMPerS) {
      return joined(out, back, farthest, true, pack, rule, continuous);
    }
    // The later it turns, the farther it is out and the less is left for home: one point suits
    // both.
    var backTimed = Endurance.Timed.of(back.flight, pack, rule, continuous);
    var turn = Root.ofFalling(
        charge -> out.groundSpeedMPerS * outTimed.secondsTo(charge)
            - back.groundSpeedMPerS * backTimed.secondsFrom(charge),
        from,
        start,
        0.5 * (from + start));
    return joined(
        out, back, outTo(out, pack, rule, continuous, turn), false, pack, rule, continuous);
  }

  private static Endurance outTo(
      Way out, Pack pack, LandingRule rule, Limits continuous, double charge) {
    return Endurance.of(out.flight, pack, new LandingRule(charge, rule.voltsPerCell()), continuous);
  }

  private static double homeMetres(
      Way back, Pack pack, LandingRule rule, Limits continuous, double fromCharge) {
    return Endurance.of(back.flight, pack, rule, continuous, fromCharge, Double.POSITIVE_INFINITY)
            .seconds()
        * back.groundSpeedMPerS;
  }

  private static OutAndBack joined(
      Way out,
      Way back,
      Endurance first,
      boolean endsOut,
      Pack pack,
      LandingRule rule,
      Limits continuous) {
    var turn = first.discharge().endCharge();
    var metres = first.seconds() * out.groundSpeedMPerS;
    var longest = endsOut ? metres / back.groundSpeedMPerS : Double.POSITIVE_INFINITY;
    var second = Endurance.of(back.flight, pack, rule, continuous, turn, longest);
    var a = first.discharge();
    var b = second.discharge();
    var seconds = first.seconds() + second.seconds();
    var whole = new Discharge(
        seconds,
        b.ending(),
        b.endCharge(),
        a.energyJ() + b.energyJ(),
        a.usedCoulomb() + b.usedCoulomb(),
        a.startVolts(),
        a.startA(),
        b.endVolts(),
        b.endA());
    return new OutAndBack(
        new Endurance(seconds, endsOut ? first.ending() : second.ending(), whole),
        first.seconds(),
        second.seconds(),
        metres,
        endsOut);
  }

  /** The way whose limit ends the flight, 0 out and 1 back; empty if it ends at the charge kept back. */
  public OptionalInt endingWay() {
    return endurance.ending() == Ending.RESERVE
        ? OptionalInt.empty()
        : OptionalInt.of(endsOut ? 0 : 1);
  }
}
