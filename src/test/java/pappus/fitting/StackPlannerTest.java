package pappus.fitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static pappus.part.Parts.board;
import static pappus.part.Parts.build;
import static pappus.part.Parts.frame;
import static pappus.part.Parts.holes;
import static pappus.part.Parts.position;
import static pappus.part.Parts.transmitter;
import static pappus.part.Parts.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import pappus.compatibility.Bench;
import pappus.compatibility.StackPlacesRule;
import pappus.part.Build;
import pappus.part.Frame;
import pappus.part.MountingHoles;
import pappus.part.Part;
import pappus.part.Parts;
import pappus.part.Role;
import pappus.part.StackPattern;
import pappus.quantity.Sentence;

final class StackPlannerTest {
  private static final MountingHoles P20 = holes(StackPattern.P20);
  private static final MountingHoles P25_5 = holes(StackPattern.P25_5);

  private static StackPlan plan(Build build, Part... stock) {
    return Bench.with(stock).fit(build).stackPlan().orElseThrow();
  }

  private static String obstacle(Build build, Part... stock) {
    return Bench.with(stock).says(new StackPlacesRule(), build);
  }

  private static Frame positions(Frame.Position... positions) {
    return with(frame(), "positions", List.of(positions));
  }

  @Test
  void putsTheTransmitterAboveTheBoard() {
    var columns = plan(build()).columns();

    assertThat(columns).hasSize(1);
    assertThat(columns.get(0).layers())
        .containsExactly(
            new StackPlan.Layer(Role.BOARD, "board", false),
            new StackPlan.Layer(Role.TRANSMITTER, "transmitter", false));
  }

  /** 2 to the carbon, 8 board, 1.5 between, 5 transmitter, 2 for plugs, 1 to spare. */
  @Test
  void countsSpacersAndPlugs() {
    var plan = plan(build());

    assertThat(plan.columns().get(0).neededMillimetres()).isCloseTo(19.5, within(1e-9));
    assertThat(plan.heightLeftMillimetres().orElseThrow()).isCloseTo(0.5, within(1e-9));
  }

  @Test
  void givesATransmitterOfAnotherPatternItsOwnPosition() {
    var frame = positions(position("middle", 0, P20), position("rear", -40, P25_5));
    var plan = plan(build(frame, with(transmitter(), "mount", P25_5)));

    assertThat(plan.xMillimetres(Role.BOARD)).contains(0.0);
    assertThat(plan.xMillimetres(Role.TRANSMITTER)).contains(-40.0);
  }

  @Test
  void separatesThemWhereThatSavesAHigherFrame() {
    var frame = positions(position("middle", 0, P20), position("rear", -40, P20));
    var plan = plan(build(frame, with(transmitter(), "heightMillimetres", 10)));

    assertThat(plan.columns()).hasSize(2);
    assertThat(plan.height()).contains(new Frame.PlateHeight(20, 0));
  }

  /** Screws of the smaller square would have to go through the board below. */
  @Test
  void stacksNothingOnOtherHolesOfTheSamePlate() {
    var both = position("middle", 0, P20, P25_5);
    var transmitter = with(transmitter(), "mount", P25_5);

    assertThat(obstacle(build(positions(both), transmitter)))
        .isEqualTo(
            "clashes: Board board has 20x20 holes and transmitter transmitter has 25.5x25.5: they need a place each, but frame frame has one for both.");
    assertThat(plan(build(positions(both, position("rear", -40, P25_5)), transmitter))
            .columns())
        .hasSize(2);
  }

  @Test
  void takesTheLightestHeightThatIsHighEnough() {
    var heights = List.of(
        new Frame.PlateHeight(30, 0.9),
        new Frame.PlateHeight(25, 1.2),
        new Frame.PlateHeight(20, 0));
    var tall = with(transmitter(), "heightMillimetres", 9);

    assertThat(plan(build(with(frame(), "heights", heights))).height())
        .contains(new Frame.PlateHeight(20, 0));
    assertThat(plan(build(with(frame(), "heights", heights), tall)).height())
        .contains(new Frame.PlateHeight(30, 0.9));
  }

