package pappus.scenario.reading;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import pappus.files.Closest;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.files.Shown;
import pappus.files.Source;
import pappus.files.json.Altered;
import pappus.files.json.JsonText;
import pappus.files.json.Rewriting;
import pappus.files.json.Rewriting.Refused;
import pappus.part.Lump;
import pappus.scenario.MassCap;
import pappus.scenario.Scenario;
import pappus.scenario.Shortened;
import pappus.structure.DrawnMass;

/** Puts into a scenario file what it leaves to be put in, and what is to stand there in place of what it says. */
final class Completion {
  private static final int LONGEST_NAME = 64;

  private static final String DRAFT = "draftFrame";

  private final Rewriting file;
  private final String name;
  private final String currency;
  private final Map<String, Lump> lumps;

  private Completion(Rewriting file, String name, String currency, Map<String, Lump> lumps) {
    this.file = file;
    this.name = name;
    this.currency = currency;
    this.lumps = lumps;
  }

  /**
   * The file to be read.
   *
   * @param currency of a budget that is a plain number
   * @param lumps of the catalogue, by name
   * @param problems gain every setting that has no place, and every lump that there is none of
   * @return the file as it is, where that is all
   */
  static Completed of(
      Source source,
      List<Setting> settings,
      String currency,
      Map<String, Lump> lumps,
      Problems problems) {
    var file = Rewriting.of(source);
    if (file.isEmpty()) {
      return new Completed(source, Undrawn.NOTHING);
    }
    var completion = new Completion(file.get(), nameOf(source.name()), currency, lumps);
    completion.complete();
    for (var setting : settings) {
      try {
        file.get().put(setting.path(), setting.json(), setting.origin());
      } catch (Refused refused) {
        problems.add(Problem.ofFile(setting.origin().file(), String.valueOf(refused.getMessage())));
      }
      completion.complete();
    }
    completion.tellMissing(problems);
    var undrawn = completion.drawn();
    return new Completed(file.get().source(), undrawn);
  }

  /**
   * A file to be read.
   *
   * @param undrawn what was put in to be worked out from the drawing of its draft frame
   */
  record Completed(Source source, Undrawn undrawn) {}

  /**
   * What a draft frame leaves to its drawing.
   *
   * @param mass whether its mass
   * @param centre whether its centre of mass
   */
  record Undrawn(boolean mass, boolean centre) {
    static final Undrawn NOTHING = new Undrawn(false, false);

    /** With that worked out. */
    Scenario settled(Scenario scenario) {
      var draft = scenario.draftFrame();
      return draft == null || (!mass && !centre)
          ? scenario
          : Altered.record(
              Scenario.class, scenario, Map.of(DRAFT, DrawnMass.settled(draft, !mass, !centre)));
    }
  }

  /** A mass that is put here counts for nothing but that a record cannot do without. */
  private Undrawn drawn() {
    if (!file.isThere(DRAFT + ".id")) {
      return Undrawn.NOTHING;
    }
    var isDrawn =
        file.isThere(DRAFT + ".drawing.plates[0]") && file.isThere(DRAFT + ".drawing.arms[0]");
    var undrawn = new Undrawn(
        isDrawn && !file.isThere(DRAFT + ".mass"),
        !file.isThere(DRAFT + ".centreOfMassXMillimetres"));
    if (undrawn.mass()) {
      // The most there is, so that no option or height is refused as too much to take off it.
      putDrawn(DRAFT + ".mass", "{\"grams\": 5000, \"known\": \"estimated\"}");
    }
    if (undrawn.centre()) {
      putDrawn(DRAFT + ".centreOfMassXMillimetres", "0");
    }
    return undrawn;
  }

  private void putDrawn(String path, String json) {
    try {
      file.put(path, json, file.origin(DRAFT));
    } catch (Refused refused) {
      throw new IllegalStateException(refused);
    }
  }

  private void complete() {
    for (var component : Scenario.class.getRecordComponents()) {
      var field = component.getName();
      var shortened = component.getAnnotation(Shortened.class);
      if (shortened == null) {
        continue;
      }
      if (shortened.value() == Shortened.Way.NUMBER) {
        file.number(field).ifPresent(number -> put(field, whole(component.getType(), number)));
      } else if (shortened.value() == Shortened.Way.NAME) {
        file.text(field).map(lumps::get).ifPresent(lump -> put(field, JsonText.of(lump)));
      } else if (!file.has(field)) {
        put(field, Rewriting.quoted(name));
      }
    }
  }

  /** A name that no lump has is told, and the rest is read without it. */
  private void tellMissing(Problems problems) {
    for (var component : Scenario.class.getRecordComponents()) {
      var field = component.getName();
      var shortened = component.getAnnotation(Shortened.class);
      if (shortened == null || shortened.value() != Shortened.Way.NAME) {
        continue;
      }
      file.text(field).ifPresent(typed -> {
        var from = file.origin(field);
        problems.add(new Problem(
            from.file(),
            from.line(),
            from.column(),
            "%s must be the name of one in a catalogue's %s, or an object, but is the text %s.%s"
                .formatted(
                    field,
                    Lump.FILE_NAME,
                    Shown.text(typed),
                    Closest.advice(typed, lumps.keySet()))));
        put(field, null);
      });
    }
  }

  /** What a plain number stands for. */
  private String whole(Class<?> type, String number) {
    return type == MassCap.class
        ? "{\"grams\": %s, \"strict\": true}".formatted(number)
        : "{\"amount\": %s, \"currency\": %s}".formatted(number, Rewriting.quoted(currency));
  }

  private void put(String field, @Nullable String json) {
    try {
      file.put(field, json, file.origin(field));
    } catch (Refused refused) {
      throw new IllegalStateException(refused);
    }
  }

  /** The name of a file as that of a folder everywhere. */
  static String nameOf(String file) {
    var last = file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1)
        .toLowerCase(Locale.ROOT);
    var safe =
        last.replaceFirst("\\.json$", "").replaceAll("[^a-z0-9]+", "-").replaceFirst("^-", "");
    safe = safe.substring(0, Math.min(LONGEST_NAME, safe.length())).replaceFirst("-$", "");
    return safe.isEmpty() || safe.matches("con|prn|aux|nul|(com|lpt)[0-9]") ? "scenario" : safe;
  }
}
