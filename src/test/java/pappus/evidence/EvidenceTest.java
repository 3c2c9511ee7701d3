package pappus.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static pappus.part.Parts.with;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import pappus.evidence.prior.ClassPriors;
import pappus.part.Known;
import pappus.part.Motor;
import pappus.part.Part;
import pappus.part.Parts;

class EvidenceTest {
  private static final double USUAL = 1000 * ClassPriors.usualWindingOhms(Parts.motor());

  /** Motors that scatter by so much about their class, half of them makers' and half estimated. */
  private static List<Part> motors(int count, double spread, double doubts, double maker) {
    var random = new Random(7);
    var motors = new ArrayList<Part>();
    for (var i = 0; i < count; i++) {
      var known = i % 2 == 0 ? Known.MAKER : Known.ESTIMATED;
      var away = spread * random.nextGaussian()
          + doubts * known.figureDoubt() * random.nextGaussian()
          + (i % 7 == 3 ? maker : 0);
      motors.add(motor(i, known, USUAL * Math.exp(away), "maker " + i % 7));
    }
    return motors;
  }

  private static Motor motor(int i, Known known, double milliohms, String maker) {
    return with(
        with(
            with(
                with(
                    with(Parts.motor(), "resistanceMilliohms", milliohms),
                    "noLoadCurrentAmps",
                    ClassPriors.usualNoLoadAmps(Parts.motor())),
                "id",
                "m-" + i),
            "figures",
            known),
        "maker",
        maker);
  }

  private static Population windings(List<Part> parts) {
    return Evidence.of(parts).population(Trait.WINDING);
  }

  @Test
  void aNarrowCatalogueHasTheSpreadThatItShowsWithoutItsNoise() {
    assertThat(windings(motors(400, 0.075, 1, 0)).spread()).isCloseTo(0.075, within(0.015));
    assertThat(windings(motors(400, 0.075, 1, 0)).widening()).isCloseTo(1, within(0.1));
  }

  @Test
  void aWideCatalogueIsNoReasonForMoreVarietyThanItsClassHas() {
    for (var doubts : new double[] {1, 2, 4}) {
      assertThat(windings(motors(400, 0.15, doubts, 0)).spread()).isLessThanOrEqualTo(0.15);
    }
    assertThat(windings(motors(400, 0.30, 1, 0)).spread()).isEqualTo(0.15);
  }

  @Test
  void doubtsWidenWhereRecordsScatterMoreThanTheySay() {
    assertThat(windings(motors(400, 0.15, 1, 0)).widening()).isCloseTo(1, within(0.2));
    assertThat(windings(motors(400, 0.15, 2, 0)).widening()).isCloseTo(2, within(0.3));
    assertThat(windings(motors(400, 0.45, 1, 0)).widening()).isEqualTo(Population.MOST_WIDENING);
  }

  @Test
  void ofAFewPartsNothingIsTold() {
    var few = motors(Population.FEWEST - 1, 0.01, 1, 0.3);

    assertThat(windings(few)).isEqualTo(Population.ofClass(Trait.WINDING));
    assertThat(windings(motors(Population.FEWEST, 0.01, 1, 0)).spread()).isLessThan(0.15);
  }

  @Test
  void aFewBlundersAreTakenForNeitherVarietyNorDoubt() {
    var parts = motors(400, 0.075, 1, 0);
    for (var i = 0; i < 8; i++) {
      parts.add(motor(1000 + i, Known.MAKER, USUAL * (i % 2 == 0 ? 0.4 : 2.2), "maker " + i % 7));
    }

    assertThat(windings(parts).spread()).isCloseTo(0.075, within(0.02));
    assertThat(windings(parts).widening()).isLessThan(1.3);
    var blunder = (Motor) parts.get(400);
    var figure = Evidence.of(parts).motor(blunder).winding();
    assertThat(figure.posterior()).isCloseTo(USUAL, within(0.12 * USUAL));
    assertThat(figure.drawnBy()).contains(Reason.BLUNDER, Reason.NARROW_CATALOGUE);
  }

  @Test
  void aMakerWhoseFiguresAllLieLowIsDrawnUp() {
    var evidence = Evidence.of(motors(200, 0.15, 1, -0.25));

    assertThat(evidence.leaning()).singleElement().satisfies(leaning -> {
      assertThat(leaning.maker()).isEqualTo("maker 3");
      assertThat(leaning.figure()).isEqualTo("winding resistance");
      assertThat(leaning.by()).isCloseTo(-0.25, within(0.08));
    });
    var his = evidence.motor(motor(1, Known.MAKER, 0.8 * USUAL, "maker 3")).winding();
    var others = evidence.motor(motor(1, Known.MAKER, 0.8 * USUAL, "maker 2")).winding();
    assertThat(his.posterior()).isGreaterThan(1.1 * others.posterior());
    assertThat(his.drawnBy()).contains(Reason.MAKER);
    assertThat(
            evidence.motor(motor(1, Known.MAKER, USUAL, "stranger")).winding().deviation())
        .isGreaterThan(others.deviation());
  }

  @Test
  void measuredIsForWhatWasMeasured() {
    var first = motor(1, Known.MEASURED, 0.7 * USUAL, "maker 1");
    var repeated = motor(2, Known.MEASURED, 0.7 * USUAL, "maker 1");
    var another = motor(3, Known.MEASURED, 0.72 * USUAL, "maker 1");

    var alone = Evidence.of(List.of(first, another));
    var siblings = Evidence.of(List.of(first, repeated, another));

    assertThat(alone.isDerived(first)).isFalse();
    assertThat(siblings.isDerived(first)).isTrue();
    assertThat(siblings.isDerived(another)).isFalse();
    assertThat(siblings.motor(first).winding().doubt()).isEqualTo(0.10);
    assertThat(siblings.motor(first).noLoad().doubt()).isEqualTo(0.20);
    assertThat(alone.motor(first).winding().doubt()).isEqualTo(0.02);
    // What a bench says of its own doubt was not copied.
    var benched = with(first, "figuresDoubt", 0.03);
    assertThat(Evidence.of(List.of(benched, repeated)).isDerived(benched)).isFalse();
  }

  @Test
  void theOrderOfRecordsIsOfNoAccount() {
    var parts = motors(60, 0.2, 1, 0.1);
    var turned = new ArrayList<>(parts);
    Collections.reverse(turned);

    var one = windings(parts);
    var other = windings(turned);
    assertThat(one.spread()).isCloseTo(other.spread(), within(1e-4));
    assertThat(one.widening()).isCloseTo(other.widening(), within(1e-3));
  }
}
