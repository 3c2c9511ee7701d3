package pappus.part;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pappus.quantity.Money;
import pappus.quantity.Require;

/** A camera for the pilot's view. */
public record Camera(
    @JsonPropertyDescription("Catalogue key.") String id,
    @JsonPropertyDescription("Who makes it.") @ByClass String maker,
    @JsonPropertyDescription("What it is called.") String name,
    @JsonPropertyDescription("Price of one selling unit.") Money price,
    @JsonPropertyDescription("How it is sold.") @ByClass Sale sold,
    @JsonPropertyDescription("Mass of one piece.") Mass mass,

    @JsonPropertyDescription("Analogue, or the digital family it belongs to.")
    String family,

    @JsonPropertyDescription("Width between its side screws, mm, 8 to 40.")
    double widthMillimetres,

    @JsonPropertyDescription("Height between plates it needs when tilted, mm.") @ByClass
    double leastInnerHeightMillimetres,

    @JsonPropertyDescription("Length of its cable, mm; 0: plain wires, any length.") @ByClass
    double cableMillimetres,

    @JsonPropertyDescription("What it draws, W.") @ByClass double watts,

    @JsonPropertyDescription("Volts it stands; absent: fed by its transmitter.") @Nullable
    VoltWindow input,

    @JsonPropertyDescription("What it sees; absent: not known.") @Nullable
    CameraView view,

    @JsonPropertyDescription("Where the numbers come from.") @ByClass
    String source,

    @JsonIgnore List<Assumed> assumed)
    implements Part, CameraUnit {

  public Camera {
    Part.check(id, maker, name, price, sold, mass, source);
    assumed = Assumed.listOf(assumed);
    Require.name("family", family);
    Require.inRange("widthMillimetres", widthMillimetres, 8, 40);
    Require.inRange("leastInnerHeightMillimetres", leastInnerHeightMillimetres, 8, 50);
    Require.inRange("cableMillimetres", cableMillimetres, 0, 400);
    Require.inRange("watts", watts, 0, 10);
  }

  @Override
  public Kind kind() {
    return Kind.CAMERA;
  }

  @Override
  public List<Role> fills() {
    return List.of(Role.CAMERA);
  }
}
