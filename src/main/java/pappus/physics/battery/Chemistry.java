package pappus.physics.battery;

import pappus.quantity.Require;

/**
 * Kinds of cells: rested volts, resistance and capacity of a new cell, and the shape of pilots.
 *
 * <p>Volts are rested ones a cell at 25 °C. Two sources of the lithium-polymer curve differ by at most
 * 27 mV above a state of charge of 0.1, two of each lithium-ion curve by at most 34 and 85 mV.
 */
public enum Chemistry {
  /**
   * Hobby lithium polymer, 4.20 V: P. Kollmeyer and M. Skells, hobby LiPo 5 Ah 65C battery data, McMaster
   * University, Mendeley Data 2020, doi 10.17632/4fx8cjprxm.1; one new cell, pulse tests after 1 h rests.
   */
  LIPO(
      Curve.evenly(
          2.9736, 3.5599, 3.6821, 3.6933, 3.7130, 3.7357, 3.7548, 3.7728, 3.7910, 3.8091, 3.8272,
          3.8455, 3.8681, 3.8963, 3.9293, 3.9689, 4.0124, 4.0611, 4.1092, 4.1536, 4.1995),
      Shape.POUCH,
      Warmth.POUCH,
      0.014,
      0.35,
      0),
  /**
   * Lithium polymer for 4.35 V: a 2000 mAh pouch, public device battery profile of 2013, 25 °C, read in a
   * transcription. Stands for the shape of the curve; resistance is taken as for {@link #LIPO}, an
   * engineering estimate.
   */
  LIHV(
      Curve.evenly(
          3.0000, 3.6630, 3.6880, 3.7085, 3.7440, 3.7630, 3.7720, 3.7830, 3.7970, 3.8150, 3.8380,
          3.8740, 3.9210, 3.9580, 3.9950, 4.0510, 4.1010, 4.1520, 4.2070, 4.2650, 4.3350),
      Shape.POUCH,
      Warmth.POUCH,
      0.014,
      0.35,
      0),
  /**
   * Lithium-ion energy cell: a 21700 of 5 Ah, mean of slow charge and discharge, S. Sunil, K. Pattipati and
   * B. Balasingam, IEEE Trans. Instrum. Meas. 2025, data set.
   */
  LI_ION_ENERGY(
      Curve.evenly(
          2.5199, 3.1618, 3.3041, 3.4013, 3.4754, 3.5205, 3.5763, 3.6141, 3.6443, 3.6761, 3.7167,
          3.7652, 3.8174, 3.8748, 3.9201, 3.9650, 4.0184, 4.0672, 4.0919, 4.1158, 4.1943),
      Shape.CYLINDER,
      Warmth.ENERGY,
      0.140,
      0.25,
      0.065),
  /** Lithium-ion power cell: an 18650 of 2.8 Ah at C/20, same data set as {@link #LI_ION_ENERGY}. */
  LI_ION_POWER(
      Curve.evenly(
          2.7027, 3.1944, 3.3500, 3.4344, 3.4840, 3.5385, 3.5849, 3.6213, 3.6538, 3.6912, 3.7355,
          3.7834, 3.8374, 3.8830, 3.9197, 3.9634, 4.0186, 4.0633, 4.0827, 4.1069, 4.1881),
      Shape.CYLINDER,
      Warmth.POWER,
      0.060,
      0.25,
      0.045);

  /** Resistance that shows within a second over that after ten: Kollmeyer and Skells 2020, 24 °C. */
  public static final double BURST_RESISTANCE_SHARE = 2.0 / 3;

  /**
   * Resistance after ten seconds over a charger's or 1 kHz meter's reading: an engineering estimate, 1.3
   * to 2.5.
   */
  public static final double METER_READING_FACTOR = 1.8;

  /** Charge a pack delivers over the charge on its label: an engineering estimate, see the doubt. */
  public static final double DELIVERED_SHARE = 0.95;

  /** One standard deviation of {@link #DELIVERED_SHARE}, an engineering estimate. */
  public static final double DELIVERED_SHARE_DOUBT = 0.03;

  private static final double SMALL_CELL_COULOMB = 0.5 * 3600;
  private static final double SMALL_POUCH_OHM_AH = 0.018;
  private static final double SLOW_POUCH_SHARE = 0.8;

  /**
   * Resistance over that at half charge: Kollmeyer and Skells 2020, 24 °C, 2 C for ten seconds; the value
   * when empty is an engineering estimate, and so is its use for lithium-ion cells.
   */
  private static final Curve RESISTANCE_SHAPE = Curve.evenly(
      3.0, 2.1, 1.40, 1.22, 1.16, 1.11, 1.09, 1.07, 1.05, 1.025, 1.00, 0.975, 0.95, 0.96, 0.97,
      1.01, 1.05, 1.055, 1.06, 1.05, 1.03);

  @SuppressWarnings("ImmutableEnumChecker") // curves are immutable; the annotation is a library's
  private final Curve openCircuitVolts;

  private final Shape shape;
  private final Warmth warmth;
  private final double classOhmAh;
  private final double classDoubt;
  private final double slowOhmAh;

