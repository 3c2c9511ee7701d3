package pappus.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import pappus.part.Frame;
import pappus.part.Kind;
import pappus.part.Lead;
import pappus.part.Motor;
import pappus.part.Screw;
import pappus.part.Screw.Material;
import pappus.part.ScrewThread;
import pappus.part.Span;
import pappus.part.Strap;
import pappus.part.Wire;
import pappus.quantity.Units;

/** Invented frames, screws, leads and straps: masses, clearances, and that motors can be screwed on. */
final class StructureLawsTest {
  private static final List<Frame> FRAMES = Bands.records(Kind.FRAME, Frame.class);
  private static final List<Motor> MOTORS = Bands.records(Kind.MOTOR, Motor.class);
  private static final List<Screw> SCREWS = Bands.records(Kind.SCREW, Screw.class);

  @Test
  void framesWeighWhatTheirDiagonalAsks() {
    // 10 to 28 g (L/100 mm)² from light to rugged, hard 5 to 40: engineering estimate, no published
    // source.
    var densities = FRAMES.stream()
        .map(frame -> 1e4 * frame.mass().grams() / (frame.diagonal() * frame.diagonal()))
        .toList();

    assertThat(densities).allSatisfy(density -> assertThat(density).isBetween(5.0, 40.0));
    assertThat(Bands.inside(densities, 9.7, 28)).isGreaterThanOrEqualTo(0.9);
  }

  @Test
  void neighbouringTipsStayThreeMillimetresApart() {
    // Common practice, no published source; so a square frame measures √2 (D + 3 mm) at least.
    assertThat(FRAMES).allSatisfy(frame -> {
      var disc = Units.inchesToMillimetres(frame.largestPropellerInches());
      var spacing = Math.min(frame.frontSpacingMillimetres(), frame.sideSpacingMillimetres());
      assertThat(spacing - disc).isGreaterThanOrEqualTo(3);
      assertThat(frame.diagonal()).isGreaterThanOrEqualTo(Math.sqrt(2) * (disc + 3));
    });
  }

  @Test
  void aPackAsWideAsTheBayStaysClearOfTheDiscs() {
    // 3 mm in plan: common practice, no published source. Wide frames let the pack pass between the
    // discs; square ones keep its corners clear when it is 13 mm + 12.4 mm an inch long.
    assertThat(FRAMES).allSatisfy(frame -> {
      var radius = Units.inchesToMillimetres(frame.largestPropellerInches()) / 2;
      var across = frame.frontSpacingMillimetres() / 2 - frame.bay().widthMillimetres() / 2;
      var length = Math.min(62, 13 + 12.4 * frame.largestPropellerInches());
      var along = Math.max(0, frame.sideSpacingMillimetres() / 2 - length / 2);
      assertThat(Math.max(across, Math.hypot(across, along)) - radius)
          .as(frame.id())
          .isGreaterThanOrEqualTo(3);
    });
  }

  @Test
  void everyFrameIsDrilledForMotorsThatSomeScrewHolds() {
    assertThat(FRAMES).allSatisfy(frame -> {
      var screwed = MOTORS.stream()
          .filter(motor -> motor.boltCirclesMillimetres().stream()
              .allMatch(circle -> drilled(frame.motorBoltCirclesMillimetres(), circle)))
          .filter(motor -> SCREWS.stream().anyMatch(screw -> holds(frame, motor, screw)))
          .count();
      assertThat(screwed).as(frame.id()).isGreaterThan(10);
    });
  }

  @Test
  void everyMotorGoesOntoSomeFrame() {
    assertThat(MOTORS)
        .allSatisfy(motor -> assertThat(FRAMES)
            .anyMatch(frame -> motor.boltCirclesMillimetres().stream()
                    .allMatch(circle -> drilled(frame.motorBoltCirclesMillimetres(), circle))
                && SCREWS.stream().anyMatch(screw -> holds(frame, motor, screw))));
  }

