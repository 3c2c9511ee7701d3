package pappus.answers.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import pappus.document.Spoken;
import pappus.part.Role;
import pappus.quantity.Require;
import pappus.scenario.MassCap;
import pappus.scenario.Outlook;
import pappus.scenario.PackAge;
import pappus.scenario.Scenario;
import pappus.scenario.Where;

/** What a scenario asks for, at the head of an answer. */
public final class Heading {
  private Heading() {}

  /** Its name, its note, its limits, and what is not as usual; each to be wrapped. */
  public static List<String> of(Scenario scenario) {
    var lines = new ArrayList<String>();
    lines.add(scenario.name());
    if (scenario.note() != null) {
      lines.add(scenario.note());
    }
    lines.add(limits(scenario));
    addWishes(scenario, lines);
    var unusual = unusual(scenario);
    if (!unusual.isEmpty()) {
      lines.add("Conditions: " + String.join("; ", unusual) + ".");
    }
    if (scenario.alsoBuyOrNothing().counts()) {
      lines.add(beside(scenario));
    }
    if (scenario.outlookOrExpected() == Outlook.CAUTIOUS) {
      lines.add(
          "Cautious: every uncertain figure of a part counts half a deviation worse than told below, except the thrust coefficient; so do limits. Bands and figures to plan with use the likeliest.");
    }
    return lines;
  }

  private static String beside(Scenario scenario) {
    return "Prices and budget include what is bought besides the build: "
        + OutlayWords.named(scenario.alsoBuyOrNothing())
        + ".";
  }

  /** All that it asks for in a paragraph, the shortest there is. */
  public static String line(Scenario scenario) {
    return scenario.name()
        + ": "
        + String.join(", ", flown(scenario))
        + "; "
        + String.join("; ", asked(scenario))
        + "."
        + (scenario.outlookOrExpected() == Outlook.CAUTIOUS
            ? " Cautious: limits and ranking count every uncertain figure half a deviation worse."
            : "")
        + (scenario.alsoBuyOrNothing().counts() ? " " + beside(scenario) : "");
  }

  /** The same without its name, a few words a thing. */
  public static List<String> chips(Scenario scenario) {
    var chips = new ArrayList<>(flown(scenario));
    chips.addAll(asked(scenario));
    if (scenario.outlookOrExpected() == Outlook.CAUTIOUS) {
      chips.add("cautious");
    }
    if (scenario.alsoBuyOrNothing().counts()) {
      chips.add("with what is bought beside");
    }
    return chips;
  }

  private static List<String> flown(Scenario scenario) {
    var flown = new ArrayList<String>();
    flown.add(scenario.flight().style().word());
    flown.addAll(unusual(scenario));
    flown.add(Spoken.number(scenario.air().altitudeMetres(), 0) + " m above sea level");
    return flown;
  }

  private static List<String> asked(Scenario scenario) {
    var limits = new ArrayList<String>();
    var cap = scenario.massCap();
    limits.add((cap.strict() ? "below " : "at most ")
        + Spoken.number(cap.grams(), 1).replaceAll("\\.0$", "") + " g" + confidence(cap));
    limits.add("T/W at least " + Spoken.number(scenario.leastThrustToWeight(), 1));
    if (scenario.budget() != null) {
      limits.add("at most " + Spoken.price(scenario.budget()));
    }
    if (scenario.leastMinutes() != null) {
      limits.add("at least " + Require.plain(scenario.leastMinutes()) + " min to plan with");
    }
    if (scenario.leastKilometres() != null) {
      limits.add("at least " + Require.plain(scenario.leastKilometres()) + " km to plan with");
    }
    if (scenario.reachMetres() != null) {
      limits.add("links out to " + Require.plain(scenario.reachMetres()) + " m");
    }
    if (scenario.clearViewDegrees() != null) {
      limits.add("view ahead clear over " + Require.plain(scenario.clearViewDegrees()) + "°");
    }
    scenario.whereOrAny().wishes().stream()
        .map(wish -> "where " + wish.inWords())
        .forEach(limits::add);
    ranked(scenario).ifPresent(limits::add);
    return limits;
  }

