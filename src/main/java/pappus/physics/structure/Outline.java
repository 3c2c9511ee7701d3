package pappus.physics.structure;

import pappus.quantity.Require;

/**
 * A flat shape: its area and the middle of that. Shapes add up, and one is taken out of another.
 *
 * @param area mm²
 * @param x of its centroid, mm
 */
public record Outline(double area, double x) {
  public Outline {
    Require.notNegative("area", area);
  }

  /**
   * A polygon, by the shoelace formula (textbook); exact but for rounding. Corners go round either way, the last is
   * joined to the first, and no two sides cross.
   *
   * @param xs of its corners, mm, at least three
   * @param ys of the same corners, mm
   */
  public static Outline polygon(double[] xs, double[] ys) {
    // About its first corner, so that nothing is lost far from the origin.
    var twice = 0.0;
    var moment = 0.0;
    for (var i = 0; i < xs.length; i++) {
      var next = (i + 1) % xs.length;
      var x1 = xs[i] - xs[0];
      var x2 = xs[next] - xs[0];
      var cross = x1 * (ys[next] - ys[0]) - x2 * (ys[i] - ys[0]);
      twice += cross;
      moment += cross * (x1 + x2);
    }
    return twice == 0
        ? new Outline(0, xs[0])
        : new Outline(Math.abs(twice) / 2, xs[0] + moment / (3 * twice));
  }

  /** A round shape. */
  public static Outline circle(double x, double diameter) {
    return new Outline(Math.PI * diameter * diameter / 4, x);
  }

  /**
   * What is left of it once another is cut out of it.
   *
   * @param hole wholly within it
   */
  public Outline without(Outline hole) {
    var left = area - hole.area;
    return new Outline(left, left == 0 ? x : (area * x - hole.area * hole.x) / left);
  }

  /** Whether two sides of a polygon that do not follow each other meet, so that it has no one inside. */
  public static boolean crossesItself(double[] xs, double[] ys) {
    var count = xs.length;
    for (var i = 0; i < count; i++) {
      for (var j = i + 2; j < count; j++) {
        if (i > 0 || j < count - 1) {
          if (meet(xs, ys, i, (i + 1) % count, j, (j + 1) % count)) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private static boolean meet(double[] xs, double[] ys, int a, int b, int c, int d) {
    return turns(xs, ys, a, b, c) * turns(xs, ys, a, b, d) <= 0
        && turns(xs, ys, c, d, a) * turns(xs, ys, c, d, b) <= 0
        && Math.max(xs[a], xs[b]) >= Math.min(xs[c], xs[d])
        && Math.max(xs[c], xs[d]) >= Math.min(xs[a], xs[b])
        && Math.max(ys[a], ys[b]) >= Math.min(ys[c], ys[d])
        && Math.max(ys[c], ys[d]) >= Math.min(ys[a], ys[b]);
  }

  /** On which side of a line a corner lies: above 0, below 0, or 0 on it. */
  private static double turns(double[] xs, double[] ys, int from, int to, int corner) {
    return Math.signum((xs[to] - xs[from]) * (ys[corner] - ys[from])
        - (ys[to] - ys[from]) * (xs[corner] - xs[from]));
  }
}
