package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The worked page takes a person ten minutes, by the keystroke-level model: S. K. Card, T. P. Moran, A. Newell,
 * Communications of the ACM 23(7), 1980 (from memory, not re-read in print). {@code DocumentsTest} runs the page.
 */
class ShopPageTest {
  /** A key pressed by somebody who is no typist by trade, 40 words a minute. */
  private static final double KEY_SECONDS = 0.28;

  /** A look for what comes next: each cell, each value, each command. */
  private static final double THOUGHT_SECONDS = 1.35;

  private static final double MOST_SECONDS = 600;

  private static final String PAGE = Documents.text(Documents.SITE.resolve("shop-page.md"));
  private static final String TABLE = block("csv shop.csv");

  /** An editor indents by itself. */
  private static final String SCENARIO = block("json meadow.json").replaceAll("(?m)^ +", "");

  private static final Pattern VALUE = Pattern.compile("(\"[^\"]*\"|[\\d.]+)(?=\\s*[,\\]}\n])");

  private static String block(String kind) {
    var found =
        Pattern.compile("(?ms)^```" + Pattern.quote(kind) + "\n(.*?)^```").matcher(PAGE);
    assertThat(found.find()).as(kind).isTrue();
    return found.group(1);
  }

  /** Up to a ranking, without what shortens what they print. */
  private static List<String> commands() {
    return Pattern.compile("(?m)^\\$ (\\S+ (?:import|recommend)[^|\n]*)")
        .matcher(PAGE)
        .results()
        .map(found -> found.group(1).replace(" --quiet", "").strip())
        .distinct()
        .toList();
  }

  private static List<String> thoughts() {
    var all = new ArrayList<>(
        Stream.of(TABLE.split("[,\n]")).filter(cell -> !cell.isEmpty()).toList());
    VALUE.matcher(SCENARIO).results().map(MatchResult::group).forEach(all::add);
    all.addAll(commands());
    return all;
  }

  @Test
  void takesAPersonTenMinutes() {
    var keys = TABLE.length()
        + SCENARIO.length()
        + commands().stream().mapToInt(command -> command.length() + 1).sum();

    assertThat(keys * KEY_SECONDS + thoughts().size() * THOUGHT_SECONDS)
        .as("%s keys, %s thoughts", keys, thoughts().size())
        .isLessThanOrEqualTo(MOST_SECONDS);
  }

  @Test
  void countsEverythingThatIsTyped() {
    assertThat(commands()).hasSize(3).last().asString().contains(" recommend meadow.json ");
    assertThat(TABLE.lines()).hasSize(11);
    assertThat(thoughts()).contains("2900KV", "250", "\"hover\"", "\"Bilge\"", "\"mite\"");
  }
}
