package pappus.search.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.catalog.Catalog;
import pappus.files.json.Altered;
import pappus.part.Build;
import pappus.part.Motor;
import pappus.part.Part;
import pappus.part.Role;
import pappus.search.Question;
import pappus.shop.SmallShop;

/** Every bound on the way to a build is at least what the build reaches. */
@Tag("slow")
class BoundsTest {
  private static final int CATALOGUES = 30;
  private static final int BUILDS = 12;

  @Test
  void noBuildSurpassesABoundOnTheWayToIt() {
    var looked = 0;
    var seen = 0;
    for (var i = 0; i < 2 * CATALOGUES; i++) {
      var seed = i < CATALOGUES ? i : RandomQuestions.STAYS + i - CATALOGUES;
      var question = RandomQuestions.of(seed);
      var found = RandomQuestions.tried(seed).bestFirst();
      if (!found.isEmpty()) {
        var way = new Way(question);
        for (var assessment : found.subList(0, Math.min(BUILDS, found.size()))) {
          way.isAbove(assessment, seed);
          looked++;
          seen += isDragSeen(question.assessor(), assessment) ? 1 : 0;
        }
      }
    }
    assertThat(looked).isGreaterThan(CATALOGUES);
    assertThat(seen).as("builds whose pack makes their drag").isGreaterThan(BUILDS);
  }

  /** Screws and wire of a motor are its own, whatever another that looks alike goes on. */
  @Test
  void aMotorThatGoesOnNoFrameSaysNothingOfItsTwin() {
    var few = SmallShop.few();
    var motor = (Motor) few.part("spikerush-1303-3400").orElseThrow();
    var stranger = Altered.record(
        Motor.class, motor, Map.of("id", "a-stranger", "boltCirclesMillimetres", List.of(25.0)));
    var parts = new ArrayList<Part>(few.parts());
    parts.add(stranger);
    var alone = new Frames(new Goods(SmallShop.question(few, "")));
    var both = new Frames(new Goods(SmallShop.question(Catalog.of(parts), "")));
    both.fastening(stranger);

    for (var frame = 0; frame < alone.size(); frame++) {
      assertThat(both.fastening(motor).on(frame))
          .isEqualTo(alone.fastening(motor).on(frame));
    }
    assertThat(alone.fastening(motor).on(0))
        .isNotEqualTo(both.fastening(stranger).on(0));
  }

  private static boolean isDragSeen(Assessor assessor, Assessment assessment) {
    var build = assessment.build();
    var air = assessor.prospects().air(build.frame().orElseThrow());
    var grams = assessment.mass().grams();
    return assessor.prospects().asksForDrag()
        && air.leastDragArea(grams, build.battery().orElseThrow()) > air.leastDragArea(grams);
  }

  /** The bounds of one question. */
  private static final class Way {
    private final Goods goods;
    private final Frames frames;
    private final KitRelaxations kits;
    private final Bounds bounds;
    private final Boxes boxes;
    private final BoxBound boxBound;

    Way(Question question) {
      this.goods = new Goods(question);
      this.frames = new Frames(goods);
      this.kits = new KitRelaxations(goods);
      this.bounds = new Bounds(question);
      this.boxes = new Boxes(goods, frames, kits);
      this.boxBound = new BoxBound(goods, bounds, boxes.spans(), boxes.share());
    }

    void isAbove(Assessment assessment, int seed) {
      var build = assessment.build();
      var mains = Build.empty();
      for (var role : Role.MAIN) {
        mains = mains.with(role, build.part(role).orElseThrow());
      }
      var all = new BoxBound.Three(
          boxes.motors(), boxes.propellers(), boxes.battery(build.battery().orElseThrow()));
      var one = new BoxBound.Three(
          boxes.motor(build.motor().orElseThrow()),
          boxes.propeller(build.propeller().orElseThrow()),
          boxes.battery(build.battery().orElseThrow()));

      assertThat(boxed(all, build))
          .as("boxes, %s: %s", seed, build)
          .isGreaterThanOrEqualTo(assessment.objective());
      assertThat(boxed(one, build))
          .as("one each, %s: %s", seed, build)
          .isGreaterThanOrEqualTo(assessment.objective());
      assertThat(aimed(mains, kits.of(mains.without(Role.FRAME))))
          .as("any accessories, %s: %s", seed, build)
          .isGreaterThanOrEqualTo(assessment.objective());
      assertThat(aimed(mains, kits.of(mains)))
          .as("accessories of the frame, %s: %s", seed, build)
          .isGreaterThanOrEqualTo(assessment.objective());
      assertThat(searched(mains, assessment))
          .as("search, %s: %s", seed, build)
          .isGreaterThanOrEqualTo(assessment.objective());
    }

    private long boxed(BoxBound.Three three, Build build) {
      var most = Aim.HOPELESS;
      var motor = three.motors().relaxation();
      var propeller = three.propellers().relaxation();
      var battery = three.batteries().relaxation();
      var sizes = propeller.sizes().and(battery.sizes());
      var going =
          frames.going(frames.every(), motor.frames(), propeller.frames(), battery.frames(), sizes);
      var lightest = frames.lightest(going, sizes, motor.fastening(), Double.POSITIVE_INFINITY);
      var least = frames.from(lightest, motor.fastening());
      for (var kit : kits.coarse(goods.with(build.battery().orElseThrow()))) {
        most = Math.max(most, boxBound.most(three, least, frames.air(going), kit));
      }
      return most;
    }

    private long aimed(Build mains, List<KitRelaxation> floors) {
      return target(mains, floors).most(added(mains), floors);
    }

    private Target target(Build mains, List<KitRelaxation> floors) {
      var air = frames.air(mains.frame().orElseThrow());
      var watts = floors.stream().mapToDouble(floor -> floor.leastWatts()).min().orElse(0);
      var ohm = floors.stream().mapToDouble(KitRelaxation::ohm).min().orElse(0);
      var losses = floors.stream().map(KitRelaxation::loss).toList();
      var aim = bounds.aim(mains, air, new Adds(0, 0, watts, 0, ohm), losses).orElse(Aim.NOTHING);
      return Target.of(aim, added(mains), floors);
    }

    private Adds added(Build mains) {
      var begun = goods.assessor().prospects().begun(mains);
      return new Adds(begun.grams(), begun.variance(), 0, begun.cents(), 0);
    }

    /** What a search for accessories still promises before it has told this build. */
    private long searched(Build mains, Assessment assessment) {
      var floors = kits.of(mains);
      var begun = goods.assessor().prospects().begun(mains);
      var air = frames.air(mains.frame().orElseThrow());
      var search = new KitSearch(
          goods,
          new Trees(goods, kits),
          target(mains, floors),
          (build, least, loss) -> bounds.aim(build, air, least, List.of(loss)).orElse(Aim.NOTHING),
          mains,
          begun.variance(),
          begun.cents());
      var promised = search.most();
      var told = new boolean[1];
      while (!told[0] && search.most() >= 0) {
        promised = search.most();
        search.step(build -> told[0] |= build.equals(assessment.build()));
      }
      return told[0] ? promised : Aim.HOPELESS;
    }
  }
}