  private static String confidence(MassCap cap) {
    return cap.confidence() == null
        ? ""
        : " at " + Require.plain(100 * cap.confidence()) + " % confidence";
  }

  private static void addWishes(Scenario scenario, List<String> lines) {
    var wishes =
        scenario.whereOrAny().wishes().stream().map(Where.Wished::inWords).toList();
    if (!wishes.isEmpty()) {
      lines.add("Where " + String.join("; ", wishes) + ".");
    }
  }

  private static String limits(Scenario scenario) {
    var cap = scenario.massCap();
    return (cap.strict() ? "Below " : "At most ")
        + Spoken.number(cap.grams(), 1).replaceAll("\\.0$", "")
        + " g"
        + cap.because()
        + " with "
        + Spoken.number(100 * cap.confidenceOrUsual(), 0)
        + " % confidence; T/W at least "
        + Spoken.number(scenario.leastThrustToWeight(), 1)
        + (scenario.budget() == null ? "" : "; at most " + Spoken.price(scenario.budget()))
        + "; "
        + Spoken.number(scenario.air().altitudeMetres(), 0)
        + " m above sea level"
        + ranked(scenario).map(how -> "; " + how).orElse("")
        + ".";
  }

  /** What builds are ranked by, where it is not the whole time in the air. */
  private static Optional<String> ranked(Scenario scenario) {
    var isForRange = scenario.isForRange();
    var goal = new GoalWords(scenario);
    if (!goal.isOfFlight()) {
      return Optional.of("ranked by " + goal.ranked());
    }
    var stay = scenario.flight().stay();
    if (stay.isEmpty()) {
      return isForRange ? Optional.of("ranked by range over ground") : Optional.empty();
    }
    return Optional.of("ranked by "
        + (isForRange ? "range" : "time")
        + " on leg "
        + (stay.getAsInt() + 1)
        + " alone, with charge kept back for the legs after it");
  }

  /** What is not as usual. */
  public static List<String> unusual(Scenario scenario) {
    var unusual = new ArrayList<String>();
    var air = scenario.air();
    var flight = scenario.flight();
    if (air.temperatureCelsius() != null) {
      unusual.add(Spoken.number(air.temperatureCelsius(), 0) + " °C");
    }
    if (air.windOrCalm() > 0) {
      unusual.add("wind "
          + Spoken.number(air.windOrCalm(), 1)
          + " m/s, give or take "
          + Spoken.number(100 * air.gustsOrUsual(), 0)
          + " %");
    }
    if (flight.windMetresPerSecond() != null && flight.windMetresPerSecond() > 0) {
      unusual.add("wind " + Spoken.number(flight.windMetresPerSecond(), 1) + " m/s");
    }
    if (air.packTemperatureCelsius() != null) {
      unusual.add("packs at " + Spoken.number(air.packTemperatureCelsius(), 0) + " °C at take-off");
    }
    if (flight.packAgeOrNew() != PackAge.NEW) {
      unusual.add(flight.packAgeOrNew().name().toLowerCase(Locale.ROOT) + " packs");
    }
    if (flight.chargedToVoltsPerCell() != null) {
      unusual.add("packs charged to " + Spoken.number(flight.chargedToVoltsPerCell(), 2)
          + " V per cell at most");
    }
    if (flight.reserve() != null) {
      unusual.add(Spoken.number(100 * flight.reserve(), 0) + " % reserve");
    }
    if (flight.landingVoltsPerCell() != null) {
      unusual.add("landing at " + Spoken.number(flight.landingVoltsPerCell(), 2) + " V per cell");
    }
    if (flight.thrustLost() != null) {
      unusual.add(Spoken.number(100 * flight.thrustLost(), 0) + " % thrust lost to arms and body");
    }
    var lump = scenario.lump();
    if (lump != null) {
      unusual.add("%s (%s g, %s W) in place of %s"
          .formatted(
              lump.name(),
              Spoken.number(lump.grams(), 1),
              Spoken.number(lump.watts(), 1),
              lump.fills().stream().map(Role::label).collect(Collectors.joining(", "))));
    }
    if (scenario.payloadGrams() > 0) {
      unusual.add(Spoken.number(scenario.payloadGrams(), 0) + " g of payload");
    }
    return unusual;
  }
}
