package pappus.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import pappus.part.Role;
import pappus.part.SmallThing;

final class AlsoBuyTest {
  @Test
  void packsAreTheOneAboardAndSpares() {
    assertThat(new AlsoBuy(3, null, null, null).allSpares())
        .containsExactly(Spare.pieces(Role.BATTERY, 2));
    assertThat(new AlsoBuy(1, null, null, null).allSpares()).isEmpty();
    assertThat(AlsoBuy.NOTHING.counts()).isFalse();
  }

  @Test
  void namesEachThingOnce() {
    var motor = Spare.pieces(Role.MOTOR, 1);

    assertThatThrownBy(() -> new AlsoBuy(null, List.of(motor, motor), null, null))
        .hasMessage("spares must name each thing once, but name motor twice.");
    assertThatThrownBy(() -> new AlsoBuy(2, List.of(Spare.pieces(Role.BATTERY, 1)), null, null))
        .hasMessageStartingWith("spares must not name battery where packs are stated");
  }

  @Test
  void aSpareIsOfOneThingInOneWay() {
    assertThatThrownBy(() -> new Spare(null, null, 1, null)).hasMessageStartingWith("role must be");
    assertThatThrownBy(() -> new Spare(Role.MOTOR, SmallThing.BATTERY_PAD, 1, null))
        .hasMessageStartingWith("role must be left out");
    assertThatThrownBy(() -> new Spare(Role.MOTOR, null, null, null))
        .hasMessageStartingWith("pieces must be there");
    assertThatThrownBy(() -> new Spare(Role.MOTOR, null, 1, 1))
        .hasMessageStartingWith("pieces must be left out");
    assertThatThrownBy(() -> new Spare(Role.MOTOR, null, 201, null))
        .hasMessageContaining("must be from 1 to 200, but is 201");
  }
}
