package pappus.part;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import pappus.quantity.Money;
import pappus.quantity.Require;

/** A radio receiver. */
public record Receiver(
    @JsonPropertyDescription("Catalogue key.") String id,
    @JsonPropertyDescription("Who makes it.") @ByClass String maker,
    @JsonPropertyDescription("What it is called.") String name,
    @JsonPropertyDescription("Price of one selling unit.") Money price,
    @JsonPropertyDescription("How it is sold.") @ByClass Sale sold,
    @JsonPropertyDescription("Mass of one piece.") Mass mass,
    @JsonPropertyDescription("Radio link family it speaks.") String link,
    @JsonPropertyDescription("Volts it stands.") @ByClass VoltWindow input,
    @JsonPropertyDescription("The port it needs.") @ByClass SerialNeed serial,
    @JsonPropertyDescription("Its antenna ports.") @ByClass AntennaPort antenna,

    @JsonPropertyDescription("Whether its antennas are soldered on, in mass and price.") @ByClass
    boolean antennaFixed,

    @JsonPropertyDescription("The weakest signal that it follows.") @ByClass
    Sensitivity sensitivity,

    @JsonPropertyDescription("What it draws, W.") @ByClass double watts,

    @JsonPropertyDescription("Where the numbers come from.") @ByClass
    String source,

    @JsonIgnore List<Assumed> assumed)
    implements Part, RadioReceiver {

  public Receiver {
    Part.check(id, maker, name, price, sold, mass, source);
    assumed = Assumed.listOf(assumed);
    Require.name("link", link);
    Require.present("input", input);
    Require.present("serial", serial);
    Require.present("antenna", antenna);
    Require.present("sensitivity", sensitivity);
    Require.inRange("watts", watts, 0.01, 3);
  }

  @Override
  public Kind kind() {
    return Kind.RECEIVER;
  }

  @Override
  public List<Role> fills() {
    return antennaFixed ? List.of(Role.RECEIVER, Role.RADIO_ANTENNA) : List.of(Role.RECEIVER);
  }
}
