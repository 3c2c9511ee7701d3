package pappus.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The documents in Markdown, as they are read where the repository is browsed. */
final class Documents {
  static final Path README = Path.of("README.md");
  static final Path DEVELOPERS = Path.of("DEVELOPERS.md");
  static final Path SITE = Path.of("src/site/markdown");

  private static final Pattern FENCED = Pattern.compile("(?ms)^```.*?^```$");
  private static final Pattern HEADING = Pattern.compile("(?m)^#{1,6} (.*)$");
  private static final Pattern LINK = Pattern.compile("\\]\\(([^)\\s]+)\\)");

  private Documents() {}

  /** All of them; the one that is read first comes first. */
  static List<Path> all() {
    try (var files = Files.walk(SITE)) {
      return Stream.concat(
              Stream.of(README, DEVELOPERS),
              files.filter(file -> file.toString().endsWith(".md")).sorted())
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What its links lead to, code left out. */
  static List<String> links(Path file) {
    var prose = FENCED.matcher(text(file)).replaceAll("");
    return LINK.matcher(prose).results().map(link -> link.group(1)).toList();
  }

  /** What a link into it may name behind its {@code #}: words of a heading, small, with hyphens between. */
  static Set<String> anchors(Path file) {
    var anchors = new HashSet<String>();
    var times = new HashMap<String, Integer>();
    headings(file).forEach(heading -> {
      var anchor =
          heading.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N} _-]", "").replace(' ', '-');
      var before = times.merge(anchor, 1, Integer::sum) - 1;
      anchors.add(before == 0 ? anchor : anchor + "-" + before);
    });
    return anchors;
  }

  static List<String> headings(Path file) {
    var prose = FENCED.matcher(text(file)).replaceAll("");
    return HEADING.matcher(prose).results().map(heading -> heading.group(1)).toList();
  }

  /** Links of a document that lead nowhere. */
  static List<String> deadLinks(Path file) {
    var dead = new ArrayList<String>();
    for (var link : links(file)) {
      if (!link.contains("://")) {
        var parts = link.split("#", 2);
        var target = parts[0].isEmpty()
            ? file
            : file.toAbsolutePath().resolveSibling(parts[0]).normalize();
        var isThere =
            Files.exists(target) && (parts.length == 1 || anchors(target).contains(parts[1]));
        if (!isThere) {
          dead.add(link);
        }
      }
    }
    return dead;
  }
}
