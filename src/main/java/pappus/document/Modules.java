package pappus.document;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.regex.Pattern;

/**
 * The modules of d3 that charts are drawn with, as one script.
 *
 * <p>Why: src/site/markdown/decisions.md#charts-take-the-modules-of-d3-that-they-use
 */
final class Modules {
  private static final String FOLDER = "/META-INF/resources/webjars/";

  /**
   * Name and version, each after those that it takes something of. Two of them would take d3-color, d3-time and
   * d3-time-format for scales of dates and of colours, which no chart has.
   */
  private static final List<String> ALL = List.of(
      "d3-array/3.2.4",
      "d3-format/3.1.0",
      "d3-interpolate/3.0.1",
      "d3-path/3.1.0",
      "d3-scale/4.0.2",
      "d3-shape/3.2.0",
      "d3-selection/3.0.0",
      "d3-axis/3.0.0");

  private static final Pattern COPYRIGHT = Pattern.compile("(?m)^Copyright .*$");

  private Modules() {}

  /** All of them, below who holds their copyright and the licence that they share. */
  static String text() {
    var holders = new LinkedHashSet<String>();
    var licences = new LinkedHashSet<String>();
    var scripts = new ArrayList<String>();
    for (var module : ALL) {
      var licence = Shell.text(FOLDER + module + "/LICENSE").strip();
      COPYRIGHT.matcher(licence).results().forEach(line -> holders.add(line.group()));
      licences.add(COPYRIGHT.matcher(licence).replaceAll("").strip());
      var name = module.substring(0, module.indexOf('/'));
      scripts.add(Shell.text(FOLDER + module + "/dist/" + name + ".min.js").strip());
    }
    return "/*\n%s\n\n%s\n*/\n%s\n"
        .formatted(
            String.join("\n", holders), String.join("\n\n", licences), String.join("\n", scripts));
  }
}
