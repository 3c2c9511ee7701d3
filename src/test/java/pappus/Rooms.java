package pappus;

import static java.util.stream.Collectors.joining;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Map;

/** The packages as a table: what each says that it is for, and what {@link ArchitectureTest} lets it use. */
public final class Rooms {
  private static final String OURS = "pappus.";
  private static final Path SOURCES = Path.of("src/main/java");

  /** Libraries as people call them, by their packages. */
  private static final Map<String, String> LIBRARIES = Map.of(
      "ai.timefold..", "Timefold",
      "com.fasterxml.jackson.annotation..", "Jackson annotations",
      "com.networknt..", "networknt",
      "de.siegmar.fastcsv..", "FastCSV",
      "gg.jte..", "jte",
      "org.hipparchus..", "Hipparchus",
      "picocli..", "picocli",
      "tools.jackson..", "Jackson");

  private Rooms() {}

  /** A row a package, from those that use nothing to those that use all. */
  public static String table() {
    var layers = new ArrayList<>(ArchitectureTest.layers().toList());
    Collections.reverse(layers);
    return layers.stream()
        .map(layer -> "| `%s` | %s | %s | %s |\n"
            .formatted(
                layer.name().replaceFirst("^pappus\\.", ""),
                purpose(layer.name()),
                names(layer, true).replace(OURS, ""),
                names(layer, false)))
        .collect(joining(
            "",
            "| package | what it is for | uses | libraries |\n| --- | --- | --- | --- |\n",
            ""));
  }

  private static String names(ArchitectureTest.Layer layer, boolean ours) {
    return layer.mayUse().stream()
        .filter(name -> name.startsWith(OURS) == ours)
        .map(name -> LIBRARIES.getOrDefault(name, name))
        .map(name -> name.equals("pappus..") ? "all" : name.replaceAll("^pappus\\.|\\.\\.$", ""))
        .collect(joining(", "));
  }

  /** First sentence of its comment, as far as it goes without a colon or an afterthought. */
  private static String purpose(String name) {
    var file = SOURCES.resolve(name.replace('.', '/')).resolve("package-info.java");
    if (!Files.exists(file)) {
      return "the templates of pages, compiled by the build";
    }
    try {
      var text = Files.readString(file).replaceAll("(?s).*?/\\*\\*(.*?)\\*/.*", "$1");
      var line = text.replaceAll("\\s*\\R \\*\\s*", " ").strip();
      return line.replaceAll("(,? and|,) (what|how|which|orders) .*|[.:]( .*)?$", "");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
