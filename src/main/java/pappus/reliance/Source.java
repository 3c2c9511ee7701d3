package pappus.reliance;

/**
 * One number of a build that is not known for sure.
 *
 * @param doubt which
 * @param name what it belongs to; the same for two builds that share it
 * @param deviation one standard deviation of its ln; of the mass, g
 * @param more the same toward more of it
 */
public record Source(Doubt doubt, String name, double deviation, double more) {
  public Source(Doubt doubt, String name, double deviation) {
    this(doubt, name, deviation, deviation);
  }
}
