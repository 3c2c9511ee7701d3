package pappus.weighing;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.files.Source;

class MassRowTest {
  private final Problems problems = new Problems();

  private List<MassRow> read(String text) {
    return MassRow.read(Source.of("m.csv", text.getBytes(UTF_8)), problems);
  }

  private static double deviation(int pieces, double step) {
    return new MassRow("m.csv", 2, "reed", 12, pieces, step).deviationGrams();
  }

  @Test
  void readsEveryColumnInAnyOrder() {
    assertThat(read("# scale of the club\nstep_g,grams,pieces,what\n1,18.4,4,reed\n"))
        .containsExactly(new MassRow("m.csv", 3, "reed", 18.4, 4, 1));
    assertThat(problems.sorted()).isEmpty();
  }

  @Test
  void takesOnePieceOnAPocketScaleWhereNothingElseIsSaid() {
    assertThat(read("what,grams\ndry,84\n"))
        .containsExactly(new MassRow("m.csv", 2, "dry", 84, 1, 0.1));
    assertThat(read("what,grams,pieces,step_g\nready,193,,\n"))
        .containsExactly(new MassRow("m.csv", 2, "ready", 193, 1, 0.1));
    assertThat(problems.sorted()).isEmpty();
  }

  @Test
  void namesEveryWrongCellByItsLine() {
    var rows = read("""
        what,grams,pieces,step_g
        ,0,0,0
        reed,12 g,1001,11
        reed,12,2.5,1
        rush,25001,1,1
        rush,7,2,1
        screws,0.5,100,0.1
        """);

    assertThat(rows).containsExactly(new MassRow("m.csv", 6, "rush", 7, 2, 1));
    assertThat(problems.sorted())
        .extracting(Problem::toString)
        .containsExactly(
            "m.csv:2: grams must be a plain number from 0.01 to 25000, but is \"0\".",
            "m.csv:2: pieces must be a plain number from 1 to 1000, but is \"0\".",
            "m.csv:2: step_g must be a plain number from 0.001 to 10, but is \"0\".",
            "m.csv:2: what must be plain text of 1 to 60 characters, but is \"\".",
            "m.csv:3: grams must be a plain number from 0.01 to 25000, but is \"12 g\".",
            "m.csv:3: pieces must be a plain number from 1 to 1000, but is \"1001\".",
            "m.csv:3: step_g must be a plain number from 0.001 to 10, but is \"11\".",
            "m.csv:4: pieces must be a whole number, but is 2.5.",
            "m.csv:5: grams must be a plain number from 0.01 to 25000, but is \"25001\".",
            "m.csv:7: grams must be at least 0.01 for each of 100 pieces, but are 0.5 in all.");
  }

  @Test
  void passesOverWhatWasNotWeighedYet() {
    assertThat(read(
            "what,grams,pieces,step_g,expected_g\nreed,,4,,18\nrush,7.1,1,,7\nready,,1,,25.1\n"))
        .containsExactly(new MassRow("m.csv", 3, "rush", 7.1, 1, 0.1));
    assertThat(problems.sorted()).isEmpty();
  }

  @Test
  void asksForAtLeastOneReading() {
    assertThat(read("what,grams\nreed,\nrush, \n")).isEmpty();
    assertThat(problems.sorted())
        .extracting(Problem::toString)
        .containsExactly(
            "m.csv: grams must be filled in in at least one row, but are blank in all 2. Maybe the file was not saved after weighing.");
  }

  @Test
  void namesColumnsThatAreMissingOrUnknown() {
    assertThat(read("what,gram\nreed,3\n")).isEmpty();
    assertThat(problems.sorted())
        .extracting(Problem::toString)
        .containsExactly(
            "m.csv:1: column \"gram\" is not known. Maybe grams was meant.",
            "m.csv:1: must have a column grams, but has none.");
  }

  @Test
  void countsTheRoundingOfTheStepAndTheErrorOfTheScale() {
    assertThat(deviation(1, 1)).isCloseTo(Math.sqrt(1 / 12.0 + 1), within(1e-12));
    assertThat(deviation(1, 0.1)).isCloseTo(Math.sqrt(0.01 / 12 + 0.04), within(1e-12));
    assertThat(deviation(1, 0.1)).isCloseTo(0.202073, within(1e-6));
  }

  @Test
  void sharesTheErrorAmongThePieces() {
    assertThat(deviation(4, 1)).isCloseTo(1.040833 / 4, within(1e-6));
    assertThat(new MassRow("m.csv", 2, "reed", 18.4, 4, 1).gramsEach())
        .isCloseTo(4.6, within(1e-12));
  }
}
