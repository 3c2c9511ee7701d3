package pappus.physics.flight;

/** What ends a steady flight. */
public enum Ending {
  /** The charge kept back is reached; without one, the battery is empty. */
  RESERVE,
  /** The volts at which the pilot lands are reached. */
  LANDING_VOLTS,
  /** The controllers are fully open and the thrust would fall. */
  FULL_DUTY,
  MOTOR_CURRENT,
  CONTROLLER_CURRENT,
  PACK_CURRENT,
  CONNECTOR_CURRENT,
  LEAD_CURRENT,
  /** The battery cannot carry the load any more. */
  UNDELIVERABLE,
  /** The time asked for is up. */
  TIME,
  /** The wind does not let it progress over ground. */
  WIND
}
