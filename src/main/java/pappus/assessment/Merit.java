package pappus.assessment;

/**
 * What an assessed build is ranked by.
 *
 * @param objective what searches make as large as they can
 * @param second between builds of equal objective the larger goes first
 */
public record Merit(long objective, long second) {
  /** Of a build without a flight. */
  static final Merit NONE = new Merit(0, 0);

  /** Above every price, in cents, and every mass, in milligrams. */
  private static final long MOST = 1_000_000_000_000_000L;

  /** Above the price of any build. */
  private static final long PIECE_CENTS = 1_000_000_000_000L;

  /**
   * Of what a build has; what need not be known for a purpose may be anything.
   *
   * @param flown microseconds in the air, or micrometres over ground
   * @param planWith the same to plan with, in thousandths
   */
  static Merit of(
      Purpose purpose,
      long flown,
      long planWith,
      CostTable cost,
      double grams,
      double thrustToWeight) {
    var objective = objective(
        purpose.measure(),
        flown,
        planWith,
        cost.cents(),
        cost.piecesToBuy(),
        grams,
        thrustToWeight);
    return new Merit(
        objective,
        switch (purpose.measure()) {
          case FLIGHT, PLAN_WITH -> -cost.cents();
          case PRICE, MASS, THRUST -> planWith;
          case PIECES -> flown;
        });
  }

  /**
   * What is made as large as can be: whole microseconds or micrometres, thousandths to plan with, cents and milligrams
   * below a bound, or millionths of thrust-to-weight.
   */
  public static long objective(
      Purpose.Measure measure,
      long flown,
      long planWith,
      long cents,
      int pieces,
      double grams,
      double thrustToWeight) {
    return switch (measure) {
      case FLIGHT -> flown;
      case PLAN_WITH -> planWith;
      case PRICE -> MOST - cents;
      case PIECES -> MOST - PIECE_CENTS * pieces - cents;
      case MASS -> MOST - Math.round(grams * 1000);
      case THRUST -> (long) Math.floor(thrustToWeight * Assessment.OBJECTIVE);
    };
  }

  /** Pieces to buy of an objective that counts them. */
  public static long pieces(long objective) {
    return (MOST - objective) / PIECE_CENTS;
  }

  /** Cents, or milligrams, of an objective that is larger the less there is of them. */
  public static long below(long objective) {
    return MOST - objective;
  }
}
