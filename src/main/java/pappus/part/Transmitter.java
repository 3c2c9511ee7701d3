package pappus.part;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pappus.quantity.Money;
import pappus.quantity.Require;

/** A video transmitter, alone or sold with its camera. */
public record Transmitter(
    @JsonPropertyDescription("Catalogue key.") String id,
    @JsonPropertyDescription("Who makes it.") @ByClass String maker,
    @JsonPropertyDescription("What it is called.") String name,
    @JsonPropertyDescription("Price of one selling unit.") Money price,
    @JsonPropertyDescription("How it is sold.") @ByClass Sale sold,
    @JsonPropertyDescription("Mass of one piece.") Mass mass,

    @JsonPropertyDescription("Analogue, or the digital family it belongs to.")
    String family,

    @AlsoSaid("mounting: 20x20")
    @JsonPropertyDescription("Its holes; absent: none, it is taped.")
    @Nullable
    MountingHoles mount,

    @JsonPropertyDescription("Height, mm, 1 to 30.") @ByClass
    double heightMillimetres,

    @JsonPropertyDescription("Volts it stands.") VoltWindow input,

    @JsonPropertyDescription("Powers it can be set to, rising.")
    List<OutputPower> powers,

    @JsonPropertyDescription("Its antenna ports.") @ByClass AntennaPort antenna,

    @JsonPropertyDescription("The port its control needs.") @ByClass
    SerialNeed serial,

    @JsonPropertyDescription("Camera it is sold with; absent: none.") @Nullable
    BundledCamera camera,

    @JsonPropertyDescription("Whether its antenna is in the box and in the mass.") @ByClass
    boolean antennaIncluded,

    @JsonPropertyDescription("Where the numbers come from.") @ByClass
    String source,

    @JsonIgnore List<Assumed> assumed)
    implements Part, VideoSender {

  public Transmitter {
    Part.check(id, maker, name, price, sold, mass, source);
    assumed = Assumed.listOf(assumed);
    Require.name("family", family);
    Require.inRange("heightMillimetres", heightMillimetres, 1, 30);
    Require.present("input", input);
    powers = OutputPower.rising(powers);
    Require.present("antenna", antenna);
    Require.present("serial", serial);
  }

  @Override
  public Kind kind() {
    return Kind.TRANSMITTER;
  }

  @Override
  public List<Role> fills() {
    var roles = new ArrayList<Role>();
    roles.add(Role.TRANSMITTER);
    if (camera != null) {
      roles.add(Role.CAMERA);
    }
    if (antennaIncluded) {
      roles.add(Role.VIDEO_ANTENNA);
    }
    return List.copyOf(roles);
  }
}
