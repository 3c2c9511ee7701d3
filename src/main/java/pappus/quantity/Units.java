package pappus.quantity;

/** Conversions between the units of data sheets and SI. */
public final class Units {
  /** Metres in an inch, exact (international yard and pound agreement, 1959). */
  public static final double METRES_PER_INCH = 0.0254;

  /** Standard acceleration of free fall, m/s², exact (3rd CGPM, 1901; ISO 2533). */
  public static final double GRAVITY_M_PER_S2 = 9.80665;

  private Units() {}

  /** Millimetres of a length in inches. */
  public static double inchesToMillimetres(double inches) {
    return inches * METRES_PER_INCH * 1000;
  }

  /** Metres of a length in inches. */
  public static double inchesToMetres(double inches) {
    return inches * METRES_PER_INCH;
  }

  /** Weight in newtons of a mass in grams. */
  public static double gramsToNewtons(double grams) {
    return grams / 1000 * GRAVITY_M_PER_S2;
  }

  /** Angular speed in rad/s of a speed in revolutions a minute; also rpm/V to rad/s/V. */
  public static double rpmToRadPerS(double rpm) {
    return rpm * Math.PI / 30;
  }

  /** Revolutions a minute of an angular speed in rad/s. */
  public static double radPerSToRpm(double radPerS) {
    return radPerS * 30 / Math.PI;
  }
}
