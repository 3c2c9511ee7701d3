package pappus.document;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LinesTest {
  private static final String WORDS =
      "One more gram costs 17 s; one more watt of electronics costs 1.7 min. What binds is thrust-to-weight.";

  private static Lines all(int width) {
    return new Lines(width)
        .say(WORDS)
        .blank()
        .item(WORDS)
        .caution(WORDS)
        .row("battery     " + WORDS, 12);
  }

  @Test
  void breaksAtBlanksAndIndentsWhatGoesOn() {
    assertThat(all(40).text()).isEqualTo("""
            One more gram costs 17 s; one more watt
            of electronics costs 1.7 min. What binds
            is thrust-to-weight.

            - One more gram costs 17 s; one more
              watt of electronics costs 1.7 min.
              What binds is thrust-to-weight.
            ! One more gram costs 17 s; one more
              watt of electronics costs 1.7 min.
              What binds is thrust-to-weight.
            battery     One more gram costs 17 s;
                        one more watt of electronics
                        costs 1.7 min. What binds is
                        thrust-to-weight.
            """);
  }

  @Test
  void leavesAloneWhatHasRoom() {
    assertThat(all(200).text())
        .isEqualTo(WORDS + "\n\n- " + WORDS + "\n! " + WORDS + "\nbattery     " + WORDS + "\n");
  }

  @ParameterizedTest
  @ValueSource(ints = {40, 100, 200})
  void keepsToTheColumnsAndLosesNoWord(int width) {
    var text = all(width).text();

    assertThat(text.lines()).allMatch(line -> line.length() <= width);
    assertThat(text.split("\\s+")).isEqualTo(all(1000).text().split("\\s+"));
  }

  @Test
  void aWordLongerThanALineIsBroken() {
    assertThat(new Lines(40).say("a".repeat(95)).text())
        .isEqualTo("a".repeat(40) + "\n" + "a".repeat(40) + "\n" + "a".repeat(15) + "\n");
  }

  @Test
  void fewerThanFortyColumnsCountAsForty() {
    assertThat(all(10).text()).isEqualTo(all(40).text());
  }

  /** The escape of a character counts for as many columns as it has signs. */
  @Test
  void noNameMovesTheCursorNorBreaksALine() {
    var name = "a\u001B[2J\nb\u202E";
    var safe = "a\\u001b[2J\\u000ab\\u202e";

    assertThat(new Lines(200)
            .say(name)
            .item(name)
            .caution(name)
            .row(name, 4)
            .whole(name)
            .text())
        .isEqualTo("%s\n- %s\n! %s\n%s\n%s\n".formatted(safe, safe, safe, safe, safe));
    assertThat(new Lines(40).say("\u0007".repeat(7)).text())
        .isEqualTo("\\u0007".repeat(6) + "\\u00\n07\n");
  }
}
