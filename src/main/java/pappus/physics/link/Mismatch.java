package pappus.physics.link;

/** What two antennas lose between them because their waves are polarised otherwise. */
public enum Mismatch {
  /** The same hand, or both linear and held alike. */
  NONE(0),
  /** Half the power, whichever way the linear one is turned. */
  LINEAR_TO_CIRCULAR(3),
  /** Ideal antennas lose more; of real ones 10 to 20 dB are told (from memory, no published source). */
  OPPOSITE_HANDS(20);

  private final double decibels;

  Mismatch(double decibels) {
    this.decibels = decibels;
  }

  /** Loss, dB. */
  public double decibels() {
    return decibels;
  }
}