  private static boolean drilled(List<Span> spans, double circle) {
    return spans.stream().anyMatch(span -> span.holds(circle, 0.2));
  }

  private static boolean holds(Frame frame, Motor motor, Screw screw) {
    var depth = screw.lengthMillimetres() - frame.armThicknessMillimetres();
    var deepest = motor.threadDepthMillimetres() == null
        ? motor.screw().mostMillimetres()
        : motor.threadDepthMillimetres();
    return screw.thread() == motor.screw()
        && screw.material() != Material.ALUMINIUM
        && screw.material() != Material.NYLON
        && depth >= motor.screw().leastMillimetres()
        && depth <= deepest;
  }

  @Test
  void someFramesAreOpenAndSomeGuardMotors() {
    assertThat(FRAMES.stream().filter(frame -> frame.heights().isEmpty())).hasSize(3);
    assertThat(FRAMES.stream().filter(frame -> frame.guardInnerMillimetres() != null))
        .hasSize(4);
  }

  @Test
  void steelScrewsWeighWhatTheyDoInTheTrade() {
    // M1.4×4 .07 g, M2×5 .17, M2×8 .25, M2×20 .5, M3×8 .65, M3×25 1.5: common practice, no
    // published
    // source.
    assertThat(grams(ScrewThread.M1_4, 4)).isBetween(0.06, 0.08);
    assertThat(grams(ScrewThread.M2, 5)).isBetween(0.15, 0.19);
    assertThat(grams(ScrewThread.M2, 8)).isBetween(0.22, 0.28);
    assertThat(grams(ScrewThread.M2, 20)).isBetween(0.45, 0.56);
    assertThat(grams(ScrewThread.M3, 8)).isBetween(0.58, 0.72);
    assertThat(grams(ScrewThread.M3, 25)).isBetween(1.35, 1.65);
  }

  private static double grams(ScrewThread thread, double millimetres) {
    return SCREWS.stream()
        .filter(screw -> screw.thread() == thread
            && screw.lengthMillimetres() == millimetres
            && screw.material() == Material.STEEL)
        .findFirst()
        .orElseThrow()
        .mass()
        .grams();
  }

  @Test
  void lighterMetalsKeepTheRatioOfTheirDensities() {
    // Titanium .57 of steel, aluminium .35, nylon .17: ratios of handbook densities.
    assertThat(SCREWS.stream().filter(screw -> screw.material() != Material.STEEL))
        .allSatisfy(screw -> {
          var ratio = screw.mass().grams() / grams(screw.thread(), screw.lengthMillimetres());
          var expected = switch (screw.material()) {
            case TITANIUM -> 0.57;
            case ALUMINIUM -> 0.35;
            case NYLON, STEEL -> 0.17;
          };
          assertThat(ratio).isBetween(0.8 * expected, 1.25 * expected);
        });
  }

  @Test
  void leadsWeighTheirWireAndPlugs() {
    // Silicone wire and plugs by the gram: common practice, no published source.
    assertThat(Bands.records(Kind.LEAD, Lead.class)).allSatisfy(lead -> {
      var boardSide = lead.boardSide();
      var law = 2 * lead.millimetres() / 1000 * Wire.ofGauge(lead.gauge()).gramsPerMetre()
          + lead.batterySide().halfGrams()
          + (boardSide == null ? 0 : boardSide.halfGrams());
      assertThat(lead.mass().grams() / law).isBetween(0.85, 1.15);
    });
  }

  @Test
  void strapsWeighWhatTheirWidthAsks() {
    // 2.5 to 5 g at 10 to 12 mm, 6 to 11 g at 16 to 20 mm: common practice, no published source.
    assertThat(Bands.records(Kind.STRAP, Strap.class)).allSatisfy(strap -> {
      var narrow = strap.widthMillimetres() <= 12;
      assertThat(strap.mass().grams()).isBetween(narrow ? 2.5 : 6.0, narrow ? 5.0 : 11.0);
    });
  }
}
