package pappus.part;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import pappus.quantity.Money;
import pappus.quantity.Require;

/** A strap that holds the battery. */
public record Strap(
    @JsonPropertyDescription("Catalogue key.") String id,
    @JsonPropertyDescription("Who makes it.") @ByClass String maker,
    @JsonPropertyDescription("What it is called.") String name,
    @JsonPropertyDescription("Price of one selling unit.") Money price,
    @JsonPropertyDescription("How it is sold.") @ByClass Sale sold,
    @JsonPropertyDescription("Mass of one piece.") Mass mass,
    @JsonPropertyDescription("Width, mm, 5 to 40.") double widthMillimetres,
    @JsonPropertyDescription("Length, mm, 60 to 500.") double lengthMillimetres,

    @JsonPropertyDescription("Where the numbers come from.") @ByClass
    String source,

    @JsonIgnore List<Assumed> assumed)
    implements Part {

  public Strap {
    Part.check(id, maker, name, price, sold, mass, source);
    assumed = Assumed.listOf(assumed);
    Require.inRange("widthMillimetres", widthMillimetres, 5, 40);
    Require.inRange("lengthMillimetres", lengthMillimetres, 60, 500);
  }

  @Override
  public Kind kind() {
    return Kind.STRAP;
  }

  @Override
  public List<Role> fills() {
    return List.of();
  }
}
