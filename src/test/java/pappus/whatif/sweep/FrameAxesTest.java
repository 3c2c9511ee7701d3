package pappus.whatif.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static pappus.part.Parts.circle;
import static pappus.part.Parts.with;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pappus.assessment.Supply;
import pappus.catalog.Catalog;
import pappus.catalog.Shelf;
import pappus.change.Asked;
import pappus.part.Frame;
import pappus.part.FrameDrawing;
import pappus.part.Known;
import pappus.part.Mass;
import pappus.part.MountingHoles;
import pappus.part.Part;
import pappus.part.Role;
import pappus.part.StackPattern;
import pappus.ranking.Finder;
import pappus.scenario.Choice;
import pappus.scenario.Scenario;
import pappus.search.Enumeration;
import pappus.shop.SmallShop;
import pappus.structure.DrawnMass;
import pappus.whatif.sweep.Axis.Tightens;

class FrameAxesTest {
  private static final Catalog FEW = SmallShop.few();
  private static final Frame COTTONGRASS = frame("cottongrass-4");
  private static final Scenario PLAIN = SmallShop.scenario("");

  /** With a name, a diagonal and two positions of its own. */
  private static final Frame DRAFT = with(
      with(
          with(with(COTTONGRASS, "id", "draft"), "name", "Draft"),
          "frontSpacingMillimetres",
          150.0),
      "positions",
      List.of(
          new Frame.Position("middle", 0, List.of(holes(StackPattern.P25_5)), false),
          new Frame.Position("rear", -40, List.of(holes(StackPattern.P16)), true)));

  private static final Scenario DRAWN = with(PLAIN, "draftFrame", DRAFT);

  private static final Asked FIXED = new Asked(
      with(PLAIN, "parts", new Choice(List.of("cottongrass-4"), null, null, null)), supply(FEW));
  private static final Asked DRAFTED =
      new Asked(DRAWN, new Supply(FEW, Shelf.EMPTY).drafting(DRAWN));

  private static Supply supply(Catalog catalog) {
    return new Supply(catalog, Shelf.EMPTY);
  }

  private static Frame frame(String id) {
    return (Frame) FEW.part(id).orElseThrow();
  }

  private static MountingHoles holes(StackPattern pattern) {
    return new MountingHoles(pattern, 2.2, false);
  }

  private static Asked at(Asked asked, String typed) {
    var axis = Axes.of(typed, asked);
    return axis.change().at(asked, axis.values().get(0));
  }

