package pappus.inspection;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import pappus.evidence.Evidence;
import pappus.evidence.Figure;
import pappus.part.Assumed;
import pappus.part.Battery;
import pappus.part.Board;
import pappus.part.Frame;
import pappus.part.Known;
import pappus.part.Motor;
import pappus.part.Part;
import pappus.part.Propeller;
import pappus.part.Role;

/**
 * A fact that records leave out or nobody weighed, by what it costs in the band of a flight and by what tells it.
 *
 * <p>Why: src/site/markdown/decisions.md#what-to-measure-first-goes-by-a-usual-hover
 *
 * @param fact in words
 * @param parts ids of those that lack it, what costs most first
 * @param share of the minutes of a usual hover, one standard deviation, of the first of them
 * @param tool what tells it
 */
public record MeasureFirst(String fact, List<String> parts, double share, Tool tool) {
  /** What a builder has at hand. */
  public enum Tool {
    SCALE("a scale"),
    RULER("a ruler"),
    MULTIMETER("a multimeter"),
    CHARGER("a charger that shows the mAh put back"),
    HOVER("a minute of hover with the current sensor");

    private final String label;

    Tool(String label) {
      this.label = label;
    }

    /** In words. */
    public String label() {
      return label;
    }
  }

  /**
   * What a usual hover loses or gains, as a share of its minutes, for each share of a figure: medians of small quads of
   * the shipped catalogue, held against their flights by a test.
   */
  static final double BY_MERIT = 0.77;

  static final double BY_RESISTANCE = 0.11;
  static final double BY_NO_LOAD = 0.07;
  static final double BY_CELL_RESISTANCE = 0.021;
  static final double BY_CAPACITY = 1;
  static final double BY_LOSS = 0.22;
  static final double BY_THRUST_KEPT = 1.05;

  /** Of 250 g all-up, and of about 30 W. */
  static final double BY_GRAM = 0.0053;

  static final double BY_WATT = 0.033;

  private static final int MOST_NAMED = 3;

  /** Less is no reason to measure anything. */
  private static final double LEAST = 0.002;

  /** Of the thrust that arms leave, for each share of their width. */
  private static final double KEPT_BY_WIDTH = 0.06;

  /** The law of part load, where a board says nothing of its controllers. */
  private static final double LAW_OF_LOSS = 0.25;

  private static final double NOT_DISCHARGED = 0.05;

  /** One fact of one part. */
  private record One(String fact, String part, double share, Tool tool) {}

  /** What is worth measuring of some parts, what costs most first. */
  public static List<MeasureFirst> of(List<Part> parts, Evidence evidence) {
    var ones = new ArrayList<One>();
    for (var part : parts) {
      add(part, evidence, ones);
    }
    ones.removeIf(one -> one.share < LEAST);
    ones.sort(Comparator.comparingDouble(One::share)
        .reversed()
        .thenComparing(One::fact)
        .thenComparing(One::part));
    var byFact = new LinkedHashMap<String, List<One>>();
    ones.forEach(
        one -> byFact.computeIfAbsent(one.fact, fresh -> new ArrayList<>()).add(one));
    return byFact.entrySet().stream().map(MeasureFirst::together).toList();
  }

  private static MeasureFirst together(Map.Entry<String, List<One>> entry) {
    var first = entry.getValue().get(0);
    return new MeasureFirst(
        entry.getKey(), entry.getValue().stream().map(One::part).toList(), first.share, first.tool);
  }

  private static void add(Part part, Evidence evidence, List<One> ones) {
    var pieces = part.fills().stream().findFirst().map(Role::pieces).orElse(0);
    if (part.mass().known() != Known.MEASURED && pieces > 0) {
      ones.add(new One(
          "mass", part.id(), BY_GRAM * pieces * part.mass().standardDeviationGrams(), Tool.SCALE));
    }
    if (part instanceof Motor motor) {
      unstated(evidence.motor(motor).winding())
          .ifPresent(doubt -> ones.add(
              new One("winding resistance", part.id(), BY_RESISTANCE * doubt, Tool.MULTIMETER)));
      unstated(evidence.motor(motor).noLoad())
          .ifPresent(doubt ->
              ones.add(new One("no-load current", part.id(), BY_NO_LOAD * doubt, Tool.MULTIMETER)));
    } else if (part instanceof Propeller propeller && propeller.test() == null) {
      ones.add(new One(
          "figure of merit",
          part.id(),
          BY_MERIT * evidence.propeller(propeller).merit().deviation(),
          Tool.HOVER));
    } else if (part instanceof Battery battery) {
      unstated(evidence.battery(battery).cellResistance())
          .ifPresent(doubt -> ones.add(
              new One("cell resistance", part.id(), BY_CELL_RESISTANCE * doubt, Tool.CHARGER)));
      if (battery.deliveredMilliampHours() == null) {
        ones.add(
            new One("charge delivered", part.id(), BY_CAPACITY * NOT_DISCHARGED, Tool.CHARGER));
      }
    } else if (part instanceof Board board && board.controllerLoss() == null) {
      ones.add(new One("loss at part load", part.id(), BY_LOSS * LAW_OF_LOSS, Tool.HOVER));
    } else if (part instanceof Frame frame) {
      frame
          .assumed("armWidthMillimetres")
          .ifPresent(one -> ones.add(new One(
              "arm width", part.id(), BY_THRUST_KEPT * KEPT_BY_WIDTH * one.spread(), Tool.RULER)));
    }
    for (var assumed : part.assumed()) {
      watts(assumed)
          .ifPresent(watts -> ones.add(new One(
              "power drawn", part.id(), BY_WATT * watts * assumed.spread(), Tool.MULTIMETER)));
    }
  }

  private static Optional<Double> unstated(Figure figure) {
    return figure.stated().isEmpty() ? Optional.of(figure.deviation()) : Optional.empty();
  }

  /** In a line. */
  public String inWords() {
    var named = parts.stream().limit(MOST_NAMED).collect(Collectors.joining(", "));
    return String.format(
        Locale.ROOT,
        "±%.1f %%  %s of %s%s: %s",
        100 * share,
        fact,
        named,
        parts.size() > MOST_NAMED ? " and " + (parts.size() - MOST_NAMED) + " more" : "",
        tool.label());
  }

  /** What was assumed of a draw, W. */
  private static Optional<Double> watts(Assumed assumed) {
    return assumed.value().endsWith(" W")
        ? Optional.of(Double.parseDouble(assumed.value().replace(" W", "")))
        : Optional.empty();
  }
}
