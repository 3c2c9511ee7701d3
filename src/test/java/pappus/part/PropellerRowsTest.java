package pappus.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static pappus.part.Parts.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import pappus.part.Propeller.Row;
import pappus.part.Propeller.StaticTest;

class PropellerRowsTest {
  @Test
  void theOnlyRowMayLackItsSpeedAndIsThenOfFullThrottle() {
    var row = new Row(null, 0.13, 0.06);
    Propeller propeller = with(Parts.propeller(), "test", new StaticTest(List.of(row), null, null));

    assertThat(propeller.onlyRow()).contains(row);
    assertThat(propeller.rpm(row)).isEqualTo(110_000 / propeller.diameterInches());
  }

  @Test
  void rowsOfSeveralSpeedsMustSayThem() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new StaticTest(
            List.of(new Row(9000.0, 0.13, 0.06), new Row(null, 0.13, 0.06)), null, null))
        .withMessage("rows[1].rpm must be given where there are several rows, but is left out.");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new StaticTest(
            List.of(new Row(9000.0, 0.13, 0.06), new Row(9000.0, 0.13, 0.06)), null, null))
        .withMessage("rows[1].rpm must be above 9000, but is 9000.");
  }
}
