package pappus.compatibility;

import java.util.Optional;
import pappus.part.Antenna;
import pappus.part.AntennaPort;

/** Plug and band of an antenna against a port; what both antenna rules ask first. */
final class AntennaMatch {
  private AntennaMatch() {}

  /** Why the antenna does not go on the port, if it does not. */
  static Optional<Verdict> obstacle(Antenna antenna, AntennaPort port) {
    var plug = port.connector();
    if (plug == null) {
      return Optional.of(Verdict.unknown("the plug of the port for antenna %s", antenna.id()));
    }
    if (antenna.connector() != plug) {
      return Optional.of(Verdict.clashes(
          antenna.connector().looksLike(plug)
              ? "Antenna %s has a %s plug, but the port is %s: they look alike and do not mate."
              : "Antenna %s has a %s plug, but the port is %s.",
          antenna.id(),
          antenna.connector().label(),
          plug.label()));
    }
    return antenna.band() == port.band()
        ? Optional.empty()
        : Optional.of(Verdict.clashes(
            "Antenna %s is tuned to %s, but the port works at %s.",
            antenna.id(), antenna.band().label(), port.band().label()));
  }
}
