package pappus.answers.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pappus.assessment.Assessment;
import pappus.catalog.BuildText;
import pappus.catalog.Catalog;
import pappus.document.Lines;
import pappus.scenario.Scenario;
import pappus.shop.SmallShop;

class SideBySideTest {
  private static final Catalog FEW = SmallShop.few();
  private static final Scenario SCENARIO = SmallShop.scenario("");
  private static final String BUILD = String.join(",", SmallShop.ONE_BUILD);
  private static final Assessment FIRST = assess(BUILD);
  private static final Assessment SMALLER = assess(BUILD.replace("2s-3500", "2s-3400"));
  private static final Assessment CLASHES =
      assess(BUILD.replace("ligule-4x1.9x2", "awn-4.5x2.5x2"));

  private static Assessment assess(String build) {
    return SmallShop.assessor(FEW, SCENARIO).assess(BuildText.parse(build, FEW));
  }

  private static SideBySide of(Assessment... builds) {
    return new SideBySide(SCENARIO, List.of(builds));
  }

  private static String said(int width, Assessment... builds) {
    var lines = new Lines(width);
    of(builds).say(lines, width);
    return lines.text();
  }

  private static SideBySide.Row row(SideBySide table, String label) {
    return table.rows().stream()
        .filter(row -> row.label().equals(label))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + label));
  }

  @Test
  void whatDiffersComesFirst() {
    var rows = of(FIRST, SMALLER).rows();

    assertThat(rows)
        .extracting(SideBySide.Row::differs)
        .isSortedAccordingTo(Collections.reverseOrder());
    assertThat(rows.stream().filter(SideBySide.Row::differs).map(SideBySide.Row::label))
        .containsExactly(
            "battery",
            "plan on",
            "expect",
            "all-up mass",
            "T/W",
            "power as flown",
            "throttle in hover",
            "price",
            "tightest limit",
            "end of flight");
  }

  @Test
  void tellsPartsOfTheirOwnAndPartsThatComeAlong() {
    var table = of(FIRST, SMALLER);

    assertThat(row(table, "battery").values())
        .containsExactly("Tidewell 2S 3500", "Tidewell 2S 3400");
    assertThat(row(table, "receiver").values()).containsExactly("(built in)", "(built in)");
    assertThat(table.rows()).extracting(SideBySide.Row::label).doesNotContain("GPS", "credible");
    assertThat(row(table, "price").values()).containsExactly("EUR 190", "EUR 188");
  }

  @Test
  void tellsWhatIsNoCandidateAndWhy() {
    assertThat(row(of(FIRST, CLASHES), "candidate").values())
        .containsExactly(
            "yes",
            "no: a rule (Propeller awn-4.5x2.5x2 is 4.5 inch, but frame cottongrass-4 takes 4 inch), and 1 more");
  }

  @Test
  void aBuildThatCannotFlyHasDashes() {
    var table = of(FIRST, assess("cottongrass-4"));

    assertThat(row(table, "expect").values().get(1)).isEqualTo("-");
    assertThat(row(table, "motor").values()).containsExactly("Spikerush 1303-3400", "-");
    assertThat(row(table, "tightest limit").values().get(1)).isEqualTo("-");
  }

  @Test
  void theSameIsSaidOnce() {
    assertThat(said(1000, FIRST, FIRST))
        .startsWith(
            "They do not differ in anything told here.\n\nThe same in all: frame: Cottongrass 4; motor: Spikerush 1303-3400; ")
        .endsWith("; end of flight: The flight ends at landing voltage, ahead of the reserve.\n");
  }

  /** The longest label, that of the chance, takes 25 columns and 2; each build half of the rest. */
  @Test
  void columnsStandBelowEachOther() {
    assertThat(said(100, FIRST, SMALLER)).startsWith("""
            battery                    Tidewell 2S 3500                    Tidewell 2S 3400
            plan on                    32.0 min                            31.0 min
            expect                     39.5 min                            38.5 min
            all-up mass                190.9 g                             188.1 g
            """);
  }

  @Test
  void aNarrowTerminalHasOneBuildBelowTheOther() {
    assertThat(said(40, FIRST, SMALLER, CLASHES)).startsWith("""
            propeller:
              1. Ligule 4×1.9×2
              2. Ligule 4×1.9×2
              3. Awn 4.5×2.5×2
            battery:
              1. Tidewell 2S 3500
            """);
  }

  @ParameterizedTest
  @CsvSource({"40, 2", "40, 6", "100, 2", "100, 6", "200, 2", "200, 6"})
  void keepsToTheColumns(int width, int count) {
    var builds = new ArrayList<Assessment>();
    for (var i = 0; i < count; i++) {
      builds.add(List.of(FIRST, SMALLER, CLASHES).get(i % 3));
    }
    var text = said(width, builds.toArray(Assessment[]::new));

    assertThat(text.lines()).allMatch(line -> line.length() <= width);
    assertThat(text.lines()).allMatch(line -> line.equals(line.stripTrailing()));
    assertThat(text).contains("Tidewell 2S");
  }
}
