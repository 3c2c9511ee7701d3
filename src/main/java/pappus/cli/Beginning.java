package pappus.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pappus.assessment.LimitKind;
import pappus.catalog.Catalog;
import pappus.files.InputException;
import pappus.files.Problem;
import pappus.files.Shown;
import pappus.files.Source;
import pappus.files.json.JsonText;
import pappus.part.Battery;
import pappus.part.Propeller;
import pappus.quantity.Require;
import pappus.scenario.Flight;
import pappus.scenario.reading.ReadScenario;
import pappus.scenario.reading.ScenarioReader;
import pappus.scenario.reading.Setting;

/** The scenario that a builder begins with, from a few wishes and what is usual. */
final class Beginning {
  /** What is usual: below 250 g, lively enough, standing in calm air at sea level. */
  private static final String USUAL =
      "{\"massCap\": 250, \"leastThrustToWeight\": 2, \"air\": {\"altitudeMetres\": 0}, \"flight\": {\"style\": \"hover\"}}";

  /** By how much a diameter may differ from its round number, in. */
  private static final double NEARLY = 0.25;

  private final Catalog catalog;

  Beginning(Catalog catalog) {
    this.catalog = catalog;
  }

  /** What is wrong with what was said, a line each, named by its option. */
  List<String> problems(Map<Opening, String> said) {
    var problems = new ArrayList<String>();
    said.forEach((opening, value) -> {
      if (opening == Opening.CELLS || opening == Opening.PROPELLER) {
        if (!isThere(opening, value)) {
          problems.add("%s: must be one that a part of the catalogue has, %s, but is %s."
              .formatted(opening.option(), choice(opening), Shown.text(value)));
        }
      } else if (opening == Opening.FLIGHT && value.equals(Flight.Style.PROFILE.word())) {
        problems.add(
            "%s: must be %s, but is profile. Maybe begin with cruise, and write the legs into the file."
                .formatted(opening.option(), choice(opening)));
      }
    });
    if (problems.isEmpty()) {
      try {
        read(said).problemsWith(catalog).stream().map(Problem::toString).forEach(problems::add);
      } catch (InputException wrong) {
        wrong.problems().stream().map(Problem::toString).forEach(problems::add);
      }
    }
    return problems;
  }

  private ReadScenario read(Map<Opening, String> said) {
    var settings = new ArrayList<Setting>();
    said.forEach((opening, value) -> {
      var option = opening.option();
      switch (opening) {
        case MASS_CAP -> settings.add(new Setting("massCap", value, option));
        case THRUST ->
          settings.add(new Setting(LimitKind.THRUST_TO_WEIGHT.field().path(), value, option));
        case BUDGET -> settings.add(new Setting(LimitKind.BUDGET.field().path(), value, option));
        case FLIGHT -> settings.add(new Setting("flight.style", value, option));
        case GOGGLES -> settings.add(new Setting("pilot.video", value, option));
        case RADIO -> settings.add(new Setting("pilot.radio", value, option));
        case AT_HAND -> settings.add(new Setting("parts.owned", value, option));
        case CELLS -> settings.add(new Setting("where.battery.cellsInSeries", value, option));
        case PROPELLER ->
          settings.add(new Setting("where.propeller.diameterInches", nearly(value), option));
      }
    });
    var source = Source.of("new", USUAL.getBytes(UTF_8));
    return ScenarioReader.read(source, settings, catalog.currency(), Map.of());
  }

  /** Whether some part is as asked for. */
  private boolean isThere(Opening opening, String value) {
    return catalog.parts().stream()
        .anyMatch(part -> opening == Opening.CELLS
            ? part instanceof Battery battery
                && value.equals(String.valueOf(battery.cellsInSeries()))
            : part instanceof Propeller propeller
                && value.matches("[0-9]{1,2}(\\.[0-9]{1,2})?")
                && Math.abs(propeller.diameterInches() - Double.parseDouble(value)) <= NEARLY);
  }

  /** A diameter as propellers are called by it. */
  private static String nearly(String inches) {
    var diameter = Double.parseDouble(inches);
    return "{\"atLeast\": %s, \"atMost\": %s}"
        .formatted(Require.plain(diameter - NEARLY), Require.plain(diameter + NEARLY));
  }

  /** What there is to choose from, in words. */
  String choice(Opening opening) {
    return switch (opening) {
      case BUDGET -> catalog.currency();
      case FLIGHT ->
        Shown.choice(Stream.of(Flight.Style.values())
            .filter(style -> style != Flight.Style.PROFILE)
            .map(Flight.Style::word)
            .toList());
      case GOGGLES -> Shown.choice(List.copyOf(ReadScenario.videoFamilies(catalog)));
      case RADIO -> Shown.choice(List.copyOf(ReadScenario.radioLinks(catalog)));
      case CELLS ->
        Shown.choice(catalog.parts().stream()
            .flatMap(part -> part instanceof Battery battery
                ? Stream.of(battery.cellsInSeries())
                : Stream.<Integer>empty())
            .distinct()
            .sorted()
            .map(String::valueOf)
            .toList());
      case PROPELLER ->
        Shown.choice(catalog.parts().stream()
            .flatMap(part -> part instanceof Propeller propeller
                ? Stream.of(Math.rint(propeller.diameterInches() / (2 * NEARLY)) * 2 * NEARLY)
                : Stream.<Double>empty())
            .distinct()
            .sorted()
            .map(Require::plain)
            .toList());
      case MASS_CAP, THRUST, AT_HAND -> "";
    };
  }

  /** What is taken since nothing was said of it; empty where everything was. */
  Optional<String> taken(Map<Opening, String> said) {
    var taken = Stream.of(Opening.values())
        .filter(opening -> !said.containsKey(opening))
        .map(opening -> opening.option() + " " + opening.usual())
        .collect(Collectors.joining(", "));
    return taken.isEmpty()
        ? Optional.empty()
        : Optional.of("Taken as usual: %s; at sea level.".formatted(taken));
  }

  /** The scenario as a file, without a name: the file's own will do. */
  String text(Map<Opening, String> said) {
    var scenario = read(said).scenario();
    var fields = new LinkedHashMap<String, Object>();
    fields.put("massCap", scenario.massCap());
    fields.put(LimitKind.THRUST_TO_WEIGHT.field().path(), scenario.leastThrustToWeight());
    Optional.ofNullable(scenario.budget())
        .ifPresent(budget -> fields.put(LimitKind.BUDGET.field().path(), budget));
    fields.put("air", scenario.air());
    fields.put("flight", scenario.flight());
    Optional.ofNullable(scenario.parts()).ifPresent(parts -> fields.put("parts", parts));
    Optional.ofNullable(scenario.where()).ifPresent(where -> fields.put("where", where));
    Optional.ofNullable(scenario.pilot()).ifPresent(pilot -> fields.put("pilot", pilot));
    return JsonText.of(fields);
  }
}
