package pappus.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static pappus.part.Parts.with;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pappus.evidence.prior.ClassPriors;
import pappus.part.Battery;
import pappus.part.Known;
import pappus.part.Motor;
import pappus.part.Parts;
import pappus.part.Propeller;
import pappus.part.Propeller.Row;
import pappus.part.Propeller.StaticTest;
import pappus.physics.propeller.BladeElements;

class FigureTest {
  /** Against a usual 100 mΩ. */
  private static Figure weighed(double stated, double doubt, Known known) {
    return Figure.weighed(
        new Reading(Trait.WINDING, "maker", known, stated, 100, doubt, false),
        Population.ofClass(Trait.WINDING),
        Figure.NO_CEILING);
  }

  /**
   * Expectation and deviation of a normal class under an error that is a blunder once in a hundred, by summing over what
   * the truth may be: class 100 ± 15 %, record ± 5 %.
   */
  @ParameterizedTest
  @ValueSource(doubles = {60, 80, 95, 100, 120, 140, 180})
  void countsWhatClassAndRecordTogetherSay(double stated) {
    var figure = weighed(stated, 0.05, Known.MAKER);

    var sums = summed(
        stated,
        error -> 0.99 * normal(0.05).density(error)
            + 0.01 * normal(Math.hypot(0.05, 0.25)).density(error),
        truth -> 1);
    assertThat(StrictMath.log(figure.posterior() / 100)).isCloseTo(sums[0], within(1e-6));
    assertThat(figure.deviation()).isCloseTo(sums[1], within(1e-6));
  }

  /** The same under a ceiling at 1.05 of what is usual, 5 % soft. */
  @ParameterizedTest
  @ValueSource(doubles = {80, 100, 120, 140})
  void countsNoMoreThanASoftCeilingLets(double stated) {
    var figure = Figure.weighed(
        new Reading(Trait.WINDING, "maker", Known.MAKER, stated, 100, 0.05, false),
        Population.ofClass(Trait.WINDING),
        105);

    var sums = summed(
        stated,
        error -> 0.99 * normal(0.05).density(error)
            + 0.01 * normal(Math.hypot(0.05, 0.25)).density(error),
        truth -> normal(0.05).cumulativeProbability(StrictMath.log(1.05) - truth));
    assertThat(StrictMath.log(figure.posterior() / 100)).isCloseTo(sums[0], within(1e-6));
    assertThat(figure.deviation()).isCloseTo(sums[1], within(1e-6));
    assertThat(figure.posterior()).isLessThan(weighed(stated, 0.05, Known.MAKER).posterior());
  }

  private static NormalDistribution normal(double deviation) {
    return new NormalDistribution(0, deviation);
  }

  private static double[] summed(
      double stated, DoubleUnaryOperator error, DoubleUnaryOperator admitted) {
    var first = 0.0;
    var second = 0.0;
    var weights = 0.0;
    for (var truth = -1.2; truth < 1.2; truth += 1e-4) {
      var weight = normal(0.15).density(truth)
          * error.applyAsDouble(StrictMath.log(stated / 100) - truth)
          * admitted.applyAsDouble(truth);
      weights += weight;
      first += weight * truth;
      second += weight * truth * truth;
    }
    var mean = first / weights;
    return new double[] {mean, Math.sqrt(second / weights - mean * mean)};
  }

  @Test
  void countsNothingButTheRecordWithoutDoubt() {
    var figure = weighed(120, 0, Known.MEASURED);

    assertThat(figure.posterior()).isCloseTo(120, within(1e-9));
    assertThat(figure.deviation()).isZero();
  }

  @Test
  void anEstimateOnItsPriorSaysNothingOfThePart() {
    var estimate = weighed(100.1, 0.10, Known.ESTIMATED);
    var reading = weighed(100.1, 0.10, Known.MAKER);

    assertThat(estimate.deviation()).isEqualTo(0.15);
    assertThat(estimate.posterior()).isEqualTo(100.1);
    assertThat(reading.deviation()).isLessThan(0.10);
  }

  @Test
  void cautionGoesHalfADeviationTheHarmfulWay() {
    var figure = weighed(120, 0.05, Known.MAKER);

    assertThat(figure.by(Weighing.STATED, 1)).isEqualTo(120);
    assertThat(figure.by(Weighing.EXPECTED, 1)).isEqualTo(figure.posterior());
    assertThat(StrictMath.log(figure.by(Weighing.CAUTIOUS, 1) / figure.posterior()))
        .isCloseTo(figure.deviation() / 2, within(1e-12));
    assertThat(StrictMath.log(figure.by(Weighing.CAUTIOUS, -1) / figure.posterior()))
        .isCloseTo(-figure.deviation() / 2, within(1e-12));
    assertThat(figure.by(Weighing.CAUTIOUS, 0)).isEqualTo(figure.posterior());
  }

  @Test
  void aLuckyMotorIsDrawnTowardItsClassAndAMeasuredOneLess() {
    var usual = 1000 * ClassPriors.usualWindingOhms(Parts.motor());
    var lucky = with(Parts.motor(), "resistanceMilliohms", 0.7 * usual);

    var maker = Evidence.NONE.motor(lucky).winding();
    var measured = Evidence.NONE.motor(with(lucky, "figures", Known.MEASURED)).winding();
    var own = Evidence.NONE.motor(with(lucky, "figuresDoubt", 0.15)).winding();

    assertThat(maker.posterior()).isGreaterThan(0.7 * usual).isLessThan(usual);
    assertThat(measured.posterior()).isGreaterThan(0.7 * usual).isLessThan(maker.posterior());
    // As doubtful as its class is wide: half-way, in logarithms, but for the chance of a slip.
    assertThat(own.posterior()).isCloseTo(Math.sqrt(0.7) * usual, withinPercentage(0.2));
  }

