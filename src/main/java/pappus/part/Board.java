package pappus.part;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pappus.quantity.Money;
import pappus.quantity.Require;

/** A flight board with its speed controllers: all in one, or a stack of two. */
public record Board(
    @JsonPropertyDescription("Catalogue key.") String id,
    @JsonPropertyDescription("Who makes it.") @ByClass String maker,
    @JsonPropertyDescription("What it is called.") String name,
    @JsonPropertyDescription("Price of one selling unit.") Money price,
    @JsonPropertyDescription("How it is sold.") @ByClass Sale sold,
    @JsonPropertyDescription("Mass of one piece.") Mass mass,

    @JsonPropertyDescription("All in one, or a pair one above the other.")
    Layout layout,

    @AlsoSaid("mounting: 25.5x25.5") @JsonPropertyDescription("Its holes.")
    MountingHoles mount,

    @JsonPropertyDescription("Height of all of it, mm, 2 to 30.") @ByClass
    double heightMillimetres,

    @JsonPropertyDescription(
        "Cells it is sold for; they say the volts where input is left out, 3.0 to 4.2 V a cell; absent: as input says.")
    @Nullable
    CellRange cells,

    @AlsoSaid("cells: 3-6S is 3.0 V times 3 to 4.2 V times 6")
    @JsonPropertyDescription("Volts it stands at the battery pads; by cells where they are stated.")
    @ByClass
    VoltWindow input,

    @JsonPropertyDescription("Continuous current a motor, A.")
    double continuousAmpsPerMotor,

    @JsonPropertyDescription(
        "Current a motor for some seconds, A; absent: 1.3 × continuous, assumed.")
    @Nullable
    Double burstAmpsPerMotor,

    @JsonPropertyDescription(
        "Its own part-load loss k of the speed controllers, 0.05 to 0.8, usual is 0.39; absent: by pwmKilohertz and drive, or as usual.")
    @Nullable
    Double controllerLoss,

    @JsonPropertyDescription(
        "How that loss is known; only measured ones count below half of the usual; absent: by its maker.")
    @Nullable
    Known controllerLossKnown,

    @JsonPropertyDescription(
        "How often the controllers switch, kHz, 8 to 200; counts where no loss is stated; absent: not known, 24 is usual.")
    @Nullable
    Double pwmKilohertz,

    @JsonPropertyDescription(
        "How they drive a motor; counts where no loss is stated; absent: six-step.")
    @Nullable
    Drive drive,

    @JsonPropertyDescription("Rails it makes.") @ByClass List<Regulator> regulators,

    @JsonPropertyDescription("Free full serial ports, 0 to 12.") @ByClass
    int serialPorts,

    @JsonPropertyDescription("Whether it writes flight data over analogue video.")
    boolean overlay,

    @JsonPropertyDescription("What it draws itself, W.") @ByClass
    double watts,

    @JsonPropertyDescription("Battery plug it comes with; absent: bare pads.") @Nullable
    PowerPlug plug,

    @JsonPropertyDescription("Receiver inside; absent: none.") @Nullable
    BuiltInReceiver receiver,

    @JsonPropertyDescription("Video transmitter inside; absent: none.") @Nullable
    BuiltInTransmitter transmitter,

    @JsonPropertyDescription("Whether a buzzer is on it.") @ByClass
    boolean buzzer,

    @JsonPropertyDescription("Where the numbers come from.") @ByClass
    String source,

    @JsonIgnore List<Assumed> assumed)
    implements Part {

  public Board {
    Part.check(id, maker, name, price, sold, mass, source);
    assumed = Assumed.listOf(assumed);
    Require.present("layout", layout);
    Require.present("mount", mount);
    Require.inRange("heightMillimetres", heightMillimetres, 2, 30);
    if (input == null) {
      Require.refuse("input must be there where cells are not, but neither is.");
    }
    Require.inRange("continuousAmpsPerMotor", continuousAmpsPerMotor, 1, 120);
    if (burstAmpsPerMotor != null) {
      Require.inRange("burstAmpsPerMotor", burstAmpsPerMotor, continuousAmpsPerMotor, 200);
    }
    if (controllerLoss != null) {
      Require.inRange("controllerLoss", controllerLoss, 0.05, 0.8);
    }
    if (controllerLossKnown != null && controllerLoss == null) {
      Require.refuse("controllerLossKnown must come with controllerLoss, but that is left out.");
    }
    if (pwmKilohertz != null) {
      Require.inRange("pwmKilohertz", pwmKilohertz, 8, 200, "Maybe it was written in hertz.");
    }
    regulators = Require.list("regulators", regulators);
    Require.inRange("serialPorts", serialPorts, 0, 12);
    Require.inRange("watts", watts, 0.1, 6);
  }

  @Override
  public Kind kind() {
    return Kind.BOARD;
  }

  @Override
  public List<Role> fills() {
    var roles = new ArrayList<Role>();
    roles.add(Role.BOARD);
    if (receiver != null) {
      roles.add(Role.RECEIVER);
      if (receiver.antennaFixed()) {
        roles.add(Role.RADIO_ANTENNA);
      }
    }
    if (transmitter != null) {
      roles.add(Role.TRANSMITTER);
    }
    if (buzzer) {
      roles.add(Role.BUZZER);
    }
    return List.copyOf(roles);
  }

  /** All in one, or flight board and controllers apart. */
  public enum Layout {
    @JsonProperty("all-in-one")
    ALL_IN_ONE,
    @JsonProperty("pair")
    PAIR
  }

  /** How speed controllers drive a motor. */
  public enum Drive {
    @JsonProperty("six-step")
    SIX_STEP,
    @JsonProperty("field-oriented")
    FIELD_ORIENTED
  }

  /** A rail. */
  public record Regulator(
      @JsonPropertyDescription("Its output, V.") double volts,
      @JsonPropertyDescription("What it delivers, A.") double continuousAmps,

      @JsonPropertyDescription("Input below which it does not hold, V; absent: output + 1 V.")
      @Nullable
      Double leastInputVolts) {
    public Regulator {
      Require.inRange("volts", volts, 3, 24);
      Require.inRange("continuousAmps", continuousAmps, 0.1, 10);
      if (leastInputVolts != null) {
        Require.inRange("leastInputVolts", leastInputVolts, 2, 30);
      }
    }

    /** Input it needs, V. A step-down rail needs about 1 V more (common practice, no published source). */
    public double needsVolts() {
      return leastInputVolts == null ? volts + 1 : leastInputVolts;
    }
  }

  /** The battery plug of a board. */
  public record PowerPlug(
      @JsonPropertyDescription("Its kind.") Connector connector,
      @JsonPropertyDescription("Gauge of its wires, AWG.") int gauge,
      @JsonPropertyDescription("Length of each wire, mm.") double millimetres) {
    public PowerPlug {
      Require.present("connector", connector);
      Require.inRange("gauge", gauge, 12, 30);
      Require.inRange("millimetres", millimetres, 0, 200);
    }
  }
}
