package pappus.whatif.relax;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import pappus.assessment.Supply;
import pappus.catalog.Catalog;
import pappus.catalog.Shelf;
import pappus.change.Asked;
import pappus.change.Asking;
import pappus.links.Link;
import pappus.shop.SmallShop;

/** Links that end too soon, and what is given up for them. */
class ReachRelaxTest {
  private static final Catalog PARTS = SmallShop.catalog(SmallShop.REACHING);

  private static Asked asking(String fields) {
    return new Asked(
        SmallShop.scenario(", \"pilot\": {\"polarisation\": \"right\"}" + fields),
        new Supply(PARTS, Shelf.EMPTY));
  }

  /** 400 mW and 1.2 dBi reach 630 m with a picture of −85 dBm; control reaches farther. */
  @Test
  void aReachIsGivenUpToTheTenMetresThatABuildHas() {
    var relaxed = Asking.relax(asking(", \"reachMetres\": 1000"));

    assertThat(relaxed.conflict()).extracting(Demand::id).containsExactly("reach");
    var relief = relaxed.reliefs().get(0);
    assertThat(relief.from()).isEqualTo("1000 m");
    assertThat(relief.to()).isEqualTo("630 m");
    assertThat(relief.isLeast()).isTrue();
    var video = relief.build().fitting().reach().video().orElseThrow();
    assertThat(video.milliwatts()).isEqualTo(400);
    assertThat(video.metres()).isBetween(630.0, 640.0);
  }

  /** Either the reach or the power that was stated is given up. */
  @Test
  void aPowerThatIsTooLowIsLeftOpenOrTheReachGivenUp() {
    var relaxed = Asking.relax(asking(", \"reachMetres\": 300, \"transmitterMilliwatts\": 25"));

    assertThat(relaxed.conflict())
        .extracting(Demand::id)
        .containsExactly("transmitter-power", "reach");
    assertThat(relaxed.reliefs())
        .extracting(relief -> relief.demand().id() + " " + relief.to())
        .containsExactly("transmitter-power ", "reach 150 m");
    assertThat(relaxed.reliefs().get(0).build().fitting().reach().video().map(Link::milliwatts))
        .contains(100.0);
  }
}
