package pappus.answers.weighing;

import java.util.Locale;
import java.util.Optional;
import pappus.document.Spoken;
import pappus.part.Battery;
import pappus.scenario.MassCap;
import pappus.weighing.FlightFit;
import pappus.weighing.MassRow;
import pappus.weighing.StyleFit;
import pappus.weighing.WeighIn;
import pappus.weighing.Weighed;

/** What scale and flights say, in sentences. */
public final class WeighWords {
  /** A strap may go on with either: no contradiction, g. */
  private static final double STRAP_GRAMS = 3;

  /** Less than this is not shown, g. */
  private static final double SHOWN = 0.05;

  private WeighWords() {}

  /** What a line of the comparison is about. */
  public static String what(Weighed one) {
    return switch (one.what()) {
      case MassRow.DRY -> "dry, without its pack";
      case MassRow.READY -> "ready to fly";
      default ->
        one.what()
            + one.part().map(part -> ", " + part.name()).orElse("")
            + (one.isDerived() ? " (ready less dry)" : "");
    };
  }

  /** Whether estimate and measurement agree. */
  public static String agreement(Weighed one) {
    return one.agrees() ? "within the doubt" : "more than the doubt explains";
  }

  /** Where readings contradict each other: dry and pack are the whole aircraft; empty where they agree. */
  public static Optional<String> contradiction(WeighIn result) {
    var dry = one(result, MassRow.DRY);
    var ready = one(result, MassRow.READY);
    var pack = result.weighed().stream()
        .filter(each -> each.part().filter(Battery.class::isInstance).isPresent())
        .filter(each -> !each.isDerived())
        .findFirst();
    if (dry.isEmpty() || ready.isEmpty() || pack.isEmpty()) {
      return Optional.empty();
    }
    var left = ready.get().measuredGrams()
        - dry.get().measuredGrams()
        - pack.get().measuredGrams()
        - result.payloadGrams();
    var doubt = Math.hypot(
        Math.hypot(ready.get().measuredDoubt(), dry.get().measuredDoubt()),
        pack.get().measuredDoubt());
    return Math.abs(left) <= 2 * doubt + STRAP_GRAMS
        ? Optional.empty()
        : Optional.of(
            "The readings contradict each other: dry, pack and payload are %s g %s than ready to fly. Weigh them again."
                .formatted(Spoken.number(Math.abs(left), 1), left > 0 ? "less" : "more"));
  }

  /** Whether the aircraft on the scale keeps the cap; empty where it was not weighed or keeps it. */
  public static Optional<String> overCap(WeighIn result, MassCap cap) {
    return one(result, MassRow.READY)
        .filter(ready -> cap.strict()
            ? ready.measuredGrams() >= cap.grams()
            : ready.measuredGrams() > cap.grams())
        .map(ready -> "On the scale it does not keep the cap: %s g where it must be %s %s g."
            .formatted(
                Spoken.number(ready.measuredGrams(), 1),
                cap.strict() ? "below" : "at most",
                Spoken.number(cap.grams(), 1)));
  }

  private static Optional<Weighed> one(WeighIn result, String what) {
    return result.weighed().stream().filter(each -> each.what().equals(what)).findFirst();
  }

  /** What is left between estimate and scale once the weighed parts count. */
  public static String left(WeighIn result) {
    var ready = result.weighed().stream()
        .filter(one -> one.what().equals(MassRow.READY))
        .findFirst();
    if (ready.isEmpty()) {
      return "The aircraft ready to fly was not weighed: that is what the law asks about.";
    }
    var after = "With the weighed masses the estimate is %s g ready to fly"
        .formatted(Spoken.number(result.after().mass().grams(), 1));
    var left = ready.get().measuredGrams() - result.after().mass().grams();
    if (Math.abs(left) < SHOWN) {
      return after + ", as the scale says.";
    }
    return after
        + "; %s g %s lie in what was not weighed by itself"
            .formatted(Spoken.number(Math.abs(left), 1), left < 0 ? "less" : "more")
        + (left < 0
            ? "."
            : ": payload.massGrams of a scenario makes them count, if they cannot be found.");
  }

  /** What flights of one style say. */
  public static String fit(StyleFit fit) {
    return String.format(
        Locale.ROOT,
        "%s: the propellers need %.2f times the power computed, ±%.2f, by %d %s.",
        Spoken.sentence(fit.style()),
        fit.factor(),
        fit.doubt(),
        fit.flights().size(),
        fit.flights().size() == 1 ? "flight" : "flights");
  }

  /** One flight. */
  public static String flight(FlightFit flight) {
    return String.format(
        Locale.ROOT,
        "%.1f min took %.0f mAh by the charger, %.0f by the estimate: %.2f.",
        flight.row().minutes(),
        flight.row().chargedMilliampHours(),
        flight.computedMilliampHours(),
        flight.factor());
  }

  /** Whether the pack at landing is as computed; empty where no volts were read. */
  public static Optional<String> landing(FlightFit flight) {
    if (flight.row().landingVolts().isEmpty()) {
      return Optional.empty();
    }
    var read = Spoken.number(flight.row().landingVolts().getAsDouble(), 2);
    if (flight.computedLandingVolts().isEmpty()) {
      return Optional.of(
          "It landed at %s V, where the record of its pack has nothing left after so much charge: the pack holds more than its record says."
              .formatted(read));
    }
    var sentence = "It landed at %s V, where the estimate has %s V after so much charge"
        .formatted(read, Spoken.number(flight.computedLandingVolts().getAsDouble(), 2));
    var difference = flight.landingDifference().getAsDouble();
    if (Math.abs(difference) <= FlightFit.LANDING_DOUBT) {
      return Optional.of(sentence + ".");
    }
    return Optional.of(sentence
        + (difference < 0
            ? ": the pack holds less or sags more than its record says; maybe it is more used up than was counted."
            : ": the pack holds more or sags less than its record says."));
  }

  /** What the current sensor should be set to. */
  public static String sensor(double scale) {
    var error = Math.abs(1 / scale - 1);
    if (error <= StyleFit.CHARGER) {
      return "The current sensor agrees with the charger within the 3 % to which that is trusted.";
    }
    return "The current sensor reads %s %% too %s against the charger, which is trusted to 3 %%: set it so that it shows %s times what it shows now."
        .formatted(
            Spoken.number(100 * error, 0), scale < 1 ? "much" : "little", Spoken.number(scale, 3));
  }
}
