package pappus.part;

import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * Silicone wire by gauge: what it carries and what it weighs (common practice, no published source;
 * resistance by ASTM B258 is in {@code physics.battery}). An odd gauge counts as the next thinner.
 */
public enum Wire {
  AWG30(30, 1, 2, 1.0),
  AWG28(28, 2, 4, 2.0),
  AWG26(26, 3, 6, 3.1),
  AWG24(24, 5, 9, 4.0),
  AWG22(22, 8, 15, 5.2),
  AWG20(20, 12, 22, 7.0),
  AWG18(18, 18, 35, 11),
  AWG16(16, 25, 50, 18),
  AWG14(14, 40, 70, 27);

  private static final NavigableMap<Integer, Wire> BY_GAUGE = new TreeMap<>();

  static {
    for (var wire : values()) {
      BY_GAUGE.put(wire.gauge, wire);
    }
  }

  private final int gauge;
  private final double continuousAmps;
  private final double burstAmps;
  private final double gramsPerMetre;

  Wire(int gauge, double continuousAmps, double burstAmps, double gramsPerMetre) {
    this.gauge = gauge;
    this.continuousAmps = continuousAmps;
    this.burstAmps = burstAmps;
    this.gramsPerMetre = gramsPerMetre;
  }

  /** The wire of a gauge; thinner than any counts as the thinnest, thicker as the thickest. */
  public static Wire ofGauge(int gauge) {
    var thinner = BY_GAUGE.ceilingEntry(gauge);
    return thinner == null ? AWG30 : thinner.getValue();
  }

  /** AWG number. */
  public int gauge() {
    return gauge;
  }

  /** Current without end, A. */
  public double continuousAmps() {
    return continuousAmps;
  }

  /** Current for ten seconds, A. */
  public double burstAmps() {
    return burstAmps;
  }

  /** Mass of one metre of one wire, g. */
  public double gramsPerMetre() {
    return gramsPerMetre;
  }
}
