package pappus.evidence.filling;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import pappus.assessment.Desk;
import pappus.assessment.flight.FrameAir;
import pappus.files.Problems;
import pappus.files.Source;
import pappus.files.json.JsonText;
import pappus.part.Build;
import pappus.part.Frame;
import pappus.part.Kind;
import pappus.part.Part;
import pappus.part.Parts;
import pappus.part.Propeller;
import pappus.part.Role;
import pappus.physics.propeller.BladeElements;
import pappus.quantity.Units;
import pappus.scenario.Flight;
import pappus.scenario.Scenario;
import pappus.scenario.Scenarios;
import pappus.shop.SmallShop;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * Leaving a fact out gains no more than half a spread of its class: of a fact that is no worse than its class by more
 * than one. A worse one cannot be told from its absence. Half a spread is tried both ways, for less resistance saves
 * copper and costs ripple.
 */
class LeavingOutTest {
  private static final int CATALOGUES = 40;

  /** Of a flight, what no answer shows: minutes are told in halves. */
  private static final double LEAST_TOLD = 0.005;

  /** A fact, by what its figure is called in a record. */
  private enum Fact {
    WINDING(Role.MOTOR, "resistanceMilliohms"),
    NO_LOAD(Role.MOTOR, "noLoadCurrentAmps"),
    CELL(Role.BATTERY, "resistance"),
    ARMS(Role.FRAME, "armWidthMillimetres"),
    BOARD(Role.BOARD, "watts"),
    CAMERA(Role.CAMERA, "watts"),
    DRAG(Role.FRAME, "dragAreaSquareMetres"),
    TEST(Role.PROPELLER, "test");

    private final Role role;
    private final String field;

    Fact(Role role, String field) {
      this.role = role;
      this.field = field;
    }

    /**
     * The record with its fact so many spreads from the middle of its class.
     *
     * @param build with the record, by which a drag area goes
     */
    Part at(Part left, double spreads, Build build) {
      if (this == DRAG) {
        var grams = Desk.assess(build).mass().grams();
        var counted = FrameAir.of((Frame) left, Flight.HOVERING)
            .mostDragArea(grams, build.battery().orElseThrow());
        return Parts.with(
            (Frame) left,
            field,
            counted * StrictMath.exp((spreads - 0.5) * FrameAir.UNSTATED_SPREAD));
      }
      if (this == TEST) {
        return tested((Propeller) left, spreads);
      }
      var assumed = left.assumed(field).orElseThrow();
      var factor = StrictMath.exp((spreads - 0.5) * assumed.spread());
      var record = (ObjectNode) JsonMapper.shared().readTree(JsonText.of(left));
      switch (this) {
        case CELL -> {
          var cell = (ObjectNode) record.get(field);
          cell.put("milliohmsPerCell", factor * cell.get("milliohmsPerCell").doubleValue());
        }
        case ARMS -> {
          var arms = (ObjectNode) record.get(field);
          arms.put("root", factor * arms.get("root").doubleValue());
          arms.put("tip", factor * arms.get("tip").doubleValue());
        }
        default -> record.put(field, factor * record.get(field).doubleValue());
      }
      return read(left.kind(), record);
    }

    /** A test that is sure of its figures of merit at rest, at all speeds that are flown. */
    private static Propeller tested(Propeller propeller, double spreads) {
      var diameterM = Units.inchesToMetres(propeller.diameterInches());
      var pitchM = Units.inchesToMetres(propeller.pitchInches());
      var better = StrictMath.exp(spreads * BladeElements.doubtLnFigureOfMerit(diameterM));
      var rows = new ArrayList<Propeller.Row>();
      for (var rpmInches = 15_000; rpmInches <= 135_000; rpmInches += 10_000) {
        var rpm = rpmInches / propeller.diameterInches();
        var at = BladeElements.at(diameterM, pitchM, propeller.blades(), Units.rpmToRadPerS(rpm));
        rows.add(new Propeller.Row(rpm, at.thrustCoefficient(), at.powerCoefficient() / better));
      }
      return Parts.with(
          Parts.with(propeller, "test", new Propeller.StaticTest(rows, 1.2, 20.0)),
          "figuresDoubt",
          0.0);
    }

    Part leftOut(Part part) {
      var record = (ObjectNode) JsonMapper.shared().readTree(JsonText.of(part));
      record.remove(field);
      if (this == ARMS) {
        record.remove("dragAreaSquareMetres");
      }
      return read(part.kind(), record);
    }

    private static Part read(Kind kind, ObjectNode record) {
      var problems = new Problems();
      var text = "{\"" + kind.listName() + "\": [" + record + "]}";
      var read = Filling.read(
          Source.of("f.json", text.getBytes(UTF_8)), kind, kind.recordClass(), problems);
      assertThat(problems.sorted()).isEmpty();
      return read.get(0).value();
    }
  }

  @Test
  void leavingAFactOutGainsNoMoreThanHalfASpread() {
    var random = new Random(20_260_101);
    var all = SmallShop.all();
    var hover = Scenarios.plain();
    var cruise = Parts.with(
        hover,
        "flight",
        Parts.with(
            Parts.with(Flight.HOVERING, "style", Flight.Style.CRUISE),
            "airspeedMetresPerSecond",
            14.0));
    var gains = 0;
    for (var i = 0; i < CATALOGUES; i++) {
      var other = any(all.ofKind(Kind.PROPELLER), new Random(i));
      var usual = SmallShop.oneBuild()
          .with(Role.MOTOR, any(all.ofKind(Kind.MOTOR), random))
          .with(Role.BATTERY, any(all.ofKind(Kind.BATTERY), random))
          .with(Role.FRAME, any(all.ofKind(Kind.FRAME), random));
      for (var fact : Fact.values()) {
        var build = fact == Fact.TEST ? usual.with(Role.PROPELLER, other) : usual;
        var left = fact.leftOut(build.part(fact.role).orElseThrow());
        var spreads = 2 * random.nextDouble() - 1;
        for (var scenario : List.of(hover, cruise)) {
          var without = build.with(fact.role, left);
          var out = flown(without, scenario);
          var stated = flown(build.with(fact.role, fact.at(left, spreads, without)), scenario);
          var better = Math.max(
              flown(build.with(fact.role, fact.at(left, spreads - 0.5, without)), scenario),
              flown(build.with(fact.role, fact.at(left, spreads + 0.5, without)), scenario));

          var most = Math.max(better, stated) + 1;
          if (out > most) {
            // On a stator far too large less resistance harms, by some thousandths of the flight:
            // the way that counts as harmful is the other one then.
            assertThat(flown(build.with(fact.role, fact.at(left, -1, without)), scenario))
                .as("%s a spread better in %s", fact, build)
                .isLessThan(flown(build.with(fact.role, fact.at(left, 0, without)), scenario));
            most += Math.round(LEAST_TOLD * most);
          }
          assertThat(out)
              .as("%s left out of %s, which is %s spreads worse", fact, build, spreads)
              .isLessThanOrEqualTo(most);
          gains += out > stated ? 1 : 0;
        }
      }
    }
    // Else nothing was tried that leaving out could gain by.
    assertThat(gains).isGreaterThan(CATALOGUES / 4);
  }

  private static Part any(List<Part> parts, Random random) {
    return parts.get(random.nextInt(parts.size()));
  }

  /** Milliseconds, or none where it does not fly. */
  private static long flown(Build build, Scenario scenario) {
    var assessment = Desk.assess(build, scenario);
    return assessment.flight().isPresent() ? assessment.milliseconds() : 0;
  }
}
