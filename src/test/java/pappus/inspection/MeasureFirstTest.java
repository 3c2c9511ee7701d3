package pappus.inspection;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import pappus.assessment.flight.Factors;
import pappus.reliance.Doubt;
import pappus.search.Enumeration;
import pappus.shop.SmallShop;

final class MeasureFirstTest {
  private static final double MOVED = 0.02;

  @Test
  void sensitivitiesAreThoseOfFlights() {
    assertNear(MeasureFirst.BY_MERIT, Doubt.MERIT, MOVED);
    assertNear(MeasureFirst.BY_RESISTANCE, Doubt.RESISTANCE, MOVED);
    assertNear(MeasureFirst.BY_NO_LOAD, Doubt.NO_LOAD, MOVED);
    assertNear(MeasureFirst.BY_CELL_RESISTANCE, Doubt.CELL_RESISTANCE, MOVED);
    assertNear(MeasureFirst.BY_CAPACITY, Doubt.CAPACITY, MOVED);
    assertNear(MeasureFirst.BY_LOSS, Doubt.LOSS, MOVED);
    assertNear(MeasureFirst.BY_THRUST_KEPT, Doubt.THRUST_LOST, MOVED);
    assertNear(MeasureFirst.BY_GRAM, Doubt.MASS, 1);
  }

  /** The median of every build that flies is within half as much again. */
  private static void assertNear(double told, Doubt doubt, double by) {
    var question = SmallShop.question(SmallShop.few(), "");
    var all = new ArrayList<Double>();
    for (var build : Enumeration.feasible(question)) {
      ToDoubleFunction<Factors> flown = question.assessor().likeliest().whatIf(build);
      var more = flown.applyAsDouble(doubt.moved(Factors.NONE, by));
      var less = flown.applyAsDouble(doubt.moved(Factors.NONE, -by));
      all.add(Math.abs(Math.log(more / less)) / (2 * by));
    }
    var median = all.stream().sorted().toList().get(all.size() / 2);
    assertThat(told).as(doubt.label()).isBetween(median / 1.5, median * 1.5);
  }
}
