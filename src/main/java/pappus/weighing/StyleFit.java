package pappus.weighing;

import java.util.List;

/**
 * What flights of one style say of the power needed.
 *
 * @param style way of flying
 * @param factor power that propellers need over what is computed
 * @param doubt one standard deviation of it: the scatter of the flights, and the charger's own error
 * @param flights one a flight
 */
public record StyleFit(String style, double factor, double doubt, List<FlightFit> flights) {
  /** A charger's own error, one standard deviation: common practice, no published source. */
  public static final double CHARGER = 0.03;

  /** Scatter of single flights where there are too few to tell: engineering estimate. */
  static final double USUAL_SCATTER = 0.05;

  public StyleFit {
    flights = List.copyOf(flights);
  }

  static StyleFit of(String style, List<FlightFit> flights) {
    var mean = flights.stream().mapToDouble(FlightFit::factor).average().orElseThrow();
    var squares = flights.stream()
        .mapToDouble(flight -> (flight.factor() - mean) * (flight.factor() - mean))
        .sum();
    // With few flights their scatter is not known: it is drawn toward the usual one, which counts
    // as two.
    var scatter = Math.sqrt((squares + 2 * USUAL_SCATTER * USUAL_SCATTER) / (flights.size() + 1));
    var doubt = Math.hypot(scatter / Math.sqrt(flights.size()), CHARGER * mean);
    return new StyleFit(style, mean, doubt, flights);
  }
}
