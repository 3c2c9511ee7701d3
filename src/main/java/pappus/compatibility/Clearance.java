package pappus.compatibility;

/**
 * What is left of something that keeps parts apart or alive, beside the limits of a scenario.
 *
 * @param id its name in results: small letters and hyphens
 * @param label in words
 * @param unit mm, V, A or pieces
 * @param value what the build has
 * @param bound what is allowed
 * @param most whether the value must not be above the bound; else it must not be below
 */
public record Clearance(
    String id, String label, String unit, double value, double bound, boolean most) {

  static Clearance atMost(String id, String label, String unit, double value, double bound) {
    return new Clearance(id, label, unit, value, bound, true);
  }

  static Clearance atLeast(String id, String label, String unit, double value, double bound) {
    return new Clearance(id, label, unit, value, bound, false);
  }
}
