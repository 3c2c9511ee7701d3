package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The documents say what the code says and what the commands print, and their links lead somewhere. After a change
 * write them again with {@code mvn test -Dtest=DocumentsTest -Dpappus.writeDocuments=true}.
 */
class DocumentsTest {
  /** What is longer, nobody reads to its end. */
  private static final long MOST_BYTES = 12 * 1024;

  private static final int PATIENCE_MINUTES = 20;
  private static final Path DECISIONS = Documents.SITE.resolve("decisions.md");
  private static final Pattern DECISION = Pattern.compile("decisions\\.md#([\\p{L}\\p{N}_-]+)");

  private static boolean isWriting() {
    return Boolean.getBoolean("pappus.writeDocuments");
  }

  private static Stream<ReferencePages.Written> written() {
    return ReferencePages.all().stream();
  }

  private static Stream<Path> documents() {
    return Documents.all().stream();
  }

  @ParameterizedTest
  @MethodSource("written")
  void saysWhatTheCodeSays(ReferencePages.Written document) throws IOException {
    var fresh = document.fresh();
    if (isWriting()) {
      Files.writeString(document.file(), fresh);
    }

    assertThat(Documents.text(document.file())).isEqualTo(fresh);
  }

  @ParameterizedTest
  @MethodSource("documents")
  void noLinkLeadsNowhere(Path document) {
    assertThat(Documents.deadLinks(document)).isEmpty();
  }

  /** The site makes ids of headings in a way of its own; what is linked needs one that both know. */
  @ParameterizedTest
  @MethodSource("documents")
  void everyLinkIntoAPageIsGoodOnTheSiteToo(Path document) {
    assertThat(Documents.links(document).stream().filter(link -> link.contains(".md#")))
        .allSatisfy(link -> {
          var parts = link.split("#", 2);
          var page = document.toAbsolutePath().resolveSibling(parts[0]).normalize();
          assertThat(Documents.text(page))
              .containsAnyOf("<a id=\"" + parts[1] + "\"></a>\n", "\n## " + parts[1] + "\n");
        });
  }

  @Test
  void everyPageIsLinkedFromWhatIsReadFirst() {
    assertThat(Documents.links(Documents.README).stream()
            .map(link -> Path.of(link.replaceAll("#.*", ""))))
        .containsAll(documents().filter(page -> !page.equals(Documents.README)).toList());
  }

  @Test
  void everyPageIsInTheMenuOfTheSite() {
    var menu = Documents.text(Path.of("src/site/site.xml"));

    assertThat(documents().filter(page -> page.startsWith(Documents.SITE)))
        .allSatisfy(page -> assertThat(menu)
            .contains("href=\""
                + Documents.SITE.relativize(page).toString().replace(".md", ".html")
                + "\""));
  }

  /** What builds or installs is typed by a person; all else in a block is run. */
  @ParameterizedTest
  @MethodSource("documents")
  void noCommandStandsWhereItIsNotRun(Path document) {
    assertThat(Documents.text(document)
            .replaceAll("(?ms)^```(console|sh).*?^```$", "")
            .lines())
        .noneMatch(line -> line.matches("(    |\\$ )?(java -jar target|target/pappus |pappus ).*"));
  }

  @Test
  void whatIsReadFirstIsShort() throws IOException {
    assertThat(Files.size(Documents.README)).isLessThanOrEqualTo(MOST_BYTES);
    assertThat(Files.size(Documents.DEVELOPERS)).isLessThanOrEqualTo(MOST_BYTES);
  }

  @Test
  void everyDecisionIsNamedByWhatItExplains() throws IOException {
    var named = new ArrayList<String>();
    try (var files = Files.walk(Path.of("src"))) {
      files
          .filter(file -> file.toString().endsWith(".java"))
          .flatMap(file -> DECISION.matcher(Documents.text(file)).results())
          .map(found -> found.group(1))
          .distinct()
          .forEach(named::add);
    }
    var anchors = new ArrayList<>(Documents.anchors(DECISIONS));
    anchors.remove("decisions");

    assertThat(named).containsExactlyInAnyOrderElementsOf(anchors);
  }

  /** One process for all, so that they share its folder and none leaves anything beside the sources. */
  @Test
  @Tag("slow")
  void examplesPrintWhatTheyShow() throws IOException, InterruptedException {
    var folder = Path.of("target/documents");
    Examples.empty(folder);
    Files.createDirectories(folder.resolve("work"));
    var names = documents().map(Path::toString).toList();
    var command = new ArrayList<>(List.of(
        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
        "-cp",
        System.getProperty("java.class.path"),
        Examples.class.getName()));
    command.addAll(names);
    var builder = new ProcessBuilder(command)
        .directory(folder.resolve("work").toFile())
        .redirectErrorStream(true)
        .redirectOutput(folder.resolve("log.txt").toFile());
    builder.environment().put("COLUMNS", "80");
    var process = builder.start();
    var ended = process.waitFor(PATIENCE_MINUTES, TimeUnit.MINUTES);
    process.destroyForcibly();

    assertThat(ended && process.exitValue() == 0)
        .as(() -> Documents.text(folder.resolve("log.txt")))
        .isTrue();
    for (var name : names) {
      var fresh = Documents.text(folder.resolve("fresh").resolve(name));
      if (isWriting()) {
        Files.writeString(Path.of(name), fresh);
      }
      assertThat(Documents.text(Path.of(name))).as(name).isEqualTo(fresh);
    }
  }
}
