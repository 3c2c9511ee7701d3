package pappus.part;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pappus.quantity.Money;
import pappus.quantity.Require;

/** A camera that is carried for what it records, above the pilot's own. */
public record PayloadCamera(
    @JsonPropertyDescription("Catalogue key.") String id,
    @JsonPropertyDescription("Who makes it.") @ByClass String maker,
    @JsonPropertyDescription("What it is called.") String name,
    @JsonPropertyDescription("Price of one selling unit.") Money price,
    @JsonPropertyDescription("How it is sold.") @ByClass Sale sold,
    @JsonPropertyDescription("Mass of one piece.") Mass mass,

    @JsonPropertyDescription("Its length along the aircraft, with its mount, mm, 5 to 100.")
    double lengthMillimetres,

    @JsonPropertyDescription("Its width across the aircraft, mm, 5 to 100.")
    double widthMillimetres,

    @JsonPropertyDescription("Its height above the plate, mm, 5 to 100.")
    double heightMillimetres,

    @JsonPropertyDescription("Volts it stands; absent: it has a cell of its own.") @Nullable
    VoltWindow input,

    @JsonPropertyDescription("What it draws while it records, W, 0 to 15; 0 with its own cell.")
    double watts,

    @JsonPropertyDescription("Where the numbers come from.") @ByClass
    String source,

    @JsonIgnore List<Assumed> assumed)
    implements Part {

  public PayloadCamera {
    Part.check(id, maker, name, price, sold, mass, source);
    assumed = Assumed.listOf(assumed);
    Require.inRange("lengthMillimetres", lengthMillimetres, 5, 100);
    Require.inRange("widthMillimetres", widthMillimetres, 5, 100);
    Require.inRange("heightMillimetres", heightMillimetres, 5, 100);
    if (input == null) {
      if (watts != 0) {
        Require.refuse("watts must be 0 with a cell of its own, but is %s. Maybe input is missing."
            .formatted(Require.plain(watts)));
      }
    } else {
      Require.inRange("watts", watts, 0.1, 15);
    }
  }

  @Override
  public Kind kind() {
    return Kind.PAYLOAD_CAMERA;
  }

  @Override
  public List<Role> fills() {
    return List.of(Role.PAYLOAD_CAMERA);
  }
}
