package pappus.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pappus.assessment.Assessment;
import pappus.assessment.Limit;
import pappus.part.Part;
import pappus.part.Role;

class BestSwapsTest {
  private static final Assessment BASE = pappus.search.Changed.seconds(Quads.WHOLE, 1000);

  /** A swap of the pack after which the quad flies so long. */
  private static Swap swap(String id, double seconds) {
    return new Swap(Role.BATTERY, part(id), BASE, built(id, seconds), List.of());
  }

  private static Swap broken(String id, double seconds) {
    var heavy = new Limit("mass-cap", "all-up mass", "g", 260, 250, true, false);
    return new Swap(
        Role.BATTERY,
        part(id),
        BASE,
        pappus.search.Changed.limits(built("tidewell-2s-3400", seconds), List.of(heavy)),
        List.of());
  }

  private static Assessment built(String id, double seconds) {
    var with = Quads.assess(Quads.WHOLE.build().toString().replace("tidewell-2s-3500", id));
    return pappus.search.Changed.seconds(with, seconds);
  }

  private static Part part(String id) {
    return Quads.WORKSHOP.part(id).orElseThrow();
  }

  private static BestSwaps of(Swap... swaps) {
    return BestSwaps.of(Role.BATTERY, List.of(swaps));
  }

  @Test
  void takesTheLongestThatBreaksNothing() {
    var shorter = swap("neap-2s-450", 900);
    var longer = swap("tidewell-2s-3400", 990);
    var heavy = broken("neap-2s-350", 1200);

    var best = of(shorter, longer, heavy);

    assertThat(best.role()).isEqualTo(Role.BATTERY);
    assertThat(best.tried()).isEqualTo(3);
    assertThat(best.best()).contains(longer);
    assertThat(best.tempting()).contains(heavy);
  }

  @Test
  void takesTheCheaperOfTwoThatFlyAsLong() {
    var cheaper = swap("neap-2s-450", 990);
    var dearer = swap("tidewell-2s-3400", 990);

    assertThat(cheaper.centsMore()).isLessThan(dearer.centsMore());
    assertThat(of(dearer, cheaper).best()).contains(cheaper);
  }

  @Test
  void nothingIsTemptingThatGainsNoMoreThanASecond() {
    var longer = swap("tidewell-2s-3400", 1010);

    assertThat(of(longer, broken("neap-2s-350", 1011)).tempting()).isEmpty();
    assertThat(of(longer, broken("neap-2s-350", 1011.1)).tempting()).isPresent();
    // Beside a best swap that loses, the quad itself is to be surpassed.
    var shorter = swap("tidewell-2s-3400", 900);
    assertThat(of(shorter, broken("neap-2s-350", 1001)).tempting()).isEmpty();
    assertThat(of(shorter, broken("neap-2s-350", 1001.1)).tempting()).isPresent();
  }

  @Test
  void temptsWithTheLongestOfThoseThatBreakSomething() {
    var most = broken("neap-2s-350", 1300);

    assertThat(of(broken("neap-2s-450", 1200), most).tempting()).contains(most);
    assertThat(of(broken("neap-2s-450", 1200), most).best()).isEmpty();
  }

  @Test
  void hasNothingToSayWhereThereIsNoOtherPart() {
    assertThat(of()).isEqualTo(new BestSwaps(Role.BATTERY, 0, Optional.empty(), Optional.empty()));
  }
}
