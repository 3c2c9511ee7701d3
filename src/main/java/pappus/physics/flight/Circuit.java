package pappus.physics.flight;

import java.util.List;
import java.util.OptionalInt;
import pappus.physics.battery.Mixture;
import pappus.physics.battery.Pack;
import pappus.quantity.Require;

/**
 * Steady flights flown in turn, over and over, until something ends it: the first limit that any of them meets,
 * wherever in its turn. Turns are taken to be short against the whole flight, see {@link Mixture}.
 *
 * <p>Why: src/site/markdown/decisions.md#a-profile-is-a-mixture
 *
 * @param endurance of the whole; its volts and currents are means over time
 * @param endingTurn the turn, from 0, whose limit ends it; empty if it ends at the charge kept back
 */
public record Circuit(Endurance endurance, OptionalInt endingTurn) {

  /**
   * One of the flights.
   *
   * @param seconds how long it lasts in each round
   */
  public record Turn(SteadyFlight flight, double seconds) {
    public Turn {
      Require.positive("seconds", seconds);
    }
  }

  /** From take-off until something ends the flight. */
  public static Circuit of(List<Turn> turns, Pack pack, LandingRule rule, Limits continuous) {
    Require.notEmpty("turns", turns);
    var first = OptionalInt.empty();
    var whole = Endurance.none(Ending.RESERVE, 0);
    for (var i = 0; i < turns.size(); i++) {
      var alone = Endurance.of(turns.get(i).flight(), pack, rule, continuous);
      if (first.isEmpty() || alone.discharge().endCharge() > whole.discharge().endCharge()) {
        whole = alone;
        first = OptionalInt.of(i);
      }
    }
    var endingTurn = whole.ending() == Ending.RESERVE ? OptionalInt.empty() : first;
    if (turns.size() == 1 || whole.seconds() == 0) {
      return new Circuit(whole, endingTurn);
    }
    var shares = turns.stream()
        .map(turn -> new Mixture.Share(turn.flight().load(), turn.seconds()))
        .toList();
    var discharge = Mixture.between(
        pack,
        shares,
        pack.startCharge(),
        whole.discharge().endCharge(),
        whole.discharge().ending());
    return new Circuit(new Endurance(discharge.seconds(), whole.ending(), discharge), endingTurn);
  }
}
