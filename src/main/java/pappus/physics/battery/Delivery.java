package pappus.physics.battery;

import java.util.function.Function;

/** Whether a battery can carry a load, and how. */
public sealed interface Delivery {

  /**
   * It can.
   *
   * @param currentA current out of the battery, A
   * @param terminalVolts volts at its connector
   */
  record Delivered(double currentA, double terminalVolts) implements Delivery {
    @Override
    public <T> T match(Function<Delivered, T> delivered, Function<Undeliverable, T> undeliverable) {
      return delivered.apply(this);
    }
  }

  /**
   * It cannot: more current only lowers the volts further.
   *
   * @param mostW the most power the battery has to give in that state, W
   */
  record Undeliverable(double mostW) implements Delivery {
    @Override
    public <T> T match(Function<Delivered, T> delivered, Function<Undeliverable, T> undeliverable) {
      return undeliverable.apply(this);
    }
  }

  <T> T match(Function<Delivered, T> delivered, Function<Undeliverable, T> undeliverable);
}
