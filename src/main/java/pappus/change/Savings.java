package pappus.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.assessment.flight.Factors;
import pappus.assessment.flight.FlightEstimate;
import pappus.files.json.Altered;
import pappus.part.Battery;
import pappus.part.Build;
import pappus.part.Connector;
import pappus.part.Lead;
import pappus.part.Role;
import pappus.part.Screw;
import pappus.part.Wire;

/**
 * Where a build can lose grams, the cheapest first: shorter wires, a plug one size down where the currents allow,
 * titanium screws, other parts. That these come before anything else is common practice, no published source. Strap
 * and screws of the stock are the lightest that serve already.
 */
public final class Savings {
  /** Wires are told by so much, mm. */
  public static final double WIRE_MM = 10;

  /** A titanium screw weighs so much of a steel one of its size: the ratio of their densities, 4.5 to 7.9. */
  private static final double TITANIUM_OVER_STEEL = 0.57;

  /** A lighter part may cost so much of the flight and still count as a saving. */
  private static final double MOST_LOST = 0.01;

  /** Less is not worth a word. */
  private static final double LEAST_GRAMS = 0.1;

  private final Assessor assessor;
  private final Assessment base;
  private final FlightEstimate flight;
  private final List<Saving> found = new ArrayList<>();

  private Savings(Assessor assessor, Assessment base) {
    this.assessor = assessor;
    this.base = base;
    this.flight = base.flight().orElseThrow();
  }

  /**
   * Ways to save grams, the least to pay for a gram first.
   *
   * @param base a build that flies
   * @param swaps of its parts, by whatever role
   */
  public static List<Saving> of(Assessor assessor, Assessment base, List<Swap> swaps) {
    var savings = new Savings(assessor, base);
    savings.addWires();
    savings.addPlug();
    savings.addScrews();
    swaps.stream()
        // In the order of roles, so that equals are told in the same order on every run.
        .collect(Collectors.groupingBy(Swap::role, TreeMap::new, Collectors.toList()))
        .values()
        .forEach(savings::addBest);
    return savings.found.stream()
        .filter(saving -> saving.grams() >= LEAST_GRAMS)
        .sorted(Comparator.comparingDouble(Saving::centsPerGram)
            .thenComparing(Comparator.comparingDouble(Saving::grams).reversed()))
        .toList();
  }

  /** What so much less is worth; 0 where the physics refuses the lighter aircraft. */
  private double lighter(double grams) {
    var flown = assessor.likeliest().whatIf(base);
    try {
      return flown.applyAsDouble(Factors.added(-grams, 0)) - flown.applyAsDouble(Factors.NONE);
    } catch (IllegalArgumentException outsideTheModel) {
      return 0;
    }
  }

  /** Both wires of whatever lies between pack and board. */
  private void addWires() {
    var build = base.build();
    var battery = build.battery().orElseThrow();
    var longest = Stream.of(
            build.lead().map(lead -> new Wires("battery lead", lead.gauge(), lead.millimetres())),
            Optional.of(new Wires("pack's wires", battery.leadGauge(), battery.leadMillimetres())),
            build
                .board()
                .flatMap(board -> Optional.ofNullable(board.plug()))
                .map(plug -> new Wires("board's battery wires", plug.gauge(), plug.millimetres())))
        .flatMap(Optional::stream)
        .filter(wires -> wires.millimetres() > 2 * WIRE_MM)
        .max(Comparator.comparingDouble(Wires::gramsSaved));
    longest.ifPresent(wires -> found.add(new Saving(
        Saving.Way.SHORTER_WIRES,
        wires.what(),
        wires.gramsSaved(),
        lighter(wires.gramsSaved()),
        OptionalLong.of(0),
        Optional.empty())));
  }

  private record Wires(String what, int gauge, double millimetres) {
    double gramsSaved() {
      return 2 * WIRE_MM / 1000 * Wire.ofGauge(gauge).gramsPerMetre();
    }
  }

