package pappus.weighing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Predicate;
import pappus.assessment.Assessment;
import pappus.assessment.MassTable;
import pappus.assessment.Supply;
import pappus.assessment.flight.Factors;
import pappus.catalog.BuildText;
import pappus.files.InputException;
import pappus.files.Problem;
import pappus.files.json.Altered;
import pappus.fitting.Hardware;
import pappus.part.Battery;
import pappus.part.Build;
import pappus.part.Flown;
import pappus.part.Known;
import pappus.part.Mass;
import pappus.part.Part;
import pappus.part.PartCopy;
import pappus.part.Role;
import pappus.quantity.Require;
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
  private static final String WEIGHED = " Its mass: weighed by the builder.";
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
   * @param masses readings, of one thing once
   * @param flights as they were logged
   * @throws IllegalArgumentException if the physics refuses the build
   * @throws InputException at its line, if no factor explains a flight
   */
  public static WeighIn of(
      Scenario scenario,
      Supply supply,
      Build build,
      List<MassRow> masses,
      List<FlightRow> flights) {
    // Factors are found against the tool's own estimate, not against earlier ones.
    var plain =
        new Supply(supply.catalog(), supply.shelf(), Map.of(), supply.evidence(), supply.aboard());
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
      var leads = line.part().filter(Battery.class::isInstance).isPresent()
          ? leads(before)
          : MassTable.of(List.of());
      row.ifPresent(reading -> weighed.add(new Weighed(
          line.label(),
          line.part(),
          line.grams() + leads.grams(),
          Math.hypot(line.doubtGrams(), leads.doubtGrams()),
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
              line.grams() + leads(before).grams(),
              Math.hypot(line.doubtGrams(), leads(before).doubtGrams()),
              ready.gramsEach() - dry.gramsEach() - payload(before).grams(),
              Math.hypot(
                  Math.hypot(ready.deviationGrams(), dry.deviationGrams()),
                  payload(before).doubtGrams()),
              true)));
    }
    if (dry != null) {
      weighed.add(whole(MassRow.DRY, dry, dry(before)));
    }
    if (ready != null) {
      weighed.add(whole(MassRow.READY, ready, before.mass()));
    }
    return weighed;
  }

  private static Weighed whole(String what, MassRow row, MassTable estimate) {
    return new Weighed(
        what,
        Optional.empty(),
        estimate.grams(),
        estimate.doubtGrams(),
        row.gramsEach(),
        row.deviationGrams(),
        false);
  }

  private static Battery pack(Assessment assessment) {
    return assessment.build().battery().orElseThrow();
  }

  /** Carried besides the aircraft, g. */
  public double payloadGrams() {
    return payload(assessment).grams();
  }

  /** The aircraft without its pack, the pack's leads and the payload. */
  public static MassTable dry(Assessment assessment) {
    return part(
        assessment,
        line -> !line.label().equals(Role.BATTERY.label()) && !isLeads(line) && !isPayload(line));
  }

  private static MassTable leads(Assessment assessment) {
    return part(assessment, WeighIn::isLeads);
  }

  private static MassTable payload(Assessment assessment) {
    return part(assessment, WeighIn::isPayload);
  }

  private static boolean isLeads(MassTable.Line line) {
    return line.part().isEmpty() && line.label().equals(Hardware.PACK_LEADS);
  }

  private static boolean isPayload(MassTable.Line line) {
    return line.part().isEmpty() && line.label().equals(MassTable.PAYLOAD);
  }

  private static MassTable part(Assessment assessment, Predicate<MassTable.Line> counts) {
    return MassTable.of(assessment.mass().lines().stream().filter(counts).toList());
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
    if (!part.source().endsWith(WEIGHED)) {
      changes.put("source", part.source() + WEIGHED);
    }
    if (part instanceof Battery) {
      changes.put("massIncludesLeads", true);
    }
    return PartCopy.with(part, changes);
  }

  /**
   * @throws InputException at the flight's line, if no factor explains it
   */
  private static FlightFit fit(
      FlightRow row, Scenario scenario, Supply supply, Build build, double unexplained) {
    var assessor = supply.assessor(asFlown(row, scenario));
    var flown = row.pack()
        .map(id -> build.with(Role.BATTERY, supply.catalog().part(id).orElseThrow()))
        .orElse(build);
    var assessment = assessor.assess(flown);
    var seconds = 60 * row.minutes();
    var computed =
        assessor.likeliest().milliampHours(assessment, Factors.added(unexplained, 0), seconds);
    var factor = factor(power -> row.chargedMilliampHours()
        - assessor
            .likeliest()
            .milliampHours(assessment, Factors.powered(power, unexplained), seconds));
    if (factor.isEmpty()) {
      throw new InputException(
          InputException.Kind.BAD_DATA,
          List.of(new Problem(
              row.file(),
              row.line(),
              String.format(
                  Locale.ROOT,
                  "charged_mah must be what such a flight can take, but is %s where %.0f are computed: no propeller is as good, or as bad. Maybe minutes are wrong.",
                  Require.plain(row.chargedMilliampHours()),
                  computed))));
    }
    var found = factor.getAsDouble();
    return new FlightFit(
        row,
        computed,
        found,
        assessor
            .likeliest()
            .voltsAfter(
                assessment, Factors.powered(found, unexplained), row.chargedMilliampHours()),
        assessment.build().battery().orElseThrow().cellsInSeries());
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
    var changes = new TreeMap<String, Object>();
    if (!scenario.flight().style().word().equals(row.style())) {
      changes.put("goal", null);
      changes.put("flight.style", row.style());
      // What belongs to the scenario's own way of flying.
      changes.put("flight.airspeedMetresPerSecond", null);
      changes.put("flight.windMetresPerSecond", null);
      changes.put("flight.legs", null);
    }
    row.age().ifPresent(age -> changes.put("flight.packAge", age));
    row.airCelsius().ifPresent(celsius -> changes.put("air.temperatureCelsius", celsius));
    row.packCelsius().ifPresent(celsius -> changes.put("air.packTemperatureCelsius", celsius));
    return Altered.record(Scenario.class, scenario, changes);
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
