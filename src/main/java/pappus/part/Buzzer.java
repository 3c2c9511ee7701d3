package pappus.part;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import pappus.quantity.Money;
import pappus.quantity.Require;

/** A buzzer that finds a lost aircraft. */
public record Buzzer(
    @JsonPropertyDescription("Catalogue key.") String id,
    @JsonPropertyDescription("Who makes it.") @ByClass String maker,
    @JsonPropertyDescription("What it is called.") String name,
    @JsonPropertyDescription("Price of one selling unit.") Money price,
    @JsonPropertyDescription("How it is sold.") @ByClass Sale sold,
    @JsonPropertyDescription("Mass of one piece.") Mass mass,

    @JsonPropertyDescription("Whether it has a cell of its own and sounds without the pack.")
    @ByClass
    boolean ownCell,

    @JsonPropertyDescription("What it draws in flight, W.") @ByClass
    double watts,

    @JsonPropertyDescription("Where the numbers come from.") @ByClass
    String source,

    @JsonIgnore List<Assumed> assumed)
    implements Part {

  public Buzzer {
    Part.check(id, maker, name, price, sold, mass, source);
    assumed = Assumed.listOf(assumed);
    Require.inRange("watts", watts, 0, 3);
  }

  @Override
  public Kind kind() {
    return Kind.BUZZER;
  }

  @Override
  public List<Role> fills() {
    return List.of(Role.BUZZER);
  }
}
