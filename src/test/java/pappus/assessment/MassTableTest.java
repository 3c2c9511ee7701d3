package pappus.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static pappus.part.Parts.board;
import static pappus.part.Parts.build;
import static pappus.part.Parts.frame;
import static pappus.part.Parts.motor;
import static pappus.part.Parts.transmitter;
import static pappus.part.Parts.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pappus.compatibility.Rules;
import pappus.fitting.Stock;
import pappus.part.AntennaConnector;
import pappus.part.AntennaPort;
import pappus.part.Band;
import pappus.part.Build;
import pappus.part.Frame;
import pappus.part.Parts;
import pappus.part.Role;
import pappus.scenario.MassCap;
import pappus.scenario.Payload;
import pappus.scenario.Scenarios;

final class MassTableTest {
  private static MassTable mass(Build build) {
    return Desk.assess(build).mass();
  }

  private static MassTable.Line line(MassTable table, String label) {
    return table.lines().stream()
        .filter(line -> line.label().equals(label))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + label + " in " + table.lines()));
  }

  /** Four motors of one make are all too heavy or all too light: 4 × 0.1 g, not 2 × 0.1 g. */
  @Test
  void letsEqualPiecesErrTogether() {
    var motors = line(mass(build()), "motor");

    assertThat(motors.pieces()).isEqualTo(4);
    assertThat(motors.grams()).isEqualTo(40);
    assertThat(motors.doubtGrams()).isCloseTo(0.4, within(1e-12));
  }

  @Test
  void addsDoubtsOfDifferentPartsAsSquares() {
    var table = mass(build());
    var squares = table.lines().stream()
        .mapToDouble(line -> line.doubtGrams() * line.doubtGrams())
        .sum();

    assertThat(table.doubtGrams()).isCloseTo(Math.sqrt(squares), within(1e-12));
    assertThat(table.grams())
        .isCloseTo(table.lines().stream().mapToDouble(MassTable.Line::grams).sum(), within(1e-9));
  }

  @Test
  void carriesThePayload() {
    var payload = new Payload("recorder", 12, 0, 0, null, null);
    var loaded =
        Desk.assess(build(), with(Scenarios.plain(), "payload", payload)).mass();

    assertThat(line(loaded, "payload").grams()).isEqualTo(12);
    assertThat(loaded.grams() - mass(build()).grams()).isCloseTo(12, within(1e-9));
  }

  @Test
  void takesOffTheWireThatIsCut() {
    var cut =
        line(mass(build(with(motor(), "leadsIncludedMillimetres", 150))), "motor wire cut off");

    assertThat(cut.grams()).isNegative();
    assertThat(cut.doubtGrams()).isPositive();
  }

  @Test
  void countsTheLongerStandoffsOfAHigherFrame() {
    assertThat(line(mass(build(with(transmitter(), "heightMillimetres", 9))), "longer standoffs")
            .grams())
        .isEqualTo(1.2);
    assertThat(mass(build()).lines()).noneMatch(line -> line.label().equals("longer standoffs"));
  }

  @Test
  void takesOffWhatALowerStackOfStandoffsLacks() {
    var low = mass(build(heights(new Frame.PlateHeight(20, -1.5), new Frame.PlateHeight(25, 0))));

    assertThat(line(low, "shorter standoffs").grams()).isEqualTo(-1.5);
    assertThat(line(low, "shorter standoffs").doubtGrams()).isCloseTo(0.15, within(1e-9));
    assertThat(mass(build()).grams() - low.grams()).isCloseTo(1.5, within(1e-9));
  }

  /** No mass of less than 10 mg can be stated. */
  @ParameterizedTest
  @ValueSource(doubles = {-0.009, 0, 0.009})
  void passesOverWhatIsNoMass(double grams) {
    assertThat(mass(build(heights(new Frame.PlateHeight(20, grams)))).lines())
        .noneMatch(line -> line.label().contains("standoffs"));
  }

  /** Searches rely on it that what is added to a build only begun takes nothing off its mass. */
  @Test
  void countsTheLightestHeightWhileNoBoardTellsWhichIsOrdered() {
    var frame = heights(new Frame.PlateHeight(20, -1.5), new Frame.PlateHeight(25, -4));
    var assessor = new Assessor(Scenarios.plain(), Stock.of(Parts.hardware()), Rules.ALL);
    var alone = Build.empty().with(Role.FRAME, frame);
    var listed =
        assessor.prospects().begun(Build.empty().with(Role.FRAME, frame())).grams();

    assertThat(assessor.prospects().begun(alone).grams()).isCloseTo(listed - 4, within(1e-9));
    assertThat(assessor.prospects().begun(alone.with(Role.BOARD, board())).grams())
        .isGreaterThanOrEqualTo(listed - 4 + board().mass().grams());
  }

  private static Frame heights(Frame.PlateHeight... heights) {
    return with(frame(), "heights", List.of(heights));
  }

  @Test
  void fliesOneAntennaAPort() {
    var port = new AntennaPort(AntennaConnector.U_FL, Band.GHZ_5_8, 2, null, null);

    assertThat(line(mass(build(with(transmitter(), "antenna", port))), "video antenna")
            .grams())
        .isEqualTo(3);
  }

  @Test
  void roundsWhatIsNeededUpToWholeMilligrams() {
    var table = new MassTable(List.of(), 100.0001, 2);

    assertThat(table.neededMilligrams(0)).isEqualTo(100_001);
    assertThat(table.neededMilligrams(1.5)).isEqualTo(103_001);
    assertThat(new MassTable(List.of(), 100, 0).neededMilligrams(0)).isEqualTo(100_000);
  }

  /** Of a normal distribution 97.725 % lie below two deviations (any table of it). */
  @Test
  void givesTheChanceOfStayingUnderTheCap() {
    var cap = new MassCap(250, true, "an example", null);

    assertThat(new MassTable(List.of(), 246, 2).chanceUnder(cap)).isCloseTo(0.97725, within(1e-5));
    assertThat(new MassTable(List.of(), 250, 2).chanceUnder(cap)).isCloseTo(0.5, within(1e-9));
  }
}