  Chemistry(
      Curve openCircuitVolts,
      Shape shape,
      Warmth warmth,
      double classOhmAh,
      double classDoubt,
      double slowOhmAh) {
    this.openCircuitVolts = openCircuitVolts;
    this.shape = shape;
    this.warmth = warmth;
    this.classOhmAh = classOhmAh;
    this.classDoubt = classDoubt;
    this.slowOhmAh = slowOhmAh;
  }

  /** Rested volts of a cell at 25 °C. */
  public Curve openCircuitVolts() {
    return openCircuitVolts;
  }

  /** Resistance over that at half charge. */
  public Curve resistanceShape() {
    return RESISTANCE_SHAPE;
  }

  /** State of charge of a cell charged to fewer volts than its chemistry allows, rested. */
  public double chargeAtVolts(double voltsPerCell) {
    return openCircuitVolts.chargeAt(Require.positive("voltsPerCell", voltsPerCell));
  }

  /**
   * Direct-current resistance in Ω of a new cell after ten seconds at 25 °C and half charge, from its
   * capacity: 14 mΩ·Ah for a pouch (18 below 0.5 Ah), engineering estimate from the packs of Bauersfeld and
   * Scaramuzza, IEEE RA-L 7(2), 2022 (10 to 14) and the one cell of Kollmeyer and Skells 2020 (22.5);
   * 60 and 140 mΩ·Ah for lithium-ion power and energy cells, engineering estimates.
   */
  public double classResistanceOhm(double cellCapacityCoulomb) {
    Require.positive("cellCapacityCoulomb", cellCapacityCoulomb);
    var small = shape == Shape.POUCH && cellCapacityCoulomb < SMALL_CELL_COULOMB;
    return (small ? SMALL_POUCH_OHM_AH : classOhmAh) * 3600 / cellCapacityCoulomb;
  }

  /**
   * What minutes of current add to the resistance after ten seconds of a new cell at 25 °C, Ω: 65 and 45 mΩ·Ah for
   * lithium-ion energy and power cells, from constant currents of .05 to 2 C of eight 18650 (isaiasBessa97, 18650
   * identification data, 2024) and two (Silencefrog9305, electro-thermal set, 2024, MIT) with the heating taken out;
   * of a pouch .8 of its resistance, Kollmeyer and Skells 2020.
   *
   * @param newOhm resistance after ten seconds, Ω
   */
  public double slowOhm(double cellCapacityCoulomb, double newOhm) {
    return shape == Shape.POUCH
        ? SLOW_POUCH_SHARE * newOhm
        : slowOhmAh * 3600 / cellCapacityCoulomb;
  }

  /** One standard deviation of the ln of {@link #slowOhm}. */
  public double slowDoubt() {
    return shape == Shape.POUCH ? 0.5 : 0.4;
  }

  /** One standard deviation of the ln of {@link #classResistanceOhm}. */
  public double classResistanceDoubt() {
    return classDoubt;
  }

  /** Resistance over that at 25 °C. */
  public double temperatureResistanceFactor(double temperatureK) {
    return warmth.resistanceFactor(temperatureK);
  }

  /**
   * The rise of temperature above some K up to which the resistance falls by no more than the rise to the power of 2/3
   * grows, K.
   */
  double gentleRiseK(double temperatureK) {
    return warmth.gentleRiseK(temperatureK);
  }

  double agedResistanceFactor(Ageing ageing) {
    return shape == Shape.POUCH
        ? ageing.pouchResistanceFactor()
        : ageing.cylindricalResistanceFactor();
  }

  double agedCapacityFactor(Ageing ageing) {
    return shape == Shape.POUCH ? ageing.pouchCapacityFactor() : ageing.cylindricalCapacityFactor();
  }

  private enum Shape {
    POUCH,
    CYLINDER
  }

  /** R(T) = R₂₅ exp(B (1/T − 1/298.15)). */
  private enum Warmth {
    /** Fitted to Kollmeyer and Skells 2020, −10 to 38 °C, residual 10 to 12 %. */
    POUCH(4200, 3500),
    /** Above 25 °C by the rises of eight 18650 in still air; below an engineering estimate. */
    ENERGY(3000, 2000),
    /** Above 25 °C by two 18650 in a chamber, 3000 to 3800; below an engineering estimate. */
    POWER(3000, 3000);

    private static final double REFERENCE_K = 298.15;

    private final double coldK;
    private final double warmK;

    Warmth(double coldK, double warmK) {
      this.coldK = coldK;
      this.warmK = warmK;
    }

    private double gentleRiseK(double fromK) {
      var colder = gentleRiseK(coldK, fromK);
      return fromK + colder < REFERENCE_K
          ? colder
          : Math.max(REFERENCE_K - fromK, gentleRiseK(warmK, fromK));
    }

    /** Where r B = 2/3 (T + r)². */
    private static double gentleRiseK(double slopeK, double fromK) {
      var half = 0.75 * slopeK - fromK;
      return half - Math.sqrt(half * half - fromK * fromK);
    }

    private double resistanceFactor(double temperatureK) {
      Temperature.require(temperatureK);
      var slopeK = temperatureK < REFERENCE_K ? coldK : warmK;
      return StrictMath.exp(slopeK * (1 / temperatureK - 1 / REFERENCE_K));
    }
  }
}
