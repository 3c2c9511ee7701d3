package pappus.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import pappus.part.Parts;
import pappus.part.Role;

class ChangedTest {
  @Test
  void namesEveryRoleThatDiffersInTheOrderOfRoles() {
    var pack = Parts.with(Parts.battery(), "id", "other-pack");
    var before = Parts.of(Parts.frame(), Parts.motor(), Parts.battery(), Parts.buzzer());
    var after = Parts.of(Parts.frame(), pack, Parts.motor(), Parts.capacitor());

    assertThat(Changed.between(before, after))
        .containsExactly(
            new Changed(Role.BATTERY, Optional.of(Parts.battery()), Optional.of(pack)),
            new Changed(Role.BUZZER, Optional.of(Parts.buzzer()), Optional.empty()),
            new Changed(Role.CAPACITOR, Optional.empty(), Optional.of(Parts.capacitor())));
  }

  @Test
  void theSameIdIsTheSamePart() {
    var heavier = Parts.with(Parts.battery(), "leadGauge", 16);

    assertThat(Changed.between(Parts.build(), Parts.build(heavier))).isEmpty();
  }
}
