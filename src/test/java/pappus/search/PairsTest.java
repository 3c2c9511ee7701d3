package pappus.search;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import pappus.catalog.Catalog;
import pappus.part.Kind;
import pappus.part.Part;
import pappus.part.Role;
import pappus.shop.SmallShop;

class PairsTest {
  private static final Catalog FEW = SmallShop.few();

  private final Pairs pairs = new Pairs(SmallShop.question(FEW, ""));

  @Test
  void givesWhatGoesWithAPartInTheOrderOfIds() {
    assertThat(pairs.with(Role.FRAME, part("cottongrass-4"), Role.PROPELLER))
        .extracting(Part::id)
        .containsExactly("ligule-4x1.9x2");
    assertThat(pairs.with(Role.FRAME, part("thistledown-5"), Role.PROPELLER))
        .extracting(Part::id)
        .containsExactly("awn-4.5x2.5x2", "frond-4.5x3.2x3", "ligule-4x1.9x2");
  }

  @Test
  void agreesWithTheRulesBothWays() {
    for (var frame : FEW.ofKind(Kind.FRAME)) {
      for (var propeller : FEW.ofKind(Kind.PROPELLER)) {
        assertThat(pairs.with(Role.FRAME, frame, Role.PROPELLER).contains(propeller))
            .isEqualTo(pairs.with(Role.PROPELLER, propeller, Role.FRAME).contains(frame));
      }
    }
  }

  @Test
  void giveNothingForARoleWithoutOptions() {
    assertThat(pairs.with(Role.FRAME, part("cottongrass-4"), Role.GPS)).isEmpty();
  }

  private static Part part(String id) {
    return FEW.part(id).orElseThrow();
  }
}
