package pappus.physics.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import pappus.physics.battery.Discharge;
import pappus.physics.battery.Pack;
import pappus.quantity.Require;
import pappus.quantity.Root;

/**
 * Steady flights one after the other, each once, of which one lasts as long as the charge does that the flights after it
 * leave to it. What those take is found from the end: the last one ends at the landing rule or at a limit of its own,
 * and each one before it where the next has to begin.
 *
 * <p>Why: src/site/markdown/decisions.md#a-stay-ends-where-the-way-home-begins
 *
 * @param endurance of the whole; as its flights are expected, so that what was kept back beyond that is left at its end
 * @param staySeconds how long it stays, s
 * @param leavesAtCharge state of charge that the flights after the stay ask for at least
 * @param endingTurn the flight, from 0, whose limit ends the stay; empty if that is the charge kept back
 */
public record OnStation(
    Endurance endurance, double staySeconds, double leavesAtCharge, OptionalInt endingTurn) {

  /**
   * From take-off to landing.
   *
   * @param turns the flights; the seconds of the stay do not matter
   * @param stay which of them stays, from 0
   * @param planWith share of their estimate that the flights after the stay are planned with, 0 to 1: charge is kept
   *     back as if they lasted so much longer
   */
  public static OnStation of(
      List<Circuit.Turn> turns,
      int stay,
      double planWith,
      Pack pack,
      LandingRule rule,
      Limits continuous) {
    Require.inRange("planWith", planWith, 0, 1);
    var kept = Kept.of(turns, stay, planWith, pack, rule, continuous);
    if (kept.charge.isEmpty()) {
      return none(kept.ending, kept.endingTurn, pack);
    }
    var leaves = kept.charge.getAsDouble();
    var flown = new ArrayList<Endurance>();
    var charge = pack.startCharge();
    for (var i = 0; i < stay; i++) {
      var turn = turns.get(i);
      var out = Endurance.of(turn.flight(), pack, rule, continuous, charge, turn.seconds());
      if (out.ending() != Ending.TIME) {
        return none(out.ending(), OptionalInt.of(i), pack);
      }
      flown.add(out);
      charge = out.discharge().endCharge();
    }
    if (charge <= leaves) {
      return none(kept.ending, kept.endingTurn, pack);
    }
    var until = new LandingRule(leaves, rule.voltsPerCell());
    var stayed = Endurance.of(
        turns.get(stay).flight(), pack, until, continuous, charge, Double.POSITIVE_INFINITY);
    flown.add(stayed);
    charge = stayed.discharge().endCharge();
    for (var turn : turns.subList(stay + 1, turns.size())) {
      var home = Endurance.of(turn.flight(), pack, rule, continuous, charge, turn.seconds());
      flown.add(home);
      charge = home.discharge().endCharge();
    }
    var endsItself = stayed.ending() != Ending.RESERVE;
    return new OnStation(
        joined(flown, endsItself ? stayed.ending() : kept.ending),
        stayed.seconds(),
        leaves,
        endsItself ? OptionalInt.of(stay) : kept.endingTurn);
  }

  private static OnStation none(Ending ending, OptionalInt turn, Pack pack) {
    return new OnStation(Endurance.none(ending, pack.startCharge()), 0, pack.startCharge(), turn);
  }

  /**
   * What the flights after a stay ask for.
   *
   * @param charge at which they have to begin; empty if no full pack has so much
   * @param ending what they end by
   * @param endingTurn whose limit that is; empty for the charge kept in reserve
   */
  private record Kept(OptionalDouble charge, Ending ending, OptionalInt endingTurn) {
    static Kept of(
        List<Circuit.Turn> turns,
        int stay,
        double planWith,
        Pack pack,
        LandingRule rule,
        Limits continuous) {
      var needed = rule.reserve();
      var ending = Ending.RESERVE;
      var endingTurn = OptionalInt.empty();
      for (var i = turns.size() - 1; i > stay; i--) {
        var flight = turns.get(i).flight();
        var timed = Endurance.Timed.of(flight, pack, rule, continuous);
        var alone = timed.endurance();
        var own = alone.discharge().endCharge();
        if (own > needed) {
          needed = own;
          ending = alone.ending();
          endingTurn = ending == Ending.RESERVE ? OptionalInt.empty() : OptionalInt.of(i);
        }
        var seconds = turns.get(i).seconds() / planWith;
        var last = needed;
        var most = timed.secondsTo(last);
        if (most < seconds) {
          return new Kept(OptionalDouble.empty(), ending, endingTurn);
        }
        var left = most - seconds;
        needed = Root.ofFalling(
            charge -> timed.secondsTo(charge) - left,
            last,
            pack.startCharge(),
            0.5 * (last + pack.startCharge()));
      }
      return new Kept(OptionalDouble.of(needed), ending, endingTurn);
    }
  }

  private static Endurance joined(List<Endurance> flown, Ending ending) {
    var first = flown.get(0).discharge();
    var last = flown.get(flown.size() - 1).discharge();
    var seconds = flown.stream().mapToDouble(Endurance::seconds).sum();
    return new Endurance(
        seconds,
        ending,
        new Discharge(
            seconds,
            last.ending(),
            last.endCharge(),
            flown.stream().mapToDouble(one -> one.discharge().energyJ()).sum(),
            flown.stream().mapToDouble(one -> one.discharge().usedCoulomb()).sum(),
            first.startVolts(),
            first.startA(),
            last.endVolts(),
            last.endA()));
  }
}
