package pappus.part;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import pappus.quantity.Money;
import pappus.quantity.Require;

/** A low-resistance capacitor across the battery pads. */
public record Capacitor(
    @JsonPropertyDescription("Catalogue key.") String id,
    @JsonPropertyDescription("Who makes it.") @ByClass String maker,
    @JsonPropertyDescription("What it is called.") String name,
    @JsonPropertyDescription("Price of one selling unit.") Money price,
    @JsonPropertyDescription("How it is sold.") @ByClass Sale sold,
    @JsonPropertyDescription("Mass of one piece.") Mass mass,
    @JsonPropertyDescription("Capacity, µF, 10 to 4700.") double microfarads,
    @JsonPropertyDescription("Highest volts, V, 6 to 100.") double ratedVolts,

    @JsonPropertyDescription("Where the numbers come from.") @ByClass
    String source,

    @JsonIgnore List<Assumed> assumed)
    implements Part {

  public Capacitor {
    Part.check(id, maker, name, price, sold, mass, source);
    assumed = Assumed.listOf(assumed);
    Require.inRange("microfarads", microfarads, 10, 4700);
    Require.inRange("ratedVolts", ratedVolts, 6, 100);
  }

  @Override
  public Kind kind() {
    return Kind.CAPACITOR;
  }

  @Override
  public List<Role> fills() {
    return List.of(Role.CAPACITOR);
  }
}
