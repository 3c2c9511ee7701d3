package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import pappus.catalog.Catalog;
import pappus.catalog.Shipped;
import pappus.part.Battery;
import pappus.part.Build;
import pappus.part.Frame;
import pappus.part.Part;
import pappus.part.Propeller;
import pappus.part.Role;

/** Rules of sizes: what they say of parts they say of sizes, and no smaller part breaks what a larger one keeps. */
class SizeRulesTest {
  private static final Catalog CATALOG = Shipped.CATALOG;
  private static final List<SizeRule> RULES = Rules.ALL.stream()
      .filter(SizeRule.class::isInstance)
      .map(SizeRule.class::cast)
      .toList();

  private static <P extends Part> List<P> all(Class<P> kind) {
    return CATALOG.parts().stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  private static boolean keeps(SizeRule rule, Frame frame, Sizes sizes) {
    var room = rule.room(frame);
    return sizes.propeller() <= room.propeller()
        && sizes.packLength() <= room.packLength()
        && sizes.packWidth() <= room.packWidth()
        && sizes.packHeight() <= room.packHeight()
        && rule.mayTake(frame, sizes);
  }

  private static boolean isClash(SizeRule rule, Build build) {
    return Bench.plain().says(rule, build).startsWith("clashes");
  }

  @Test
  void thereAreTwo() {
    assertThat(RULES).hasSize(2);
  }

  @Test
  void whatIsSmallerFitsAsWell() {
    var random = new Random(7);
    var frames = all(Frame.class);
    var kept = 0;
    for (var times = 0; times < 20_000; times++) {
      var frame = frames.get(random.nextInt(frames.size()));
      var sizes = new Sizes(
          50 + 90 * random.nextDouble(),
          20 + 110 * random.nextDouble(),
          10 + 50 * random.nextDouble(),
          5 + 40 * random.nextDouble());
      var smaller = sizes.least(new Sizes(
          sizes.propeller() * random.nextDouble(),
          sizes.packLength() * (0.3 + 0.7 * random.nextDouble()),
          sizes.packWidth() * (0.3 + 0.7 * random.nextDouble()),
          sizes.packHeight() * random.nextDouble()));
      for (var rule : RULES) {
        if (keeps(rule, frame, sizes)) {
          kept++;
          assertThat(keeps(rule, frame, smaller))
              .as("%s %s %s %s", rule.id(), frame.id(), sizes, smaller)
              .isTrue();
        }
      }
    }
    assertThat(kept).isGreaterThan(2_000);
  }

  @Test
  void sizesSayNoMoreOfPartsThanTheRuleItself() {
    var broken = 0;
    for (var frame : all(Frame.class)) {
      for (var propeller : all(Propeller.class)) {
        var build = Build.empty().with(Role.FRAME, frame).with(Role.PROPELLER, propeller);
        for (var rule : RULES) {
          if (!keeps(rule, frame, Sizes.of(build))) {
            broken++;
            assertThat(isClash(rule, build)).as("%s %s", rule.id(), build).isTrue();
          }
        }
      }
      for (var battery : all(Battery.class)) {
        var build = Build.empty().with(Role.FRAME, frame).with(Role.BATTERY, battery);
        for (var rule : RULES) {
          if (!keeps(rule, frame, Sizes.of(build))) {
            broken++;
            assertThat(isClash(rule, build)).as("%s %s", rule.id(), build).isTrue();
          }
        }
      }
    }
    assertThat(broken).isGreaterThan(1_000);
  }
}
