package pappus.physics.battery;

import pappus.quantity.Require;

/**
 * The state in which a pack is flown.
 *
 * @param temperatureK temperature of the pack at take-off, K, 263.15 to 333.15; hovering warms it by less
 *     than 1 K a minute
 * @param ageing how used up it is
 * @param deliveredShare charge it delivers when new and warm over the charge on its label
 * @param startCharge state of charge at take-off, 0 to 1
 */
public record Condition(
    double temperatureK, Ageing ageing, double deliveredShare, double startCharge) {
  /** New, full and kept warm at 25 °C. */
  public static final Condition STANDARD =
      new Condition(298.15, Ageing.NEW, Chemistry.DELIVERED_SHARE, 1);

  public Condition {
    Temperature.require(temperatureK);
    Require.inRange("deliveredShare", deliveredShare, 0.3, 1.3);
    Require.inRange("startCharge", startCharge, 0, 1);
  }
}
