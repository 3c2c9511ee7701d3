package pappus.answers.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pappus.assessment.Assessment;
import pappus.assessment.Finding;
import pappus.assessment.Limit;
import pappus.change.BestSwaps;
import pappus.change.Changed;
import pappus.change.Rates;
import pappus.change.Saving;
import pappus.change.Savings;
import pappus.change.Swap;
import pappus.document.Spoken;
import pappus.part.Part;
import pappus.scenario.Goal;
import pappus.scenario.Scenario;

/** What a change does to a build, in sentences. */
public final class Changes {
  private static final double LEAST_GRAMS = 0.05;
  private static final long LEAST_CENTS = 50;

  /** Less is not worth a question to a maker. */
  private static final double LEAST_ASKED_SECONDS = 10;

  private static final double LEAST_ASKED_METRES = 50;

  private final boolean isForRange;
  private final String currency;
  private final Goal goal;

  /**
   * @param scenario says what builds are ranked by: a base that does not fly cannot
   * @param base the build that changes
   */
  public Changes(Scenario scenario, Assessment base) {
    this(scenario.isForRange(), Reasons.currency(base), scenario.goalOrEndurance());
  }

  /**
   * @param isForRange whether builds are ranked by metres over ground, else by seconds in the air
   * @param currency of prices
   */
  public Changes(boolean isForRange, String currency) {
    this(isForRange, currency, isForRange ? Goal.RANGE : Goal.ENDURANCE);
  }

  private Changes(boolean isForRange, String currency, Goal goal) {
    this.isForRange = isForRange;
    this.currency = currency;
    this.goal = goal;
  }

  /** What a gram and a watt are worth. */
  public String rates(Rates rates) {
    return "One more gram costs "
        + amount(rates.perGram())
        + "; one more watt of electronics costs "
        + amount(rates.perWatt())
        + ".";
  }

  /** What to ask a board's maker, where the answer may matter. */
  public Optional<String> switching(double gained) {
    return gained < (isForRange ? LEAST_ASKED_METRES : LEAST_ASKED_SECONDS)
        ? Optional.empty()
        : Optional.of(
            "The controllers' PWM frequency is not known: 24 kHz is assumed; at 48 kHz it would fly "
                + longer(gained)
                + ". Ask its maker.");
  }

  /** What money is worth, in what builds are ranked by. */
  public String money(Optional<Swap> forMoney, Optional<Swap> toGiveUp) {
    var gain = forMoney
        .map(swap -> "Most for the money: %s, %s for %s more: %s per %s."
            .formatted(
                swapped(swap),
                gained(swap),
                price(swap.centsMore()),
                asked(swap.gained(goal) / (swap.centsMore() / 100.0)),
                currency))
        .orElse("No dearer part %s.".formatted(none(isForRange ? "farther" : "longer")));
    return toGiveUp
        .map(swap -> "%s %s: %s saves %s%s."
            .formatted(
                gain,
                goal == Goal.PRICE ? "Cheaper still" : "Cheapest to give up",
                swapped(swap),
                price(-swap.centsMore()),
                swap.gained(goal) < 0 ? " for " + lost(swap) : " and " + nothingLost()))
        .orElse(gain);
  }

  /** What a swap gains of what is asked for; of the price it is the flight that money buys. */
  private String gained(Swap swap) {
    return switch (goal) {
      case ENDURANCE, RANGE, PRICE -> longer(swap.gained());
      case MASS -> grams(swap.gramsMore());
      case THRUST -> "thrust-to-weight up " + asked(swap.gained(goal));
    };
  }

  private String lost(Swap swap) {
    return asked(-swap.gained(goal))
        + switch (goal) {
          case ENDURANCE, RANGE, PRICE -> "";
          case MASS -> " more";
          case THRUST -> " of thrust-to-weight";
        };
  }

  private String asked(double gained) {
    return switch (goal) {
      case ENDURANCE, RANGE, PRICE -> amount(gained);
      case MASS -> Spoken.number(gained, gained < 10 ? 1 : 0) + " g";
      case THRUST -> Spoken.number(gained, 2);
    };
  }

  private String none(String more) {
    return switch (goal) {
      case ENDURANCE, RANGE, PRICE -> "flies " + more;
      case MASS -> "is lighter";
      case THRUST -> "adds thrust-to-weight";
    };
  }

  private String nothingLost() {
    return switch (goal) {
      case ENDURANCE, RANGE, PRICE -> "flies no " + (isForRange ? "less far" : "shorter");
      case MASS -> "is no heavier";
      case THRUST -> "loses no thrust-to-weight";
    };
  }

  /** The best swap of a role, and a longer flight that breaks something. */
  public String best(BestSwaps swaps) {
    var text = new StringBuilder(swaps.role().label());
    text.append(": ");
    if (swaps.best().isPresent()) {
      text.append(swap(swaps.best().get()));
    } else {
      text.append(
          swaps.tried() == 1
              ? "the other one breaks something."
              : "each of the other %s breaks something.".formatted(swaps.tried()));
    }
    swaps
        .tempting()
        .ifPresent(swap -> text.append(" %s would fly %s, but breaks %s."
            .formatted(swap.part().name(), longer(swap.gained()), broken(swap.assessment()))));
    return text.toString();
  }

  /** A swap that breaks nothing. */
  public String swap(Swap swap) {
    return swapped(swap) + ": " + String.join(", ", effects(swap)) + alongside(swap.alongside())
        + ".";
  }

