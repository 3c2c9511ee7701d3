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

    @JsonPropertyDescription("Its gain where it hears best, dBi, -10 to 20.") @ByClass
    double gainDbi,

    @JsonPropertyDescription("Where the numbers come from.") @ByClass
    String source,

    @JsonIgnore List<Assumed> assumed)
    implements Part {
  static final double LEAST_GAIN_DBI = -10;

  /** No antenna that flies or is held in a hand has more, dBi. */
  public static final double MOST_GAIN_DBI = 20;

  public Antenna {
    Part.check(id, maker, name, price, sold, mass, source);
    assumed = Assumed.listOf(assumed);
    Require.present("connector", connector);
    Require.present("band", band);
    Require.present("polarisation", polarisation);
    Require.inRange("gainDbi", gainDbi, LEAST_GAIN_DBI, MOST_GAIN_DBI);
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
