package pappus.part;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What a part does in a build. A role is filled once, whichever part fills it.
 *
 * <p>All that searches, swaps, fit rules and reports know of a role in general stands here: each takes its own view of
 * it, so that a role is forgotten by all of them or by none.
 */
public enum Role {
  @JsonProperty("frame")
  FRAME("frame", Turn.MAIN, Count.ONE),
  @JsonProperty("motor")
  MOTOR("motor", Turn.MAIN, Count.PER_ROTOR),
  @JsonProperty("propeller")
  PROPELLER("propeller", Turn.MAIN, Count.PER_ROTOR),
  @JsonProperty("battery")
  BATTERY("battery", Turn.MAIN, Count.ONE),
  @JsonProperty("board")
  BOARD("flight board", Turn.WIRING, Count.ONE),
  @JsonProperty("transmitter")
  TRANSMITTER("video transmitter", Turn.FED, Count.ONE, BOARD),
  @JsonProperty("camera")
  CAMERA("camera", Turn.FED, Count.ONE, TRANSMITTER),
  @JsonProperty("receiver")
  RECEIVER("receiver", Turn.FED, Count.ONE, BOARD),
  @JsonProperty("video-antenna")
  VIDEO_ANTENNA("video antenna", Turn.PASSIVE, Count.PER_PORT, TRANSMITTER),
  @JsonProperty("radio-antenna")
  RADIO_ANTENNA("radio antenna", Turn.PASSIVE, Count.PER_PORT, RECEIVER),
  @JsonProperty("gps")
  GPS("GPS", Turn.FED, Count.ONE),
  @JsonProperty("buzzer")
  BUZZER("buzzer", Turn.DRIVEN, Count.ONE, BOARD),
  @JsonProperty("payload-camera")
  PAYLOAD_CAMERA("payload camera", Turn.FED, Count.ONE),
  @JsonProperty("capacitor")
  CAPACITOR("capacitor", Turn.PASSIVE, Count.ONE),
  @JsonProperty("lead")
  LEAD("battery lead", Turn.WIRING, Count.ONE, BOARD);

  /** When a search decides a role: what the motors' current passes first, then what draws power. */
  public enum Turn {
    /** Before every accessory: it decides how the aircraft flies. */
    MAIN,
    /** The motors' current passes it. */
    WIRING,
    /** It draws power from a rail or from the pack. */
    FED,
    /** It draws power where the board drives it. */
    DRIVEN,
    /** It draws nothing. */
    PASSIVE
  }

  /** What tells how many pieces fly. */
  public enum Count {
    ONE,
    PER_ROTOR,
    PER_PORT
  }

  /** What makes a build another aircraft rather than the same with other small things; reports name it by them. */
  public static final Set<Role> MAIN = set(at(Turn.MAIN).toList());

  /** Without these nothing flies. */
  public static final Set<Role> FLYING =
      set(Stream.concat(at(Turn.MAIN), Stream.of(BOARD)).toList());

  /** All but the main ones, in the order in which they are decided: what brings others along before those. */
  public static final List<Role> ACCESSORIES = Stream.of(values())
      .filter(role -> role.turn != Turn.MAIN)
      .sorted(Comparator.comparing(Role::turn))
      .toList();

  /** What is plugged in a port. */
  public static final Set<Role> ANTENNAS =
      set(Stream.of(values()).filter(role -> role.count == Count.PER_PORT).toList());

  /** What a build may do without, and has only where it is asked for. */
  public static final Set<Role> EXTRAS = set(List.of(GPS, BUZZER, PAYLOAD_CAMERA));

  private static final Map<Role, Set<Role>> FOLLOWERS = followersByRole();

  private final String label;
  private final Turn turn;
  private final Count count;
  private final @Nullable Role bringer;

  Role(String label, Turn turn, Count count) {
    this(label, turn, count, null);
  }

  Role(String label, Turn turn, Count count, @Nullable Role bringer) {
    this.label = label;
    this.turn = turn;
    this.count = count;
    this.bringer = bringer;
  }

  /** Roles that are decided at a turn, in the order of roles. */
  public static Stream<Role> at(Turn turn) {
    return Stream.of(values()).filter(role -> role.turn == turn);
  }

  private static Set<Role> set(Collection<Role> roles) {
    return Collections.unmodifiableSet(EnumSet.copyOf(roles));
  }

  private static Map<Role, Set<Role>> followersByRole() {
    var followers = new EnumMap<Role, Set<Role>>(Role.class);
    for (var role : values()) {
      for (var above = role.bringer; above != null; above = above.bringer) {
        followers.computeIfAbsent(above, fresh -> EnumSet.noneOf(Role.class)).add(role);
      }
    }
    followers.replaceAll((role, set) -> Collections.unmodifiableSet(set));
    return followers;
  }

  /** The word a person uses. */
  public String label() {
    return label;
  }

  /** When a search decides it. */
  public Turn turn() {
    return turn;
  }

  /** What tells how many pieces fly. */
  public Count count() {
    return count;
  }

  /** Pieces a quad has of it, before a part asks for more (two antenna ports). */
  public int pieces() {
    return count == Count.PER_ROTOR ? 4 : 1;
  }

  /** The role of which a part may bring it along: a receiver on the board, a plug that needs no lead. */
  public Optional<Role> bringer() {
    return Optional.ofNullable(bringer);
  }

  /** Roles that its parts may bring along, directly or by what they bring; in the order of roles. */
  public Set<Role> followers() {
    return FOLLOWERS.getOrDefault(this, Set.of());
  }

  /** Roles of which a part is best chosen anew to go with another part of this one, what hangs on it most first. */
  public List<Role> matched() {
    return switch (this) {
      case FRAME -> List.of(MOTOR, PROPELLER, BATTERY, BOARD);
      case MOTOR -> List.of(PROPELLER, BATTERY);
      case PROPELLER -> List.of(MOTOR);
      case BATTERY -> List.of(LEAD, CAPACITOR, BOARD);
      case BOARD -> List.of(LEAD, RADIO_ANTENNA, VIDEO_ANTENNA);
      case TRANSMITTER -> List.of(CAMERA, VIDEO_ANTENNA);
      case CAMERA -> List.of(TRANSMITTER, VIDEO_ANTENNA);
      case RECEIVER -> List.of(RADIO_ANTENNA);
      case VIDEO_ANTENNA, RADIO_ANTENNA, GPS, BUZZER, PAYLOAD_CAMERA, CAPACITOR, LEAD -> List.of();
    };
  }

  /** Small parts that may change along with another part of it: what that may bring along, and what hangs on it. */
  public Set<Role> alongside() {
    var alongside = EnumSet.noneOf(Role.class);
    alongside.addAll(followers());
    alongside.addAll(matched());
    alongside.removeAll(FLYING);
    return alongside;
  }

  /** The word in files and on the command line. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