  /** What a swap changes, what builds are ranked by first. */
  public List<String> effects(Swap swap) {
    var effects = new ArrayList<String>();
    effects.add(longer(swap.gained()));
    if (Math.abs(swap.gramsMore()) >= LEAST_GRAMS) {
      effects.add(grams(swap.gramsMore()));
    }
    effects.add(
        Math.abs(swap.centsMore()) < LEAST_CENTS
            ? "at the same price"
            : price(Math.abs(swap.centsMore())) + (swap.centsMore() > 0 ? " dearer" : " cheaper"));
    if (goal == Goal.PRICE) {
      effects.add(0, effects.remove(effects.size() - 1));
    } else if (goal == Goal.MASS && effects.size() > 2) {
      effects.add(0, effects.remove(1));
    } else if (goal == Goal.THRUST && swap.assessment().flight().isPresent()) {
      effects.add(
          0,
          "thrust-to-weight "
              + Spoken.number(swap.assessment().flight().get().thrustToWeight(), 2));
    }
    return effects;
  }

  /** What has to change along with a swap. */
  public String alongside(List<Changed> changes) {
    if (changes.isEmpty()) {
      return "";
    }
    return "; with it "
        + String.join(
            ", ",
            changes.stream()
                .map(change -> change
                    .after()
                    .map(part -> change.role().label() + " " + part.name())
                    .orElse("no " + change.role().label()))
                .toList());
  }

  /** Where grams can be saved. */
  public String saving(Saving saving) {
    var grams = Spoken.number(saving.grams(), 1) + " g lighter";
    return switch (saving.way()) {
      case SHORTER_WIRES ->
        "%s mm off the %s: %s, %s, at no cost."
            .formatted(
                Spoken.number(Savings.WIRE_MM, 0), saving.what(), grams, longer(saving.gained()));
      case SMALLER_PLUG ->
        "plug %s on pack and lead: %s, %s; rated for the currents computed here."
            .formatted(saving.what(), grams, longer(saving.gained()));
      case TITANIUM_SCREWS ->
        "titanium in place of steel for the %s: %s, %s; never aluminium for motors."
            .formatted(saving.what(), grams, longer(saving.gained()));
      case SWAP ->
        saving.swap().map(this::swap).map(text -> saving.what() + ": " + text).orElse("");
    };
  }

  private static String swapped(Swap swap) {
    return swap.part().name()
        + swap.base()
            .build()
            .part(swap.role())
            .map(Part::name)
            .map(name -> " in place of " + name)
            .orElse("");
  }

  /** The first rule or limit that a build breaks, in words; others are counted. */
  public static String broken(Assessment assessment) {
    return first(everyBroken(assessment));
  }

  /** The first rule or limit that a swap breaks and that was kept before, in words; others are counted. */
  public static String broken(Swap swap) {
    return first(everyBroken(swap));
  }

  /** The same without what kind of thing it is. */
  public static String why(Swap swap) {
    var why = new ArrayList<String>();
    swap.broken().forEach(finding -> why.add(Reasons.said(finding)));
    swap.missed().forEach(limit -> why.add(Reasons.broken(limit)));
    if (swap.grounds()) {
      swap.assessment().whyNoFlight().ifPresent(why::add);
    }
    return first(why.isEmpty() ? List.of("nothing") : why);
  }

  private static String first(List<String> broken) {
    return broken.get(0) + (broken.size() == 1 ? "" : ", and %s more".formatted(broken.size() - 1));
  }

  /** Every rule and limit that a build breaks, in words. */
  public static String allBroken(Assessment assessment) {
    return String.join("; ", everyBroken(assessment));
  }

  /** Every rule and limit that a swap breaks and that were not broken before, in words. */
  public static String allBroken(Swap swap) {
    return String.join("; ", everyBroken(swap));
  }

  private static List<String> everyBroken(Assessment assessment) {
    return broken(
        assessment.broken(),
        assessment.limits().stream().filter(limit -> !limit.met()).toList(),
        assessment.whyNoFlight());
  }

  private static List<String> everyBroken(Swap swap) {
    return broken(
        swap.broken(),
        swap.missed(),
        swap.grounds() ? swap.assessment().whyNoFlight() : Optional.empty());
  }

  private static List<String> broken(
      List<Finding> rules, List<Limit> limits, Optional<String> whyNoFlight) {
    var broken = new ArrayList<String>();
    rules.forEach(finding -> broken.add("a rule (" + Reasons.said(finding) + ")"));
    limits.forEach(limit -> broken.add("a limit (" + Reasons.broken(limit) + ")"));
    whyNoFlight.ifPresent(why -> broken.add("the physics (" + why + ")"));
    return broken.isEmpty() ? List.of("nothing") : broken;
  }

  /** More or less flight. */
  public String longer(double gained) {
    if (Math.abs(gained) < 0.05) {
      return isForRange ? "as far" : "as long";
    }
    return amount(Math.abs(gained))
        + (isForRange
            ? (gained > 0 ? " farther" : " less far")
            : gained > 0 ? " longer" : " shorter");
  }

  private static String grams(double more) {
    return Spoken.number(Math.abs(more), Math.abs(more) < 10 ? 1 : 0)
        + (more > 0 ? " g heavier" : " g lighter");
  }

  private String price(long cents) {
    return Spoken.price(cents, currency);
  }

  /** Seconds, from a minute on minutes; metres, from a thousand on kilometres. */
  public String amount(double figure) {
    var size = Math.abs(figure);
    if (isForRange) {
      return size >= 1000
          ? Spoken.number(figure / 1000, 1) + " km"
          : Spoken.number(figure, size < 10 ? 1 : 0) + " m";
    }
    return size >= 60
        ? Spoken.number(figure / 60, 1) + " min"
        : Spoken.number(figure, size < 10 ? 1 : 0) + " s";
  }
}
