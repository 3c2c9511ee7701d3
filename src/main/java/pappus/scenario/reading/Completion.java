package pappus.scenario.reading;

import java.util.List;
import java.util.Locale;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.files.Source;
import pappus.files.json.Rewriting;
import pappus.files.json.Rewriting.Refused;
import pappus.scenario.MassCap;
import pappus.scenario.Scenario;
import pappus.scenario.Shortened;

/** Puts into a scenario file what it leaves to be put in, and what is to stand there in place of what it says. */
final class Completion {
  private static final int LONGEST_NAME = 64;

  private final Rewriting file;
  private final String name;
  private final String currency;

  private Completion(Rewriting file, String name, String currency) {
    this.file = file;
    this.name = name;
    this.currency = currency;
  }

  /**
   * The file to be read.
   *
   * @param currency of a budget that is a plain number
   * @param problems gain every setting that has no place
   * @return the file as it is, where that is all
   */
  static Source of(Source source, List<Setting> settings, String currency, Problems problems) {
    var file = Rewriting.of(source);
    if (file.isEmpty()) {
      return source;
    }
    var completion = new Completion(file.get(), nameOf(source.name()), currency);
    completion.complete();
    for (var setting : settings) {
      try {
        file.get().put(setting.path(), setting.json(), setting.origin());
      } catch (Refused refused) {
        problems.add(Problem.ofFile(setting.origin().file(), String.valueOf(refused.getMessage())));
      }
      completion.complete();
    }
    return file.get().source();
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
      } else if (!file.has(field)) {
        put(field, Rewriting.quoted(name));
      }
    }
  }

  /** What a plain number stands for. */
  private String whole(Class<?> type, String number) {
    return type == MassCap.class
        ? "{\"grams\": %s, \"strict\": true}".formatted(number)
        : "{\"amount\": %s, \"currency\": %s}".formatted(number, Rewriting.quoted(currency));
  }

  private void put(String field, String json) {
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
