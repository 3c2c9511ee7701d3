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
    return one.agrees() ? "within its doubt" : "off by more than its doubt";
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
            "Readings disagree: dry, pack and payload add up to %s g %s than ready to fly. Weigh again."
                .formatted(Spoken.number(Math.abs(left), 1), left > 0 ? "less" : "more"));
  }

  /** Whether the aircraft on the scale keeps the cap; empty where it was not weighed or keeps it. */
  public static Optional<String> overCap(WeighIn result, MassCap cap) {
    return one(result, MassRow.READY)
        .filter(ready -> cap.strict()
            ? ready.measuredGrams() >= cap.grams()
            : ready.measuredGrams() > cap.grams())
        .map(ready -> "Over the cap on the scale: %s g, must be %s %s g."
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
      return "Weigh it ready to fly too: that is the mass the law asks about.";
    }
    var after = "With the weighed parts it comes to %s g ready to fly"
        .formatted(Spoken.number(result.after().mass().grams(), 1));
    var left = ready.get().measuredGrams() - result.after().mass().grams();
    if (Math.abs(left) < SHOWN) {
      return after + ", as the scale says.";
    }
    return after
        + "; %s g %s is in what was not weighed on its own"
            .formatted(Spoken.number(Math.abs(left), 1), left < 0 ? "less" : "more")
        + (left < 0
            ? "."
            : ": if you cannot find it, enter it as payload.massGrams of the scenario.");
  }

  /** What flights of one style say. */
  public static String fit(StyleFit fit) {
    return String.format(
        Locale.ROOT,
        "%s: %.2f ± %.2f times the propeller power computed, from %d %s.",
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
        "%.1f min: the charger put back %.0f mAh, the estimate says %.0f; ratio %.2f.",
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
          "Landed at %s V with more drawn than its pack holds by record: the pack holds more."
              .formatted(read));
    }
    var sentence = "Landed at %s V; the estimate says %s V after as much charge"
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
      return "Current sensor and charger agree to 3 %, as far as the charger is trusted.";
    }
    return "The current sensor reads %s %% %s against the charger (good to 3 %%): scale its reading by %s."
        .formatted(
            Spoken.number(100 * error, 0), scale < 1 ? "high" : "low", Spoken.number(scale, 3));
  }
}
