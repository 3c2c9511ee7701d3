package pappus.whatif.relax;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import pappus.assessment.LimitKind;
import pappus.change.Asked;
import pappus.quantity.Require;
import pappus.scenario.Choice;
import pappus.scenario.Scenario;
import pappus.scenario.Scenario.UnknownFacts;
import pappus.scenario.Wish;

/** What a scenario asks for, as far as it could be given up; what one would give up first comes first. */
final class Demands {
  private final Asked asked;
  private final Scenario scenario;
  private final List<Demand> demands = new ArrayList<>();

  private Demands(Asked asked) {
    this.asked = asked;
    this.scenario = asked.scenario();
  }

  static List<Demand> of(Asked asked) {
    var demands = new Demands(asked);
    demands.addWishes();
    demands.addProperties();
    demands.addChoice();
    demands.addPilot();
    demands.addFlight();
    demands.addStock();
    demands.addOutlay();
    demands.addLimits();
    return demands.demands;
  }

  private void addWishes() {
    if (scenario.unknownFacts() == UnknownFacts.LEAVE_OUT) {
      drop(
          "unknown-facts",
          "parts of which not enough is known are left out",
          "keep parts of which not enough is known",
          "unknownFacts");
    }
    for (var wish : distinct(wishes(asked))) {
      var label = wish.role().label();
      add("wants-" + wish.role().key(), "a " + label, "do without a " + label, without -> {
        var left = wishes(without).stream().filter(other -> other != wish).toList();
        return without.with(Map.of("wants", left));
      });
    }
  }

  private static List<Wish> wishes(Asked asked) {
    var wants = asked.scenario().wants();
    return wants == null ? List.of() : wants;
  }

  private void addProperties() {
    for (var wish : scenario.whereOrAny().wishes()) {
      add(
          "where-" + wish.role().key() + "-" + wish.field(),
          wish.inWords(),
          "take any " + wish.role().key() + "." + wish.field(),
          without -> {
            var left = new HashMap<String, Object>();
            left.put("where", without.scenario().whereOrAny().without(List.of(wish)));
            return without.with(left);
          });
    }
  }

  private void addChoice() {
    for (var id : distinct(scenario.partsOrAny().excludedIds())) {
      add(
          "excluded-" + id,
          "no " + id,
          "take " + id + " too",
          without -> choice(
              without,
              choice -> new Choice(
                  choice.fixed(),
                  choice.allowed(),
                  minus(choice.excludedIds(), id),
                  choice.owned())));
    }
    for (var allowed : scenario.partsOrAny().allowedParts()) {
      var label = allowed.role().label();
      add(
          "allowed-" + allowed.role().key(),
          "only some parts as " + label + ": " + String.join(", ", allowed.parts()),
          "take any " + label,
          without -> choice(
              without,
              choice -> new Choice(
                  choice.fixed(),
                  choice.allowedParts().stream()
                      .filter(other -> other.role() != allowed.role())
                      .toList(),
                  choice.excluded(),
                  choice.owned())));
    }
    var draft = scenario.draftFrame();
    if (draft != null) {
      var nothing = new HashMap<String, Object>();
      nothing.put("draftFrame", null);
      add(
          "draft-frame",
          "the draft frame " + draft.id(),
          "take another frame than the draft",
          without -> without.with(nothing));
    }
    for (var id : distinct(scenario.partsOrAny().fixedIds())) {
      add(
          "fixed-" + id,
          "the part " + id,
          "take another part than " + id,
          without -> choice(
              without,
              choice -> new Choice(
                  minus(choice.fixedIds(), id),
                  choice.allowed(),
                  choice.excluded(),
                  choice.owned())));
    }
  }

  /** What is asked twice is one demand. */
  private static <T> List<T> distinct(List<T> asked) {
    return asked.stream().distinct().toList();
  }

  private static List<String> minus(List<String> ids, String id) {
    return ids.stream().filter(other -> !other.equals(id)).toList();
  }

