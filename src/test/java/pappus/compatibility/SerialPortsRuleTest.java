package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.compatibility.Bench.FITS;
import static pappus.part.Parts.board;
import static pappus.part.Parts.build;
import static pappus.part.Parts.gps;
import static pappus.part.Parts.transmitter;
import static pappus.part.Parts.with;

import org.junit.jupiter.api.Test;
import pappus.part.SerialNeed;

final class SerialPortsRuleTest {
  private final SerialPortsRule rule = new SerialPortsRule();

  @Test
  void fitsWithPortsToSpare() {
    assertThat(Bench.plain().says(rule, build())).isEqualTo(FITS);
  }

  @Test
  void clashesWithTooFewPorts() {
    assertThat(Bench.plain()
            .says(
                rule,
                build(
                    with(board(), "serialPorts", 1),
                    with(transmitter(), "serial", SerialNeed.FULL))))
        .isEqualTo("clashes: 2 parts need a serial port (UART) each, but board board has 1 free.");
  }

  @Test
  void notesAControlWithoutAPort() {
    assertThat(Bench.plain().says(rule, build(with(board(), "serialPorts", 1))))
        .isEqualTo(
            "fits, but: Board board has no serial port (UART) left to control the transmitter: set power and channel by its button.");
  }

  @Test
  void givesTheGpsAPort() {
    assertThat(Bench.plain().says(rule, build(with(board(), "serialPorts", 1), gps())))
        .isEqualTo("clashes: 2 parts need a serial port (UART) each, but board board has 1 free.");
  }
}