  @Test
  void aFittedResistanceKeepsItsControllerAndLeads() {
    Motor fitted = with(Parts.motor(), "resistanceReading", Motor.ResistanceReading.FITTED);

    var figures = Evidence.NONE.motor(fitted);

    assertThat(figures.pathMilliohms()).isCloseTo(10, within(1e-9));
    assertThat(figures.winding().stated().orElseThrow()).isCloseTo(140, within(1e-9));
    assertThat(Evidence.NONE.motor(Parts.motor()).pathMilliohms()).isZero();
  }

  @Test
  void aLabelsKvIsBroughtDownAndALoadedOneIsNot() {
    Motor label = with(Parts.motor(), "speedConstantReading", Motor.KvReading.LABEL);

    assertThat(Evidence.NONE.motor(label).loadedKv()).isCloseTo(2750 / 1.055, within(1e-9));
    assertThat(Evidence.NONE.motor(Parts.motor()).loadedKv()).isEqualTo(2750);
  }

  @Test
  void aPropellerIsHeldAgainstItsClassAtTheMiddleOfItsTest() {
    Propeller propeller = with(
        Parts.propeller(),
        "test",
        new StaticTest(
            List.of(
                new Row(8000.0, 0.10, 0.050),
                new Row(12_000.0, 0.12, 0.056),
                new Row(16_000.0, 0.13, 0.062)),
            null,
            null));

    var figures = Evidence.NONE.propeller(propeller);

    assertThat(figures.thrust().stated()).contains(0.12);
    assertThat(figures.merit().stated().orElseThrow())
        .isCloseTo(StrictMath.pow(0.12, 1.5) / 0.056 / Math.sqrt(Math.PI / 2), within(1e-12));
    assertThat(figures.thrust().deviation()).isBetween(0.04, 0.05);
  }

  @Test
  void aPropellerWithoutATestCarriesTheDoubtOfItsBladeElements() {
    var figures = Evidence.NONE.propeller(Parts.propeller());

    assertThat(figures.thrust().stated()).isEmpty();
    assertThat(figures.thrust().deviation()).isEqualTo(0.10);
    assertThat(figures.merit().deviation()).isEqualTo(0.05);
    // What counts is what flies: the curve of the blade elements, half a spread worse.
    var flown = BladeElements.propeller(4 * 0.0254, 2.5 * 0.0254, 2).in(1.2, 1.81e-5);
    var speed = 70_000 / 4.0 * Math.PI / 30;
    assertThat(figures.thrust().posterior())
        .isCloseTo(flown.thrustCoefficient(speed), withinPercentage(0.1));
    assertThat(figures.merit().posterior())
        .isCloseTo(flown.figureOfMerit(speed) * Math.exp(-0.5 * 0.05), withinPercentage(0.1));
  }

  @Test
  void aLoadedKvIsHeldAgainstThePriorOfItsLabel() {
    Motor loaded = with(Parts.motor(), "speedConstantRpmPerVolt", 2750 / 1.055);
    Motor label = with(Parts.motor(), "speedConstantReading", Motor.KvReading.LABEL);

    assertThat(Evidence.NONE.motor(loaded).winding().prior())
        .isCloseTo(Evidence.NONE.motor(label).winding().prior(), within(1e-9));
    assertThat(Evidence.NONE.motor(loaded).noLoad().prior())
        .isCloseTo(Evidence.NONE.motor(label).noLoad().prior(), within(1e-9));
  }

  @Test
  void aChargersReadingIsRaisedAndTrustedLittle() {
    Battery direct = with(
        Parts.battery(),
        "resistance",
        new Battery.Resistance(9, Battery.Resistance.Reading.DIRECT_CURRENT));
    Battery charger = with(
        Parts.battery(),
        "resistance",
        new Battery.Resistance(5, Battery.Resistance.Reading.CHARGER));

    var prior = 14 / 0.85;
    assertThat(Evidence.NONE.battery(charger).cellResistance().stated().orElseThrow())
        .isCloseTo(9, within(1e-12));
    assertThat(Evidence.NONE.battery(charger).cellResistance().posterior())
        .isBetween(Evidence.NONE.battery(direct).cellResistance().posterior(), prior);
    assertThat(Evidence.NONE.battery(Parts.battery()).cellResistance().posterior())
        .isCloseTo(prior, within(1e-9));
  }

  @Test
  void aLabelCountsForWhatPacksDeliverAndADischargeForMore() {
    Battery seen = with(Parts.battery(), "deliveredMilliampHours", 840.0);

    assertThat(Evidence.NONE.battery(Parts.battery()).delivered().posterior())
        .isCloseTo(0.95 * 850, within(1e-9));
    assertThat(Evidence.NONE.battery(seen).delivered().posterior()).isBetween(0.95 * 850, 840.0);
  }

  @Test
  void aBoardsOwnLossIsWeighedAndTheOthersHaveNone() {
    assertThat(Evidence.NONE.board(Parts.board()).controllerLoss()).isEmpty();
    var smooth = Evidence.NONE.board(with(Parts.board(), "controllerLoss", 0.2)).controllerLoss();
    assertThat(smooth.orElseThrow().posterior()).isBetween(0.25, 0.26);
  }

  @Test
  void aBuildTellsAllItsFigures() {
    var build = Parts.of(Parts.motor(), Parts.propeller(), Parts.battery(), Parts.board());

    assertThat(Evidence.NONE.build(build).all(build))
        .extracting(one -> one.part().id() + " " + one.figure().name())
        .containsExactly(
            "motor winding resistance",
            "motor no-load current",
            "propeller thrust coefficient",
            "propeller figure of merit",
            "battery cell resistance",
            "battery charge delivered");
  }
}