  private static Asked choice(Asked asked, UnaryOperator<Choice> change) {
    return asked.with(Map.of("parts", change.apply(asked.scenario().partsOrAny())));
  }

  private void addPilot() {
    var pilot = scenario.pilotOrAny();
    if (pilot.video() != null) {
      drop(
          "pilot-video",
          "video for " + pilot.video().inWords() + " goggles",
          "fly with other goggles",
          "pilot.video");
    }
    if (pilot.radio() != null) {
      drop(
          "pilot-radio",
          "a receiver for a radio that speaks " + pilot.radio().inWords(),
          "fly with another radio",
          "pilot.radio");
    }
    var milliwatts = scenario.transmitterMilliwatts();
    if (milliwatts != null) {
      dial(
          "transmitter-power",
          "video power of " + Require.plain(milliwatts) + " mW",
          scenario.reachMetres() == null ? "" : "leave the video power to how far it must reach",
          StepScales.transmitterPower(asked, milliwatts),
          "transmitterMilliwatts");
    }
  }

  private void addFlight() {
    var flight = scenario.flight();
    if (scenario.payload() != null) {
      dial(
          "payload",
          "a payload of " + Require.plain(scenario.payloadGrams()) + " g",
          "carry no payload",
          StepScales.payload(asked),
          "payload");
    }
    if (flight.asksForFullThrottle()) {
      drop(
          LimitKind.PACK_THROTTLE.id(),
          "a pack that stands full throttle",
          "limit motor output in the flight firmware",
          "flight.packStandsFullThrottle");
    }
    var airspeed = flight.airspeedMetresPerSecond();
    if (airspeed != null) {
      dial(
          "airspeed",
          "an airspeed of " + Require.plain(airspeed) + " m/s",
          "leave the airspeed open",
          StepScales.airspeed(asked, airspeed),
          "flight.airspeedMetresPerSecond");
    }
    if (flight.windOrCalm() > 0) {
      dial(
          "wind",
          "wind of " + Require.plain(flight.windOrCalm()) + " m/s",
          "",
          StepScales.wind(asked),
          "flight.windMetresPerSecond");
    }
  }

  private void addStock() {
    if (asked.supply().shelf().entries().stream().anyMatch(entry -> entry.stock() != null)) {
      add(
          LimitKind.IN_STOCK.id(),
          "what is in stock",
          "order what is not in stock",
          without -> new Asked(without.scenario(), without.supply().uncounted()));
    }
  }

  private void addOutlay() {
    if (scenario.budget() != null && scenario.alsoBuyOrNothing().counts()) {
      drop(
          "also-buy",
          "packs, spares and whatever else is bought in the budget",
          "pay what is bought beside the build outside the budget",
          "alsoBuy.countsAgainstBudget");
    }
  }

  private void addLimits() {
    var limits = new ArrayList<>(
        LimitKind.stated().filter(kind -> kind.bound(scenario).isPresent()).toList());
    Collections.reverse(limits);
    for (var kind : limits) {
      add(
          kind.id(),
          kind.field().text().apply(scenario),
          "",
          StepScales.bound(kind, asked),
          without -> without.with(kind.field().givenUp()));
    }
  }

  private void add(String id, String text, String givenUp, Demand.Change change) {
    add(id, text, givenUp, null, change);
  }

  private void add(
      String id, String text, String givenUp, @Nullable StepScale dial, Demand.Change change) {
    demands.add(new Demand(id, text, givenUp, Optional.ofNullable(dial), change));
  }

  private void drop(String id, String text, String givenUp, String field) {
    add(id, text, givenUp, null, leavingOut(field));
  }

  private void dial(String id, String text, String givenUp, StepScale dial, String field) {
    add(id, text, givenUp, dial, leavingOut(field));
  }

  private static Demand.Change leavingOut(String field) {
    var change = new HashMap<String, Object>();
    change.put(field, null);
    return asked -> asked.with(change);
  }
}
