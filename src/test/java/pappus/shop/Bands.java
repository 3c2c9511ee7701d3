package pappus.shop;

import java.util.Collection;
import java.util.List;
import java.util.stream.DoubleStream;
import pappus.part.Kind;
import pappus.part.Part;

/** What the tests on laws share: the committed records of a kind, shares and medians. */
final class Bands {
  private Bands() {}

  static <P extends Part> List<P> records(Kind kind, Class<P> record) {
    return CommittedCatalogueTest.committed(kind).stream().map(record::cast).toList();
  }

  /** Share of the values inside a band, both ends included. */
  static double inside(Collection<Double> values, double low, double high) {
    return (double)
            values.stream().filter(value -> value >= low && value <= high).count()
        / values.size();
  }

  /** Share of the values within two deviations of one, in logarithm. */
  static double withinTwo(Collection<Double> ratios, double sigma) {
    return inside(ratios, StrictMath.exp(-2 * sigma), StrictMath.exp(2 * sigma));
  }

  static double median(Collection<Double> values) {
    var sorted = values.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    var middle = sorted.length / 2;
    return sorted.length % 2 == 1
        ? sorted[middle]
        : DoubleStream.of(sorted[middle - 1], sorted[middle]).average().orElseThrow();
  }
}
