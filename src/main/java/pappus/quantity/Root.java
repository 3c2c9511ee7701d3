package pappus.quantity;

import java.util.function.DoubleUnaryOperator;

/** The root of a falling function: regula falsi with the weights of Anderson and Björck, BIT 13, 1973. */
public final class Root {
  private Root() {}

  /**
   * Where f falls through zero, to a relative 1e-12.
   *
   * @param low f is not negative here
   * @param high f is not positive here
   * @param guess somewhere between
   */
  public static double ofFalling(DoubleUnaryOperator f, double low, double high, double guess) {
    var first = Math.min(Math.max(guess, low), high);
    var atFirst = f.applyAsDouble(first);
    if (atFirst == 0) {
      return first;
    }
    // a keeps the bracket, b is the latest point
    var a = atFirst > 0 ? high : low;
    var atA = f.applyAsDouble(a);
    if (atA == 0) {
      return a;
    }
    var b = first;
    var atB = atFirst;
    for (var step = 0; step < 100; step++) {
      var next = b - atB * (b - a) / (atB - atA);
      var atNext = f.applyAsDouble(next);
      if (atNext == 0 || Math.abs(next - b) <= 1e-12 * Math.abs(next)) {
        return next;
      }
      if ((atNext > 0) == (atB > 0)) {
        var weight = 1 - atNext / atB;
        atA *= weight > 0 ? weight : 0.5;
      } else {
        a = b;
        atA = atB;
      }
      b = next;
      atB = atNext;
    }
    return b;
  }
}