  /** The largest lighter plug whose ratings hold in flight and at full throttle, and that no one-cell charger takes. */
  private void addPlug() {
    var battery = base.build().battery().orElseThrow();
    var flown = Math.max(flight.endurance().discharge().startA(), flight.amps());
    var most = flight.full().busCurrentA();
    Stream.of(Connector.values())
        .filter(plug -> plug.halfGrams() < battery.connector().halfGrams()
            && !(plug.isForOneCell() && battery.cellsInSeries() > 1)
            && plug.continuousAmps() >= flown
            && plug.burstAmps() >= most)
        .max(Comparator.comparingDouble(Connector::continuousAmps))
        .ifPresent(plug -> addPlug(battery, plug));
  }

  private void addPlug(Battery battery, Connector plug) {
    var before = battery.connector();
    var half = before.halfGrams() - plug.halfGrams();
    var changes = new HashMap<String, Object>();
    changes.put("connector", plug);
    if (battery.massIncludesLeads()) {
      changes.put("mass.grams", battery.mass().grams() - half);
    }
    var changed = altered(battery, changes)
        .flatMap(smaller -> withLead(base.build().with(Role.BATTERY, smaller), plug, half))
        .orElse(null);
    if (changed == null) {
      return;
    }
    var assessment = assessor.assess(changed);
    if (assessment.flight().isPresent()
        && assessment.broken().size() <= base.broken().size()) {
      found.add(new Saving(
          Saving.Way.SMALLER_PLUG,
          "%s in place of %s".formatted(plug.label(), before.label()),
          base.mass().grams() - assessment.mass().grams(),
          Assessment.figure(assessment.flown() - base.flown()),
          OptionalLong.empty(),
          Optional.empty()));
    }
  }

  /** Nothing where the pack is as dense already as a record may say. */
  private static Optional<Battery> altered(Battery battery, Map<String, ?> changes) {
    try {
      return Optional.of(Altered.record(Battery.class, battery, changes));
    } catch (IllegalArgumentException refused) {
      return Optional.empty();
    }
  }

  /** The other half of the plug, on the lead; a plug that a board comes with is not changed. */
  private static Optional<Build> withLead(Build build, Connector plug, double half) {
    return build
        .lead()
        .map(lead -> build.with(
            Role.LEAD,
            Altered.record(
                Lead.class,
                lead,
                Map.of(
                    "batterySide",
                    plug,
                    "mass.grams",
                    Math.max(0.01, lead.mass().grams() - half)))));
  }

  private void addScrews() {
    base.fitting()
        .hardware()
        .items()
        .forEach(item -> item.part()
            .filter(part -> part instanceof Screw screw && screw.material() == Screw.Material.STEEL)
            .ifPresent(part -> {
              var grams = item.pieces() * part.mass().grams() * (1 - TITANIUM_OVER_STEEL);
              found.add(new Saving(
                  Saving.Way.TITANIUM_SCREWS,
                  item.label(),
                  grams,
                  lighter(grams),
                  OptionalLong.empty(),
                  Optional.empty()));
            }));
  }

  /** The least to pay for a gram among lighter parts of one role that lose next to nothing of the flight. */
  private void addBest(List<Swap> swaps) {
    var least = -MOST_LOST * Assessment.figure(base.flown());
    swaps.stream()
        .filter(swap -> swap.assessment().isFeasible()
            && -swap.gramsMore() >= LEAST_GRAMS
            && swap.gained() >= least)
        .map(swap -> new Saving(
            Saving.Way.SWAP,
            swap.role().label(),
            -swap.gramsMore(),
            swap.gained(),
            OptionalLong.of(swap.centsMore()),
            Optional.of(swap)))
        .min(Comparator.comparingDouble(Saving::centsPerGram)
            .thenComparing(Comparator.comparingDouble(Saving::grams).reversed()))
        .ifPresent(found::add);
  }
}
