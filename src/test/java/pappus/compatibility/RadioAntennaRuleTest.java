package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.compatibility.Bench.FITS;
import static pappus.part.Parts.board;
import static pappus.part.Parts.build;
import static pappus.part.Parts.radioAntenna;
import static pappus.part.Parts.with;

import org.junit.jupiter.api.Test;
import pappus.part.AntennaConnector;
import pappus.part.AntennaPort;
import pappus.part.Band;
import pappus.part.BuiltInReceiver;
import pappus.part.Role;
import pappus.part.Sensitivity;

final class RadioAntennaRuleTest {
  private final RadioAntennaRule rule = new RadioAntennaRule();

  @Test
  void fitsTheSamePlugAndBand() {
    assertThat(Bench.plain().says(rule, build())).isEqualTo(FITS);
  }

  @Test
  void clashesOnAnotherPlug() {
    var antenna = with(radioAntenna(), "connector", AntennaConnector.MMCX);

    assertThat(Bench.plain().says(rule, build().with(Role.RADIO_ANTENNA, antenna)))
        .isEqualTo("clashes: Antenna radio-antenna has a MMCX plug, but the port is u.FL.");
  }

  @Test
  void clashesOnAnotherBand() {
    var antenna = with(radioAntenna(), "band", Band.MHZ_900);

    assertThat(Bench.plain().says(rule, build().with(Role.RADIO_ANTENNA, antenna)))
        .isEqualTo(
            "clashes: Antenna radio-antenna is tuned to 868/915 MHz, but the port works at 2.4 GHz.");
  }

  @Test
  void judgesThePortOnTheBoard() {
    var port = new AntennaPort(AntennaConnector.U_FL, Band.MHZ_900, 1, null, null);
    var inside = new BuiltInReceiver("link-a", port, false, new Sensitivity(-108, 250));

    assertThat(Bench.plain()
            .says(rule, build(with(board(), "receiver", inside)).without(Role.RECEIVER)))
        .isEqualTo(
            "clashes: Antenna radio-antenna is tuned to 2.4 GHz, but the port works at 868/915 MHz.");
  }
}
