package pappus.physics.flight;

/** What keeps full throttle from giving more thrust. */
public enum ThrottleLimit {
  /** Nothing: the controllers are fully open. */
  FULL_DUTY,
  MOTOR,
  CONTROLLER,
  PACK,
  CONNECTOR,
  LEAD,
  /** The battery's terminals are down to the volts that must not be passed. */
  FLOOR_VOLTS;

  /** Whether it is the pack or what joins it to the board that allows no more, and no motor or controller. */
  public boolean isOfPack() {
    return this == PACK || this == CONNECTOR || this == LEAD || this == FLOOR_VOLTS;
  }
}
