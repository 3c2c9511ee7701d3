package pappus.part;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import pappus.quantity.Money;
import pappus.quantity.Require;

/** An antenna, for video or for the radio link. */
public record Antenna(
    @JsonPropertyDescription("Catalogue key.") String id,
    @JsonPropertyDescription("Who makes it.") @ByClass String maker,
    @JsonPropertyDescription("What it is called.") String name,
    @JsonPropertyDescription("Price of one selling unit.") Money price,
    @JsonPropertyDescription("How it is sold.") @ByClass Sale sold,
    @JsonPropertyDescription("Mass of one piece.") Mass mass,
    @JsonPropertyDescription("Its plug.") AntennaConnector connector,
    @JsonPropertyDescription("What it is tuned to.") Band band,
    @JsonPropertyDescription("Its polarisation.") @ByClass Polarisation polarisation,

    @JsonPropertyDescription("Where the numbers come from.") @ByClass
    String source,

    @JsonIgnore List<Assumed> assumed)
    implements Part {

  public Antenna {
    Part.check(id, maker, name, price, sold, mass, source);
    assumed = Assumed.listOf(assumed);
    Require.present("connector", connector);
    Require.present("band", band);
    Require.present("polarisation", polarisation);
  }

  @Override
  public Kind kind() {
    return Kind.ANTENNA;
  }

  @Override
  public List<Role> fills() {
    return List.of();
  }
}
