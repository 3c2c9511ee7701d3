package pappus.part;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import pappus.quantity.Money;
import pappus.quantity.Require;

/** A satellite receiver, with or without a compass. */
public record Gps(
    @JsonPropertyDescription("Catalogue key.") String id,
    @JsonPropertyDescription("Who makes it.") @ByClass String maker,
    @JsonPropertyDescription("What it is called.") String name,
    @JsonPropertyDescription("Price of one selling unit.") Money price,
    @JsonPropertyDescription("How it is sold.") @ByClass Sale sold,
    @JsonPropertyDescription("Mass of one piece.") Mass mass,
    @JsonPropertyDescription("Whether it has a compass.") boolean compass,
    @JsonPropertyDescription("Volts it stands.") @ByClass VoltWindow input,
    @JsonPropertyDescription("What it draws, W.") @ByClass double watts,

    @JsonPropertyDescription("Where the numbers come from.") @ByClass
    String source,

    @JsonIgnore List<Assumed> assumed)
    implements Part {

  public Gps {
    Part.check(id, maker, name, price, sold, mass, source);
    assumed = Assumed.listOf(assumed);
    Require.present("input", input);
    Require.inRange("watts", watts, 0.01, 3);
  }

  @Override
  public Kind kind() {
    return Kind.GPS;
  }

  @Override
  public List<Role> fills() {
    return List.of(Role.GPS);
  }
}
