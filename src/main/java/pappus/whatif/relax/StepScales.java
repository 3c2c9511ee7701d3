package pappus.whatif.relax;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.ToDoubleFunction;
import pappus.assessment.Assessment;
import pappus.assessment.LimitKind;
import pappus.change.Asked;
import pappus.part.Board;
import pappus.part.OutputPower;
import pappus.part.Part;
import pappus.part.Transmitter;

/** Demands that have a number. */
final class StepScales {
  /** A scenario takes no more, m/s. */
  private static final double MOST_AIRSPEED = 60;

  private StepScales() {}

  /** A bound that a scenario states, up to where it excludes nothing. */
  static StepScale bound(LimitKind kind, Asked asked) {
    var scenario = asked.scenario();
    var field = kind.field();
    return new Line(
        asked,
        kind.bound(scenario).orElseThrow(),
        field.loosest(),
        field.step(),
        (" " + kind.unit(asked.currency())).stripTrailing(),
        value -> field.stating(value, asked.currency()),
        build ->
            field.allowing().apply(scenario, build.limit(kind).orElseThrow().value()));
  }

  /** By hundredths. */
  static StepScale confidence(Asked asked) {
    return unmeasured(
        asked,
        asked.scenario().massCap().confidenceOrUsual(),
        0.5,
        "0.01",
        "",
        value -> Map.of("massCap.confidence", value));
  }

  /** By grams. */
  static StepScale payload(Asked asked) {
    return unmeasured(
        asked,
        asked.scenario().payloadGrams(),
        0,
        "1",
        " g",
        value -> Map.of("payload.massGrams", value));
  }

  /** By half metres a second: upward where the wind is faster, else downward; neither is ever less to ask. */
  static StepScale airspeed(Asked asked, double metresPerSecond) {
    var to = metresPerSecond <= asked.scenario().flight().windOrCalm() ? MOST_AIRSPEED : 1;
    return new Line(
        asked,
        metresPerSecond,
        to,
        new BigDecimal("0.5"),
        " m/s",
        value -> Map.of("flight.airspeedMetresPerSecond", value),
        build -> to) {
      @Override
      public boolean isOrdered() {
        return false;
      }
    };
  }

  /** By half metres a second. */
  static StepScale wind(Asked asked) {
    return unmeasured(
        asked,
        asked.scenario().flight().windOrCalm(),
        0,
        "0.5",
        " m/s",
        value -> Map.of("flight.windMetresPerSecond", value));
  }

  /** By the settings that senders of the catalogue have below what is asked. */
  static StepScale transmitterPower(Asked asked, double milliwatts) {
    var settings = asked.supply().catalog().parts().stream()
        .flatMap(part -> powers(part).stream())
        .map(OutputPower::milliwatts)
        .filter(power -> power < milliwatts)
        .distinct()
        .sorted(Comparator.reverseOrder())
        .toList();
    return new StepScale() {
      /** A lower power reaches less far. */
      @Override
      public boolean isOrdered() {
        return asked.scenario().reachMetres() == null;
      }

      @Override
      public int steps() {
        return settings.size();
      }

      @Override
      public Asked at(int step) {
        return step == 0
            ? asked
            : asked.with(Map.of("transmitterMilliwatts", settings.get(step - 1)));
      }

      @Override
      public String shown(int step) {
        var value = step == 0 ? milliwatts : settings.get(step - 1);
        return plain(BigDecimal.valueOf(value)) + " mW";
      }

      @Override
      public int first(Assessment build) {
        return steps();
      }
    };
  }

  private static List<OutputPower> powers(Part part) {
    if (part instanceof Transmitter transmitter) {
      return transmitter.powers();
    }
    return part instanceof Board board && board.transmitter() != null
        ? board.transmitter().powers()
        : List.of();
  }

  private static StepScale unmeasured(
      Asked asked,
      double from,
      double to,
      String step,
      String unit,
      Function<BigDecimal, Map<String, ?>> changes) {
    return new Line(asked, from, to, new BigDecimal(step), unit, changes, build -> to);
  }

  private static String plain(BigDecimal value) {
    return value.stripTrailingZeros().toPlainString();
  }

  /** Equal steps from a value to another, up or down. */
  private static class Line implements StepScale {
    private final BigDecimal from;
    private final BigDecimal to;
    private final BigDecimal step;
    private final String unit;
    private final IntFunction<Asked> asked;
    private final ToDoubleFunction<Assessment> value;
    private final int steps;

    /**
     * @param changes of the scenario for a value
     * @param value what a build would be allowed by
     */
    Line(
        Asked asked,
        double from,
        double to,
        BigDecimal step,
        String unit,
        Function<BigDecimal, Map<String, ?>> changes,
        ToDoubleFunction<Assessment> value) {
      this.from = BigDecimal.valueOf(from);
      this.to = BigDecimal.valueOf(to);
      this.step = step.multiply(BigDecimal.valueOf(to < from ? -1 : 1));
      this.unit = unit;
      this.value = value;
      this.steps = count(this.to.doubleValue());
      this.asked = at -> asked.with(new HashMap<>(changes.apply(value(at))));
    }

    private int count(double target) {
      return BigDecimal.valueOf(target)
          .subtract(from)
          .divide(step, 0, RoundingMode.CEILING)
          .max(BigDecimal.ZERO)
          .intValue();
    }

    private BigDecimal value(int at) {
      var reached = from.add(step.multiply(BigDecimal.valueOf(at)));
      return step.signum() > 0 ? reached.min(to) : reached.max(to);
    }

    @Override
    public int steps() {
      return steps;
    }

    @Override
    public Asked at(int at) {
      return asked.apply(at);
    }

    @Override
    public String shown(int at) {
      return plain(value(at)) + unit;
    }

    @Override
    public int first(Assessment build) {
      return Math.min(steps, count(value.applyAsDouble(build)));
    }
  }
}
