package pappus.assessment;

/**
 * The most that a build only begun can reach, whatever is added to it.
 *
 * @param figure what builds are ranked by, s or m; 0 if none of its builds is feasible
 * @param thrustToWeight at the charge the scenario names
 */
public record Ceiling(double figure, double thrustToWeight) {
  /** Nothing that can fly. */
  static final Ceiling NONE = new Ceiling(0, 0);
}
