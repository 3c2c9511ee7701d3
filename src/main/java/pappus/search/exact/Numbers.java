package pappus.search.exact;

import java.util.function.IntToDoubleFunction;

/** A row of numbers that does not change. */
final class Numbers {
  private final double[] values;

  private Numbers(double[] values) {
    this.values = values;
  }

  static Numbers of(int count, IntToDoubleFunction at) {
    var values = new double[count];
    for (var place = 0; place < count; place++) {
      values[place] = at.applyAsDouble(place);
    }
    return new Numbers(values);
  }

  double at(int place) {
    return values[place];
  }

  int size() {
    return values.length;
  }

  Numbers plus(Numbers other) {
    return of(values.length, place -> values[place] + other.values[place]);
  }

  Numbers times(double factor) {
    return of(values.length, place -> factor * values[place]);
  }

  /** The greater of each. */
  Numbers most(Numbers other) {
    return of(values.length, place -> Math.max(values[place], other.values[place]));
  }

  /** The lesser of each. */
  Numbers least(Numbers other) {
    return of(values.length, place -> Math.min(values[place], other.values[place]));
  }
}