  @Test
  void leavesTheCameraItsHeight() {
    var plan = plan(build(with(Parts.camera(), "leastInnerHeightMillimetres", 22)));

    assertThat(plan.height()).contains(new Frame.PlateHeight(25, 1.2));
  }

  @Test
  void takesTheLighterOfTwoAdapterPlatesAndItsHeight() {
    var heavy = Parts.stackPlate("heavy", StackPattern.P20, StackPattern.P25_5, 3);
    var light = Parts.stackPlate("light", StackPattern.P20, StackPattern.P25_5, 1.5);
    var plan = plan(build(with(transmitter(), "mount", P25_5)), heavy, light);

    assertThat(plan.adapters()).containsExactly(light);
    assertThat(plan.columns().get(0).neededMillimetres()).isCloseTo(21.5, within(1e-9));
    assertThat(plan.notes())
        .extracting(Sentence::text)
        .containsExactly("light goes between plate and board at the middle position (1.5 g).");
  }

  @Test
  void prefersAPositionOfItsOwnToAnAdapter() {
    var frame = positions(position("middle", 0, P20), position("rear", -40, P25_5));
    var plate = Parts.stackPlate("plate", StackPattern.P20, StackPattern.P25_5, 1.5);
    var plan = plan(build(frame, with(transmitter(), "mount", P25_5)), plate);

    assertThat(plan.adapters()).isEmpty();
  }

  @Test
  void holdsASmallHoleInALargeOneWithSteppedGrommets() {
    var wide = positions(position("middle", 0, new MountingHoles(StackPattern.P20, 3.2, false)));
    var small = build(wide, with(board(), "mount", P20));

    assertThat(plan(small, Parts.steppedGrommets()).adapters())
        .containsExactly(Parts.steppedGrommets());
    assertThat(obstacle(small))
        .isEqualTo("clashes: Board board has 20x20 holes, but frame frame takes 20x20.");
  }

  @Test
  void saysThatABoardStandsOnItsCorner() {
    var turned = positions(position("middle", 0, new MountingHoles(StackPattern.P20, 2.2, true)));

    assertThat(obstacle(build(turned).without(Role.TRANSMITTER)))
        .isEqualTo(
            "fits, but: board stands on its corner at the middle position: tell the flight software, and keep bare carbon off its holes.");
  }

  @Test
  void needsNoHeightOnAnOpenFrame() {
    var open = new Frame.Position("middle", 0, List.of(P20), true);
    var plan = plan(build(with(with(frame(), "positions", List.of(open)), "heights", List.of())));

    assertThat(plan.height()).isEmpty();
    assertThat(plan.heightLeftMillimetres()).isEmpty();
  }

  @Test
  void standsAColumnOfAnyHeightInTheOpen() {
    var open = new Frame.Position("middle", 0, List.of(P20), true);
    var tall = with(transmitter(), "heightMillimetres", 30);
    // The plate elsewhere still has to leave the camera its height.
    var frame = positions(open, position("rear", -40, P25_5));

    assertThat(plan(build(frame, tall)).height()).contains(new Frame.PlateHeight(20, 0));
  }

  @Test
  void saysHowMuchTooLowTheFrameIs() {
    var tall = with(transmitter(), "heightMillimetres", 12);

    assertThat(obstacle(build(tall)))
        .isEqualTo(
            "clashes: The boards and the camera need 26.5 mm between the plates, but frame frame has at most 25 mm.");
  }

  @Test
  void asksForNoHolesWhereTheTransmitterIsTaped() {
    var columns = plan(build(with(transmitter(), "mount", null))).columns();

    assertThat(columns.get(0).layers())
        .containsExactly(new StackPlan.Layer(Role.BOARD, "board", false));
  }

  @Test
  void knowsNoPlanWithoutABoard() {
    assertThat(Bench.plain().fit(build().without(Role.BOARD)).stackPlan()).isEmpty();
  }
}
