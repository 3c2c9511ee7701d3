package pappus.part;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pappus.quantity.Money;
import pappus.quantity.Require;

/** Small things every build takes along. Mass is that of what one build uses. */
public record Sundry(
    @JsonPropertyDescription("Catalogue key.") String id,
    @JsonPropertyDescription("Who makes it.") @ByClass String maker,
    @JsonPropertyDescription("What it is called.") String name,
    @JsonPropertyDescription("Price of one selling unit.") Money price,
    @JsonPropertyDescription("How it is sold.") @ByClass Sale sold,
    @JsonPropertyDescription("Mass of one piece.") Mass mass,
    @JsonPropertyDescription("What it is.") Purpose purpose,

    @JsonPropertyDescription(
        "How many builds one piece does, 1 to 1000, such as a roll of tape; its mass is what one of them takes; one build pays it whole all the same; absent: 1.")
    @Nullable
    Integer serves,

    @JsonPropertyDescription("Where the numbers come from.") @ByClass
    String source,

    @JsonIgnore List<Assumed> assumed)
    implements Part {

  public Sundry {
    Part.check(id, maker, name, price, sold, mass, source);
    assumed = Assumed.listOf(assumed);
    Require.present("purpose", purpose);
    if (serves != null) {
      Require.inRange("serves", serves, 1, 1000);
    }
  }

  @Override
  public Kind kind() {
    return Kind.SUNDRY;
  }

  @Override
  public List<Role> fills() {
    return List.of();
  }

  /** Small things by purpose. */
  public enum Purpose {
    /** Between battery and plate. */
    @JsonProperty("battery-pad")
    BATTERY_PAD,
    /** Screws, spacers and grommets of one board in its column. */
    @JsonProperty("stack-hardware")
    STACK_HARDWARE,
    /** Two M2 screws a motor for propellers on two screws. */
    @JsonProperty("propeller-screws")
    PROPELLER_SCREWS,
    /** One M5 nut a motor. */
    @JsonProperty("propeller-nuts")
    PROPELLER_NUTS,
    /** Solder, heat-shrink, ties and signal wire. */
    @JsonProperty("solder-and-ties")
    SOLDER_AND_TIES
  }
}
