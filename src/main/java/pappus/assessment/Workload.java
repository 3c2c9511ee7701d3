package pappus.assessment;

import pappus.part.Battery;
import pappus.scenario.Workday;

/**
 * What a day of flying asks of packs and chargers, each flight with a full pack.
 *
 * @param flights that fill the day; as many packs if none is charged on site
 * @param packsInTurn packs that suffice if each is charged as soon as it has landed
 * @param chargeMinutes of one pack at its charging current, min: a whole capacity at constant current, since the charge
 *     that stays in at landing and the slow end of charging about make up for each other (engineering estimate)
 * @param chargeRate charging current in capacities an hour
 */
public record Workload(int flights, int packsInTurn, double chargeMinutes, double chargeRate) {
  /**
   * Of a day.
   *
   * @param seconds of one flight, above 0
   */
  public static Workload of(Workday day, Battery battery, double seconds) {
    var swap = day.swapOrUsual();
    var turn = seconds / 60 + swap;
    var flights = (int) Math.max(1, Math.ceil((day.minutesOnSite() + swap) / turn - 1e-9));
    var charging = 60 / battery.chargeRateOrUsual();
    var inTurn = 1 + (int) Math.ceil(charging / turn - 1e-9);
    return new Workload(flights, Math.min(flights, inTurn), charging, battery.chargeRateOrUsual());
  }

  /** All charges of the day one after the other, h. */
  public double chargeHours() {
    return flights * chargeMinutes / 60;
  }

  /** Flights before a pack has to be charged, of so many packs. */
  public int flightsWith(int packs) {
    return Math.min(flights, packs);
  }
}
