package pappus.shop;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import pappus.assessment.Assessor;
import pappus.assessment.Supply;
import pappus.catalog.BuildText;
import pappus.catalog.Catalog;
import pappus.part.Build;
import pappus.part.Kind;
import pappus.part.Part;
import pappus.part.Role;
import pappus.scenario.Scenario;
import pappus.scenario.reading.ScenarioReader;
import pappus.search.Question;

/** A few parts of the shop, few enough to try every build, and a scenario for them. */
public final class SmallShop {
  /** One part a role: the only build there is of them goes together. */
  public static final List<String> ONE_BUILD = List.of(
      "cottongrass-4",
      "spikerush-1303-3400",
      "ligule-4x1.9x2",
      "tidewell-2s-3500",
      "culvert-6-whole",
      "newteye-14-feather",
      "stipule-wire",
      "dewpond-220-16");

  /** With these, some builds fit and some do not. */
  public static final List<String> MORE = List.of(
      "thistledown-5",
      "cypsela-1404-2800",
      "frond-4.5x3.2x3",
      "awn-4.5x2.5x2",
      "tidewell-2s-3400",
      "newteye-14");

  /** Builds whose power follows from how far they are to reach; one antenna loses half of it. */
  public static final List<String> REACHING = List.of(
      "cottongrass-4",
      "spikerush-1303-3400",
      "ligule-4x1.9x2",
      "tidewell-2s-3500",
      "sluice-10",
      "glowmoss-400",
      "newteye-14-feather",
      "thrennel-leaf",
      "stipule-u",
      "umbel-u-right-feather",
      "tendril-24-u",
      "dewpond-220-16",
      "tether-30-20");

  private static final Catalog ALL = Catalog.of(
      Stream.of(Kind.values()).flatMap(kind -> Shop.of(kind).stream()).toList());

  private static final Catalog FEW =
      catalog(Stream.of(ONE_BUILD, MORE).flatMap(List::stream).toList());

  private SmallShop() {}

  /** Parts of these ids, and all small hardware. */
  public static Catalog catalog(List<String> ids) {
    var parts = new ArrayList<Part>();
    for (var kind : Kind.values()) {
      for (var part : Shop.of(kind)) {
        var hardware = part.fills().isEmpty() && kind != Kind.ANTENNA;
        if (hardware || ids.contains(part.id())) {
          parts.add(part);
        }
      }
    }
    return Catalog.of(parts);
  }

  /** Everything. */
  public static Catalog all() {
    return ALL;
  }

  /** Parts for 48 builds, of which some fit. */
  public static Catalog few() {
    return FEW;
  }

  /** The one build of {@link #ONE_BUILD}. */
  public static Build oneBuild() {
    return BuildText.parse(String.join(",", ONE_BUILD), FEW);
  }

  /** That build with another pack of {@link #few}. */
  public static Build oneBuild(String pack) {
    return oneBuild().with(Role.BATTERY, FEW.part(pack).orElseThrow());
  }

  /** Writes a catalogue into files as a user has them. */
  public static void write(Path folder, Catalog catalog) throws IOException {
    Files.createDirectories(folder);
    for (var kind : Kind.values()) {
      var parts = catalog.ofKind(kind);
      if (!parts.isEmpty()) {
        Files.writeString(folder.resolve(kind.fileName()), CatalogueText.write(kind, parts));
      }
    }
  }

  /** A scenario as it stands in a file; the fields given are added to it, each with a comma before. */
  public static String scenarioText(String fields) {
    return """
        {
          "name": "marsh",
          "note": "Stand still over the reeds.",
          "massCap": {"grams": 250, "strict": true, "rule": "Below 250 g at take-off"},
          "leastThrustToWeight": 2,
          "air": {"altitudeMetres": 5},
          "flight": {"style": "hover"}%s
        }
        """.formatted(fields);
  }

  /** That scenario. */
  public static Scenario scenario(String fields) {
    return read(scenarioText(fields));
  }

  /** That scenario, flown in another way. */
  public static Scenario flying(String flight, String fields) {
    return read(scenarioText(fields).replace("{\"style\": \"hover\"}", flight));
  }

  /** A scenario that stands in a text. */
  public static Scenario reading(String text) {
    return read(text);
  }

  private static Scenario read(String text) {
    var bytes = text.getBytes(UTF_8);
    return ScenarioReader.read(Path.of("-"), new ByteArrayInputStream(bytes)).scenario();
  }

  /** Who judges builds of a catalogue for that scenario. */
  public static Assessor assessor(Catalog catalog, String fields) {
    return assessor(catalog, scenario(fields));
  }

  /** Who judges builds of a catalogue for a scenario. */
  public static Assessor assessor(Catalog catalog, Scenario scenario) {
    return new Supply(catalog, pappus.catalog.Shelf.EMPTY).assessor(scenario);
  }

  /** What a search of a catalogue is asked. */
  public static Question question(Catalog catalog, String fields) {
    return Question.of(catalog, assessor(catalog, fields));
  }

  /** What a search of a catalogue is asked by a scenario as it stands in a file. */
  public static Question questionOf(Catalog catalog, String scenario) {
    return Question.of(catalog, assessor(catalog, read(scenario)));
  }

  /** Ids of the parts that may fill a role. */
  public static List<String> ids(Question question, Role role) {
    return question.options(role).stream().map(Part::id).toList();
  }
}
