package pappus.part;

import com.fasterxml.jackson.annotation.JsonProperty;

/**
 * A metric thread, with how deep a screw should hold in a motor (common practice, no published
 * source).
 */
public enum ScrewThread {
  @JsonProperty("M1.4")
  M1_4("M1.4", 1.2, 2.0),
  @JsonProperty("M1.6")
  M1_6("M1.6", 1.3, 2.2),
  @JsonProperty("M2")
  M2("M2", 1.5, 2.5),
  @JsonProperty("M2.5")
  M2_5("M2.5", 2.0, 3.2),
  @JsonProperty("M3")
  M3("M3", 2.5, 4.0);

  private final String label;
  private final double leastMillimetres;
  private final double mostMillimetres;

  ScrewThread(String label, double leastMillimetres, double mostMillimetres) {
    this.label = label;
    this.leastMillimetres = leastMillimetres;
    this.mostMillimetres = mostMillimetres;
  }

  /** Outer diameter, mm. */
  public double diameterMillimetres() {
    return Double.parseDouble(label.substring(1));
  }

  /** As written on data sheets. */
  public String label() {
    return label;
  }

  /** Least depth that holds, mm; less strips. */
  public double leastMillimetres() {
    return leastMillimetres;
  }

  /** Usual greatest depth, mm; more touches the winding. */
  public double mostMillimetres() {
    return mostMillimetres;
  }
}
