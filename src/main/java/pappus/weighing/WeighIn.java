package pappus.weighing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import pappus.assessment.Assessment;
import pappus.assessment.Factors;
import pappus.assessment.Supply;
import pappus.catalog.Battery;
import pappus.catalog.Build;
import pappus.catalog.BuildText;
import pappus.catalog.Flown;
import pappus.catalog.Known;
import pappus.catalog.Mass;
import pappus.catalog.Part;
import pappus.catalog.Role;
import pappus.files.Altered;
import pappus.quantity.Root;
import pappus.scenario.Flight;
import pappus.scenario.Scenario;

/**
 * What scale and flights say against the estimate.
 *
 * @param assessment the build by the records as they were
 * @param after the build with the weighed masses in its records
 * @param weighed one a part or aircraft that was weighed
 * @param fits one a way of flying, in the order of their first flights
 * @param sensorScale what the current sensor's scale has to be multiplied by; absent without its readings
 * @param records parts with their weighed masses
 * @param flown what the flights say
 */
public record WeighIn(
    Assessment assessment,
    Assessment after,
    List<Weighed> weighed,
    List<StyleFit> fits,
    OptionalDouble sensorScale,
    List<Part> records,
    List<Flown> flown) {
  private static final double LEAST_FACTOR = 0.5;
  private static final double MOST_FACTOR = 2;
  private static final double FACTOR_STEP = 0.02;

  public WeighIn {
    weighed = List.copyOf(weighed);
    fits = List.copyOf(fits);
    records = List.copyOf(records);
    flown = List.copyOf(flown);
  }

  /**
   * Sets measurement against estimate.
   *
   * @param masses readings; of several of one thing the last counts
   * @param flights as they were logged
   * @throws IllegalArgumentException if the physics refuses a flight
   */
  public static WeighIn of(
      Scenario scenario,
      Supply supply,
      Build build,
      List<MassRow> masses,
      List<FlightRow> flights) {
    // Factors are found against the tool's own estimate, not against earlier ones.
    var plain = new Supply(supply.catalog(), supply.shelf());
    var before = plain.assessor(scenario).assess(build);
    var readings = new LinkedHashMap<String, MassRow>();
    masses.forEach(row -> readings.put(row.what(), row));
    var weighed = weighed(before, readings);
    var records = new ArrayList<Part>();
    weighed.forEach(one -> one.part().ifPresent(part -> records.add(record(part, one, before))));
    var updated = plain.with(replaced(supply, records));
    var after =
        updated.assessor(scenario).assess(BuildText.parse(build.toString(), updated.catalog()));
    var ready = weighed.stream().filter(one -> one.what().equals(MassRow.READY)).findFirst();
    var unexplained =
        ready.map(one -> one.measuredGrams() - after.mass().grams()).orElse(0.0);
    var byStyle = new LinkedHashMap<String, List<FlightFit>>();
    for (var flight : flights) {
      byStyle
          .computeIfAbsent(flight.style(), fresh -> new ArrayList<>())
          .add(fit(flight, scenario, updated, after.build(), unexplained));
    }
    var fits = byStyle.entrySet().stream()
        .map(entry -> StyleFit.of(entry.getKey(), entry.getValue()))
        .toList();
    return new WeighIn(before, after, weighed, fits, sensorScale(flights), records, flown(fits));
  }

  private static List<Part> replaced(Supply supply, List<Part> records) {
    var byId = new TreeMap<String, Part>();
    supply.catalog().parts().forEach(part -> byId.put(part.id(), part));
    records.forEach(part -> byId.put(part.id(), part));
    return List.copyOf(byId.values());
  }

  private static List<Weighed> weighed(Assessment before, Map<String, MassRow> readings) {
    var weighed = new ArrayList<Weighed>();
    for (var line : before.mass().lines()) {
      var row = line.part().map(part -> readings.get(part.id()));
      // Nobody takes the leads off a pack to weigh it.
      var leads = line.part().filter(Battery.class::isInstance).isPresent() ? leads(before) : 0;
      row.ifPresent(reading -> weighed.add(new Weighed(
          line.label(),
          line.part(),
          line.grams() + leads,
          line.doubtGrams(),
          line.pieces() * reading.gramsEach(),
          line.pieces() * reading.deviationGrams(),
          false)));
    }
    var dry = readings.get(MassRow.DRY);
    var ready = readings.get(MassRow.READY);
    var pack = pack(before);
    if (dry != null && ready != null && !readings.containsKey(pack.id())) {
      before.mass().lines().stream()
          .filter(line -> line.label().equals(Role.BATTERY.label()))
          .findFirst()
          .ifPresent(line -> weighed.add(new Weighed(
              line.label(),
              line.part(),
              line.grams() + leads(before),
              line.doubtGrams(),
              ready.gramsEach() - dry.gramsEach() - payload(before),
              Math.hypot(ready.deviationGrams(), dry.deviationGrams()),
              true)));
    }
    if (dry != null) {
      weighed.add(whole(MassRow.DRY, dry, dryGrams(before), dryDoubt(before)));
    }
    if (ready != null) {
      weighed.add(
          whole(MassRow.READY, ready, before.mass().grams(), before.mass().doubtGrams()));
    }
    return weighed;
  }

  private static Weighed whole(String what, MassRow row, double estimated, double doubt) {
    return new Weighed(
        what, Optional.empty(), estimated, doubt, row.gramsEach(), row.deviationGrams(), false);
  }

  private static Battery pack(Assessment assessment) {
    return assessment.build().battery().orElseThrow();
  }

  /** Estimate of the aircraft without its pack, g. */
  public static double dryGrams(Assessment assessment) {
    return assessment.mass().grams()
        - pack(assessment).mass().grams()
        - leads(assessment)
        - payload(assessment);
  }

  private static double dryDoubt(Assessment assessment) {
    var pack = pack(assessment).mass().standardDeviationGrams();
    var all = assessment.mass().doubtGrams();
    return Math.sqrt(Math.max(0, all * all - pack * pack));
  }

  private static double leads(Assessment assessment) {
    return grams(assessment, "pack leads and plug");
  }

  private static double payload(Assessment assessment) {
    return grams(assessment, "payload");
  }

  private static double grams(Assessment assessment, String label) {
    return assessment.mass().lines().stream()
        .filter(line -> line.part().isEmpty() && line.label().equals(label))
        .mapToDouble(line -> line.grams())
        .sum();
  }

  /** The record of a part with its weighed mass. */
  private static Part record(Part part, Weighed weighed, Assessment before) {
    var pieces = before.mass().lines().stream()
        .filter(line -> line.part().map(Part::id).equals(Optional.of(part.id())))
        .mapToInt(line -> line.pieces())
        .max()
        .orElse(1);
    var grams = Math.rint(weighed.measuredGrams() / pieces * 1000) / 1000;
    var doubt = Math.min(grams, Math.rint(weighed.measuredDoubt() / pieces * 1000) / 1000);
    var changes = new TreeMap<String, Object>();
    changes.put("mass", new Mass(grams, Known.MEASURED, doubt));
    if (part instanceof Battery) {
      changes.put("massIncludesLeads", true);
    }
    return Altered.record(recordOf(part), part, changes);
  }

  @SuppressWarnings("unchecked")
  private static Class<Part> recordOf(Part part) {
    return (Class<Part>) part.kind().recordClass();
  }

  private static FlightFit fit(
      FlightRow row, Scenario scenario, Supply supply, Build build, double unexplained) {
    var assessor = supply.assessor(asFlown(row, scenario));
    var flown = row.pack()
        .map(id -> build.with(Role.BATTERY, supply.catalog().part(id).orElseThrow()))
        .orElse(build);
    var assessment = assessor.assess(flown);
    var seconds = 60 * row.minutes();
    var computed = assessor.milliampHours(assessment, Factors.added(unexplained, 0), seconds);
    var factor = factor(power -> row.chargedMilliampHours()
        - assessor.milliampHours(assessment, Factors.powered(power, unexplained), seconds));
    if (factor.isEmpty()) {
      throw new IllegalArgumentException(String.format(
          Locale.ROOT,
          "the flight of line %d must take what 0.5 to 2 times the power computed can take, but took %.0f mAh where %.0f are computed.",
          row.line(),
          row.chargedMilliampHours(),
          computed));
    }
    return new FlightFit(row, computed, factor.getAsDouble());
  }

  /**
   * The factor where nothing is left. Found in steps from 1: far below it the physics refuses a figure of merit above
   * one.
   *
   * @param left charged less computed, which falls with the factor
   */
  private static OptionalDouble factor(DoubleUnaryOperator left) {
    try {
      var low = 1.0;
      while (left.applyAsDouble(low) < 0) {
        if (low <= LEAST_FACTOR) {
          return OptionalDouble.empty();
        }
        low = Math.max(LEAST_FACTOR, low - FACTOR_STEP);
      }
      var high = 1.0;
      while (left.applyAsDouble(high) > 0) {
        if (high >= MOST_FACTOR) {
          return OptionalDouble.empty();
        }
        high = Math.min(MOST_FACTOR, high + FACTOR_STEP);
      }
      return OptionalDouble.of(Root.ofFalling(left, low, high, 1));
    } catch (IllegalArgumentException outsideTheModel) {
      return OptionalDouble.empty();
    }
  }

  /** The scenario as a flight was flown. */
  private static Scenario asFlown(FlightRow row, Scenario scenario) {
    var changes = new HashMap<String, Object>();
    if (!scenario.flight().style().word().equals(row.style())) {
      changes.put("goal", null);
      changes.put("flight", Map.of("style", row.style()));
    }
    changes.put("flight.packAge", row.age());
    row.airCelsius().ifPresent(celsius -> changes.put("air.temperatureCelsius", celsius));
    row.packCelsius().ifPresent(celsius -> changes.put("air.packTemperatureCelsius", celsius));
    var ordered = new TreeMap<String, Object>(changes);
    return Altered.record(Scenario.class, scenario, ordered);
  }

  /** Whether flights of a style can be computed for a scenario: legs have to be given. */
  public static boolean canBeFlown(String style, Scenario scenario) {
    return !style.equals(Flight.Style.PROFILE.word())
        || scenario.flight().style() == Flight.Style.PROFILE;
  }

  private static OptionalDouble sensorScale(List<FlightRow> flights) {
    var both = flights.stream()
        .filter(flight -> flight.sensorMilliampHours().isPresent())
        .toList();
    if (both.isEmpty()) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(
        both.stream().mapToDouble(FlightRow::chargedMilliampHours).sum()
            / both.stream()
                .mapToDouble(flight -> flight.sensorMilliampHours().getAsDouble())
                .sum());
  }

  private static List<Flown> flown(List<StyleFit> fits) {
    return fits.stream()
        .map(fit -> new Flown(
            fit.style(),
            Math.rint(fit.factor() * 10_000) / 10_000,
            Math.min(0.5, Math.rint(fit.doubt() * 10_000) / 10_000),
            fit.flights().size(),
            "Fitted to what the charger put back after " + fit.flights().size()
                + (fit.flights().size() == 1 ? " flight." : " flights.")))
        .toList();
  }
}
