package pappus.compatibility;

import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Battery;
import pappus.part.Propeller;

/**
 * Sizes of parts that a frame must have room for, mm; 0 of a part that is not chosen. The smaller each is, the better it
 * fits.
 *
 * @param propeller diameter
 * @param packLength along the frame
 * @param packWidth across it
 * @param packHeight above or below it
 */
public record Sizes(double propeller, double packLength, double packWidth, double packHeight) {
  /** Of no part. */
  public static final Sizes NONE = new Sizes(0, 0, 0, 0);

  /** More room than any part asks for. */
  public static final Sizes ANY = new Sizes(
      Double.POSITIVE_INFINITY,
      Double.POSITIVE_INFINITY,
      Double.POSITIVE_INFINITY,
      Double.POSITIVE_INFINITY);

  /** Of a part; none of one that no frame has to have room for. */
  public static Sizes of(Part part) {
    if (part instanceof Propeller propeller) {
      return new Sizes(propeller.diameterMillimetres(), 0, 0, 0);
    }
    return part instanceof Battery battery
        ? new Sizes(
            0, battery.lengthMillimetres(), battery.widthMillimetres(), battery.heightMillimetres())
        : NONE;
  }

  /** Of what is chosen of a build. */
  public static Sizes of(Build build) {
    return build
        .propeller()
        .map(Sizes::of)
        .orElse(NONE)
        .and(build.battery().map(Sizes::of).orElse(NONE));
  }

  /** Of two parts of different roles. */
  public Sizes and(Sizes other) {
    return new Sizes(
        Math.max(propeller, other.propeller),
        Math.max(packLength, other.packLength),
        Math.max(packWidth, other.packWidth),
        Math.max(packHeight, other.packHeight));
  }

  /** The lesser of each. */
  public Sizes least(Sizes other) {
    return new Sizes(
        Math.min(propeller, other.propeller),
        Math.min(packLength, other.packLength),
        Math.min(packWidth, other.packWidth),
        Math.min(packHeight, other.packHeight));
  }
}
