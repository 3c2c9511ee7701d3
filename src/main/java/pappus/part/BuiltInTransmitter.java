package pappus.part;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import pappus.quantity.Require;

/** A video transmitter on a flight board. */
public record BuiltInTransmitter(
    @JsonPropertyDescription("Analogue, or the digital family it belongs to.")
    String family,

    @JsonPropertyDescription("Powers it can be set to, rising.")
    List<OutputPower> powers,

    @JsonPropertyDescription("Its antenna ports.") @ByClass AntennaPort antenna)
    implements VideoSender {
  public BuiltInTransmitter {
    Require.name("family", family);
    powers = OutputPower.rising(powers);
    Require.present("antenna", antenna);
  }
}
