package pappus.part;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pappus.quantity.Money;
import pappus.quantity.Require;

/**
 * What makes one part fit another it would not fit directly. Mass is that of the set it needs.
 */
public record Adapter(
    @JsonPropertyDescription("Catalogue key.") String id,
    @JsonPropertyDescription("Who makes it.") @ByClass String maker,
    @JsonPropertyDescription("What it is called.") String name,
    @JsonPropertyDescription("Price of one selling unit.") Money price,
    @JsonPropertyDescription("How it is sold.") @ByClass Sale sold,
    @JsonPropertyDescription("Mass of one piece.") Mass mass,
    @JsonPropertyDescription("What it adapts.") Purpose purpose,

    @JsonPropertyDescription("Plate: the pattern of the frame.") @Nullable
    StackPattern stackPattern,

    @JsonPropertyDescription("Plate: the pattern of the part.") @Nullable
    StackPattern partPattern,

    @JsonPropertyDescription("Shims: width of the frame's camera cage, mm.") @Nullable
    Double cageMillimetres,

    @JsonPropertyDescription("Shims: width of the camera, mm.") @Nullable
    Double cameraMillimetres,

    @JsonPropertyDescription("Height it adds to a column, mm, 0 to 10.")
    double heightMillimetres,

    @JsonPropertyDescription("Where the numbers come from.") @ByClass
    String source,

    @JsonIgnore List<Assumed> assumed)
    implements Part {

  public Adapter {
    Part.check(id, maker, name, price, sold, mass, source);
    assumed = Assumed.listOf(assumed);
    Require.present("purpose", purpose);
    Require.inRange("heightMillimetres", heightMillimetres, 0, 10);
    switch (purpose) {
      case STACK_PLATE -> {
        Require.present("stackPattern", stackPattern);
        Require.present("partPattern", partPattern);
      }
      case CAMERA_SHIMS -> {
        var camera = Require.present("cameraMillimetres", cameraMillimetres);
        Require.inRange(
            "cageMillimetres", Require.present("cageMillimetres", cageMillimetres), camera, 60);
      }
      case STEPPED_GROMMETS, REDUCING_RINGS -> {}
    }
  }

  @Override
  public Kind kind() {
    return Kind.ADAPTER;
  }

  @Override
  public List<Role> fills() {
    return List.of();
  }

  /** What an adapter is for. */
  public enum Purpose {
    /** A plate with two hole patterns. */
    @JsonProperty("stack-plate")
    STACK_PLATE,
    /** A printed pair that fills a camera cage. */
    @JsonProperty("camera-shims")
    CAMERA_SHIMS,
    /** Grommets that hold an M2 board in M3 holes. */
    @JsonProperty("stepped-grommets")
    STEPPED_GROMMETS,
    /** Rings that seat a 5 mm bore on a thinner shaft. */
    @JsonProperty("reducing-rings")
    REDUCING_RINGS
  }
}