  /** The one frame that is left, which must be what the catalogue holds too. */
  private static Frame changed(Asked asked, String typed) {
    var after = at(asked, typed);
    var left = after.question().options(Role.FRAME);
    assertThat(left).hasSize(1);
    assertThat(after.supply().catalog().part(left.get(0).id())).contains(left.get(0));
    return (Frame) left.get(0);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(delimiter = '|', textBlock = """
      frame.spacing=100             | mm
      frame.mass=30                 | g
      frame.arm-thickness=2         | mm
      frame.arm-width=7             | mm
      frame.inner-height=20         | mm
      frame.camera-width=19         | mm
      frame.largest-propeller=4.5   | in
      frame.bolt-circle=9           | mm
      frame.drag-area=0.006         | m²
      frame.stack-pattern=20x20     | ''
      """)
  void eachHasItsUnitAndTightensNothing(String typed, String unit) {
    var axis = Axes.of(typed, DRAFTED);

    assertThat(axis.id() + "=" + axis.values().get(0)).isEqualTo(typed);
    assertThat(axis.unit()).isEqualTo(unit);
    assertThat(axis.tightens()).isEqualTo(Tightens.NEITHER);
  }

  @Test
  void eachChangesWhatItSaysAndNothingElse() {
    for (var asked : List.of(FIXED, DRAFTED)) {
      var frame = asked.equals(FIXED) ? COTTONGRASS : DRAFT;

      assertThat(changed(asked, "frame.mass=30"))
          .isEqualTo(with(
              frame, "mass", new Mass(30, frame.mass().known(), frame.mass().doubtGrams())));
      assertThat(changed(asked, "frame.arm-thickness=3.5"))
          .isEqualTo(with(frame, "armThicknessMillimetres", 3.5));
      assertThat(changed(asked, "frame.arm-width=7").armWidthMillimetres())
          .isEqualTo(new Frame.ArmWidth(7, 5.17));
      assertThat(changed(asked, "frame.inner-height=21"))
          .isEqualTo(with(frame, "heights", List.of(new Frame.PlateHeight(21, 0.1))));
      assertThat(changed(asked, "frame.camera-width=14"))
          .isEqualTo(with(frame, "cameraWidthsMillimetres", List.of(14.0)));
      assertThat(changed(asked, "frame.largest-propeller=4.5"))
          .isEqualTo(with(frame, "largestPropellerInches", 4.5));
      assertThat(changed(asked, "frame.bolt-circle=16"))
          .isEqualTo(with(frame, "motorBoltCirclesMillimetres", List.of(circle(16))));
      assertThat(changed(asked, "frame.drag-area=0.0061"))
          .isEqualTo(with(frame, "dragAreaSquareMetres", 0.0061));
    }
    assertThat(COTTONGRASS.mass().known()).isEqualTo(Known.MAKER);
  }

  /** Between (20, 1) and (24, 3) half a gram a millimetre, from 24 to 30 mm a quarter. */
  @ParameterizedTest(name = "{0} mm: {1} g")
  @CsvSource({
    "20, 1",
    "24, 3",
    "30, 4.5",
    "22, 2",
    "21.5, 1.75",
    "27, 3.75",
    "36, 6",
    "18, 0",
    "12, -3"
  })
  void aHeightWeighsWhatTheDrawingGivesIt(String millimetres, double grams) {
    var heights = List.of(
        new Frame.PlateHeight(30, 4.5),
        new Frame.PlateHeight(20, 1),
        new Frame.PlateHeight(24, 3),
        new Frame.PlateHeight(24, 3.3));

    assertThat(changed(drawn(heights), "frame.inner-height=" + millimetres).heights())
        .containsExactly(new Frame.PlateHeight(Double.parseDouble(millimetres), grams));
  }

  @Test
  void whereOneHeightIsDrawnAnyWeighsAsMuch() {
    for (var height : List.of("18", "22", "30")) {
      assertThat(changed(
                  drawn(List.of(new Frame.PlateHeight(22, 1.5))), "frame.inner-height=" + height)
              .heights())
          .containsExactly(new Frame.PlateHeight(Double.parseDouble(height), 1.5));
    }
    var open = with(
        with(
            DRAFT,
            "positions",
            List.of(new Frame.Position("middle", 0, List.of(holes(StackPattern.P20)), true))),
        "heights",
        List.of());
    assertThat(changed(drawn(open), "frame.inner-height=22").heights())
        .containsExactly(new Frame.PlateHeight(22, 0));
  }

  @Test
  void aTallerDraftIsHeavierByWhatItsDrawingSays() {
    var asked = drawn(List.of(new Frame.PlateHeight(24, -2), new Frame.PlateHeight(30, 1)));
    var finder = new Finder(Finder.Way.AUTO, Finder.EFFORT, Finder.FEWER_MOVES, done -> {});

    var steps = new Sweeper(
            asked, List.of(Axes.of("frame.inner-height=24,27,30", asked)), finder, done -> {})
        .sweep()
        .steps();

    var grams = steps.stream()
        .map(step -> step.best().build().orElseThrow())
        .map(build -> build.mass().lines().stream()
            .filter(line -> line.label().contains("frame") || line.label().contains("standoffs"))
            .mapToDouble(line -> line.grams())
            .sum())
        .toList();
    assertThat(grams.get(0)).isCloseTo(DRAFT.mass().grams() - 2, within(1e-9));
    assertThat(grams.get(1)).isCloseTo(DRAFT.mass().grams() - 0.5, within(1e-9));
    assertThat(grams.get(2)).isCloseTo(DRAFT.mass().grams() + 1, within(1e-9));
  }

  /** Its arms, its plates and what holds them; 41 g as stated. */
  private static final FrameDrawing DRAWING = new FrameDrawing(
      List.of(new FrameDrawing.Plate("bottom", 2, null, 5000.0, 5.0, null, null, null, null)),
      List.of(arm(FrameDrawing.Pair.FRONT, null), arm(FrameDrawing.Pair.REAR, 4.0)),
      new FrameDrawing.Standoffs(6, 0.02),
      null);

  private static FrameDrawing.Arm arm(FrameDrawing.Pair pair, @Nullable Double thickness) {
    return new FrameDrawing.Arm(pair, 60, thickness, null, null, null, null, 16.0);
  }

  private static final Frame WITH_DRAWING =
      with(with(DRAFT, "drawing", DRAWING), "heights", List.of(new Frame.PlateHeight(20, 0)));

  @Test
  void whereArmsAreDrawnTheMassGoesWithThem() {
    var asked = drawn(WITH_DRAWING);
    var stated = WITH_DRAWING.mass().grams();
    for (var typed : List.of("frame.arm-thickness=3", "frame.arm-width=12", "frame.spacing=130")) {
      var changed = changed(asked, typed);

      assertThat(changed.mass().grams())
          .as(typed)
          .isCloseTo(
              stated
                  * DrawnMass.of(changed).grams()
                  / DrawnMass.of(WITH_DRAWING).grams(),
              within(0.006))
          .isNotEqualTo(stated);
    }
    assertThat(changed(asked, "frame.arm-thickness=3").drawing())
        .isEqualTo(DRAWING.withArms(arm -> arm.withThickness(3)));
    assertThat(changed(asked, "frame.largest-propeller=4.5").mass()).isEqualTo(WITH_DRAWING.mass());
  }

  /** 150 by 108 mm to 130: the diagonal grows from 184.84 to 222.49, an arm by half of that. */
  @Test
  void armsGrowWithTheSpacing() {
    var arms = Objects.requireNonNull(
            changed(drawn(WITH_DRAWING), "frame.spacing=130").drawing())
        .arms();

    assertThat(arms)
        .extracting(FrameDrawing.Arm::lengthMillimetres)
        .allSatisfy(length -> assertThat(length).isCloseTo(60 + 18.83, within(0.01)));
  }

  /** Six standoffs of .02 g a millimetre. */
  @Test
  void oneHeightTellsOfOthersByItsStandoffs() {
    assertThat(changed(drawn(WITH_DRAWING), "frame.inner-height=30").heights())
        .containsExactly(new Frame.PlateHeight(30, 1.2));
    var asked = drawn(WITH_DRAWING);
    var height = Axes.of("frame.inner-height=30", asked);
    var arms = Axes.of("frame.arm-thickness=3", asked);

    var one = arms.change().at(height.change().at(asked, "30"), "3");
    var other = height.change().at(arms.change().at(asked, "3"), "30");

    assertThat(one.scenario()).isEqualTo(other.scenario());
  }

  @Test
  void aDraftWhoseArmWidthIsNotKnownCannotBeWidened() {
    assertThatThrownBy(
            () -> at(drawn(with(DRAFT, "armWidthMillimetres", null)), "frame.arm-width=7"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("armWidthMillimetres must be there to be varied, but is not.");
  }

  private static Asked drawn(List<Frame.PlateHeight> heights) {
    return drawn(with(DRAFT, "heights", heights));
  }

  private static Asked drawn(Frame draft) {
    var scenario = with(PLAIN, "draftFrame", draft);
    return new Asked(scenario, new Supply(FEW, Shelf.EMPTY).drafting(scenario));
  }

  /** 151 by 108 mm: to 90 mm by 151 * 90 / 108 = 125.8333; 150 by 108: to 162 by 225. */
  @Test
  void spacingIsTheLesserOneAndKeepsTheProportion() {
    assertThat(COTTONGRASS.diagonalMillimetres()).isEqualTo(186.0);
    assertThat(changed(FIXED, "frame.spacing=90"))
        .isEqualTo(with(
            with(with(COTTONGRASS, "diagonalMillimetres", null), "frontSpacingMillimetres", 125.83),
            "sideSpacingMillimetres",
            90.0));
    assertThat(changed(DRAFTED, "frame.spacing=162"))
        .isEqualTo(with(
            with(with(DRAFT, "diagonalMillimetres", null), "frontSpacingMillimetres", 225.0),
            "sideSpacingMillimetres",
            162.0));
  }

  @Test
  void patternsAreTheSameAtEachPosition() {
    var both = List.of(
        new MountingHoles(StackPattern.P20, 2.2, false),
        new MountingHoles(StackPattern.P30_5, 3.2, false));

    assertThat(changed(DRAFTED, "frame.stack-pattern=20x20+30.5x30.5"))
        .isEqualTo(with(
            DRAFT,
            "positions",
            List.of(
                new Frame.Position("middle", 0, both, false),
                new Frame.Position("rear", -40, both, true))));
    assertThat(Axes.of("frame.stack-pattern=16x16,20x20+26x26", DRAFTED).values())
        .containsExactly("16x16", "20x20+26x26");
  }

  @Test
  void theScenarioOfADraftTellsTheChangedOne() {
    var after = at(DRAFTED, "frame.mass=30");

    assertThat(after.scenario())
        .isEqualTo(
            with(DRAWN, "draftFrame", with(DRAFT, "mass", with(DRAFT.mass(), "grams", 30.0))));
    assertThat(after.supply().catalog().parts())
        .filteredOn(part -> !(part instanceof Frame))
        .containsExactlyElementsOf(
            FEW.parts().stream().filter(part -> !(part instanceof Frame)).toList());
    assertThat(at(FIXED, "frame.mass=30").scenario()).isEqualTo(FIXED.scenario());
  }

  @Test
  void twoPropertiesOfAFrameBothChange() {
    for (var asked : List.of(FIXED, DRAFTED)) {
      var mass = Axes.of("frame.mass=30", asked);
      var arms = Axes.of("frame.arm-thickness=3.5", asked);

      var after = arms.change().at(mass.change().at(asked, "30"), "3.5");

      var frame = (Frame) after.question().options(Role.FRAME).get(0);
      assertThat(frame.mass().grams()).isEqualTo(30);
      assertThat(frame.armThicknessMillimetres()).isEqualTo(3.5);
    }
  }

  @Test
  void aDraftIsDesignedEvenBesideOtherFrames() {
    assertThat(FrameAxes.frame(DRAFTED)).isEqualTo(DRAFT);
    assertThat(FrameAxes.frame(FIXED)).isEqualTo(COTTONGRASS);
  }

  @Test
  void whereSeveralFramesAreOpenNoneIsDesigned() {
    assertThatThrownBy(() -> Axes.of("frame.mass=30", new Asked(PLAIN, supply(FEW))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "must be over a limit where the scenario has no draftFrame and leaves 2 frames open.");
    var none =
        Catalog.of(FEW.parts().stream().filter(part -> !(part instanceof Frame)).toList());
    assertThatThrownBy(() -> Axes.of("frame.mass=30", new Asked(PLAIN, supply(none))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "must be over a limit where the scenario has no draftFrame and leaves 0 frames open.");
  }

  /** A frame that another stands for is no way round what is changed. */
  @Test
  void aTwinOfTheFrameIsNotLeftBesideIt() {
    List<Part> parts = new ArrayList<>(
        FEW.parts().stream().filter(part -> !part.id().equals("thistledown-5")).toList());
    parts.add(with(with(COTTONGRASS, "id", "cottongrass-4-b"), "name", "Cottongrass 4 B"));
    var asked = new Asked(PLAIN, supply(Catalog.of(parts)));

    assertThat(changed(asked, "frame.mass=60").mass().grams()).isEqualTo(60);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(delimiter = '|', textBlock = """
      frame.weight=1   | must be over frame.arm-thickness, frame.arm-width, frame.bolt-circle, frame.camera-width, frame.drag-area, frame.inner-height, frame.largest-propeller, frame.mass, frame.spacing, frame.stack-pattern, but is over "frame.weight".
      frame.spacin=1   | must be over frame.arm-thickness, frame.arm-width, frame.bolt-circle, frame.camera-width, frame.drag-area, frame.inner-height, frame.largest-propeller, frame.mass, frame.spacing, frame.stack-pattern, but is over "frame.spacin". Maybe spacing was meant.
      frame.mass=x     | must have plain numbers, but has "x".
      frame.stack-pattern=20     | must have stack patterns such as 20x20 or 20x20+30.5x30.5, but has "20".
      frame.stack-pattern=20x20+ | must have stack patterns such as 20x20 or 20x20+30.5x30.5, but has "".
      frame.stack-pattern=       | must have stack patterns such as 20x20 or 20x20+30.5x30.5, but has "".
      """, quoteCharacter = '\0')
  void whatCannotBeReadIsNamed(String typed, String message) {
    assertThatThrownBy(() -> Axes.of(typed, DRAFTED))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(message);
  }

  @Test
  void whatAFrameRefusesIsNamed() {
    assertThatThrownBy(() -> at(DRAFTED, "frame.arm-thickness=0.5"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("armThicknessMillimetres must be from 1 to 12, but is 0.5.");
    assertThatThrownBy(() -> at(DRAFTED, "frame.mass=0"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("mass.grams must be from 0.01 to 5000, but is 0. Maybe it is not in grams.");
  }

  /** Each step is that of a scenario that draws the frame so. */
  @Test
  void aSweepOfTheDraftIsASearchOfEachDraft() {
    var finder = new Finder(Finder.Way.AUTO, Finder.EFFORT, Finder.FEWER_MOVES, done -> {});
    var axes = Stream.of("frame.mass=40,50,60", "frame.largest-propeller=4,4.5")
        .map(typed -> Axes.of(typed, DRAFTED))
        .toList();

    var sweep = new Sweeper(DRAFTED, axes, finder, done -> {}).sweep();

    assertThat(sweep.searches()).isEqualTo(6);
    for (var step : sweep.steps()) {
      var drawn = with(
          PLAIN,
          "draftFrame",
          with(
              with(
                  DRAFT,
                  "mass",
                  with(DRAFT.mass(), "grams", Double.parseDouble(step.values().get(0)))),
              "largestPropellerInches",
              Double.parseDouble(step.values().get(1))));
      var question = new Asked(drawn, new Supply(FEW, Shelf.EMPTY).drafting(drawn)).question();
      var best = Enumeration.best(question);
      assertThat(step.best().build().map(build -> build.objective() + " " + build.build()))
          .as(step.values().toString())
          .isEqualTo(best.map(build -> build.objective() + " " + build.build()))
          .isPresent();
    }
  }
}
