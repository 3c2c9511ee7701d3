package pappus.part;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import pappus.quantity.Money;
import pappus.quantity.Require;

/** A screw; mass is that of one. */
public record Screw(
    @JsonPropertyDescription("Catalogue key.") String id,
    @JsonPropertyDescription("Who makes it.") @ByClass String maker,
    @JsonPropertyDescription("What it is called.") String name,
    @JsonPropertyDescription("Price of one selling unit.") Money price,
    @JsonPropertyDescription("How it is sold.") @ByClass Sale sold,
    @JsonPropertyDescription("Mass of one piece.") Mass mass,
    @JsonPropertyDescription("Its thread.") ScrewThread thread,

    @JsonPropertyDescription("Length under the head, mm, 2 to 50.")
    double lengthMillimetres,

    @JsonPropertyDescription("What it is made of.") Material material,

    @JsonPropertyDescription("Where the numbers come from.") @ByClass
    String source,

    @JsonIgnore List<Assumed> assumed)
    implements Part {

  public Screw {
    Part.check(id, maker, name, price, sold, mass, source);
    assumed = Assumed.listOf(assumed);
    Require.present("thread", thread);
    Require.inRange("lengthMillimetres", lengthMillimetres, 2, 50);
    Require.present("material", material);
  }

  @Override
  public Kind kind() {
    return Kind.SCREW;
  }

  @Override
  public List<Role> fills() {
    return List.of();
  }

  /** What a screw is made of. */
  public enum Material {
    @JsonProperty("steel")
    STEEL,
    @JsonProperty("titanium")
    TITANIUM,
    @JsonProperty("aluminium")
    ALUMINIUM,
    @JsonProperty("nylon")
    NYLON
  }
}
