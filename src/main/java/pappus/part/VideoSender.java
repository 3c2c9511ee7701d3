package pappus.part;

import java.util.List;

/** What sends video: a part of its own, or one built into a board. */
public sealed interface VideoSender permits Transmitter, BuiltInTransmitter {
  /** Analogue, or the digital family. */
  String family();

  /** Powers it can be set to, rising. */
  List<OutputPower> powers();

  /** Its antenna ports. */
  AntennaPort antenna();

  /** The name of the analogue family, which every maker shares. */
  String ANALOGUE = "analogue";

  /** Lowest setting that radiates at least so much, else the highest there is. */
  default OutputPower settingFor(double milliwatts) {
    var powers = powers();
    for (var power : powers) {
      if (power.milliwatts() >= milliwatts) {
        return power;
      }
    }
    return powers.get(powers.size() - 1);
  }
}
