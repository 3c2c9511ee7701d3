package pappus.part;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pappus.quantity.Money;
import pappus.quantity.Require;

/** Between board and battery: a pigtail for bare pads, or an adapter from plug to plug. */
public record Lead(
    @JsonPropertyDescription("Catalogue key.") String id,
    @JsonPropertyDescription("Who makes it.") @ByClass String maker,
    @JsonPropertyDescription("What it is called.") String name,
    @JsonPropertyDescription("Price of one selling unit.") Money price,
    @JsonPropertyDescription("How it is sold.") @ByClass Sale sold,
    @JsonPropertyDescription("Mass of one piece.") Mass mass,

    @JsonPropertyDescription("Plug it takes at the board; absent: soldered to the pads.") @Nullable
    Connector boardSide,

    @JsonPropertyDescription("Plug for the battery.") Connector batterySide,
    @JsonPropertyDescription("Of its wires, AWG, 12 to 30.") int gauge,

    @JsonPropertyDescription("Length of each wire, mm, 0 to 300.") @ByClass
    double millimetres,

    @JsonPropertyDescription(
        "Resistance of wires and plugs both ways, mΩ; absent: from gauge, length and plug.")
    @Nullable
    Double milliohms,

    @JsonPropertyDescription("Where the numbers come from.") @ByClass
    String source,

    @JsonIgnore List<Assumed> assumed)
    implements Part {

  public Lead {
    Part.check(id, maker, name, price, sold, mass, source);
    assumed = Assumed.listOf(assumed);
    Require.present("batterySide", batterySide);
    Require.inRange("gauge", gauge, 12, 30);
    Require.inRange("millimetres", millimetres, 0, 300);
    if (milliohms != null) {
      Require.inRange("milliohms", milliohms, 0.1, 100);
    }
  }

  @Override
  public Kind kind() {
    return Kind.LEAD;
  }

  @Override
  public List<Role> fills() {
    return List.of(Role.LEAD);
  }
}
