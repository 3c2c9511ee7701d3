package pappus.part;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The parts chosen for one aircraft, by role.
 *
 * <p>A role may be empty: because another part fills it (a receiver on the board), because the
 * scenario does not want it, or because the build is only begun. Small hardware (screws, strap,
 * spacers) is not chosen here; it follows from these parts.
 */
public final class Build {
  private final EnumMap<Role, Part> byRole;

  private Build(EnumMap<Role, Part> byRole) {
    this.byRole = byRole;
  }

  /** A build without parts. */
  public static Build empty() {
    return new Build(new EnumMap<>(Role.class));
  }

  /** A build of these parts. */
  public static Build of(Map<Role, ? extends Part> parts) {
    var byRole = new EnumMap<Role, Part>(Role.class);
    byRole.putAll(parts);
    return new Build(byRole);
  }

  /** This build with another part in a role. */
  public Build with(Role role, Part part) {
    var changed = byRole.clone();
    changed.put(role, part);
    return new Build(changed);
  }

  /** This build with a role left empty. */
  public Build without(Role role) {
    var changed = byRole.clone();
    changed.remove(role);
    return new Build(changed);
  }

  /** The part chosen for a role, if one is. */
  public Optional<Part> part(Role role) {
    return Optional.ofNullable(byRole.get(role));
  }

  /** Chosen parts by role, in the order of roles. */
  public Map<Role, Part> parts() {
    return Collections.unmodifiableMap(byRole);
  }

  /** Whether some part of the build fills a role, by itself or along with its own. */
  public boolean fills(Role role) {
    if (byRole.containsKey(role)) {
      return true;
    }
    for (var part : byRole.values()) {
      if (part.fills().contains(role)) {
        return true;
      }
    }
    return false;
  }

  /** Whether it needs no part of its own in a role: another one fills it, or there is no lead where the plugs match. */
  public boolean bringsAlong(Role role) {
    if (role == Role.LEAD) {
      var plug = board().map(Board::plug);
      return plug.isPresent()
          && battery()
              .filter(pack -> pack.connector() == plug.get().connector())
              .isPresent();
    }
    for (var chosen : byRole.entrySet()) {
      if (chosen.getKey() != role && chosen.getValue().fills().contains(role)) {
        return true;
      }
    }
    return false;
  }

  /**
   * This build without what another part brings along: no receiver beside one on the board, no lead where the plugs
   * match.
   */
  public Build tidy() {
    var build = this;
    for (var role : byRole.keySet()) {
      if (build.bringsAlong(role)) {
        build = build.without(role);
      }
    }
    return build;
  }

  /**
   * In how many main parts it differs from another, 0 to 4; one that lacks a part differs in none by it, and a frame that
   * is ordered otherwise is the same frame.
   */
  public int differences(Build other) {
    var count = 0;
    for (var role : Role.MAIN) {
      var mine = byRole.get(role);
      var theirs = other.byRole.get(role);
      if (mine != null && theirs != null && !mine.listedId().equals(theirs.listedId())) {
        count++;
      }
    }
    return count;
  }

  /** Whether it has the main parts of another, ordered as that one's are. */
  public boolean hasMainsOf(Build other) {
    return Role.MAIN.stream()
        .allMatch(role -> part(role).map(Part::id).equals(other.part(role).map(Part::id)));
  }

  public Optional<Frame> frame() {
    return chosen(Role.FRAME, Frame.class);
  }

  public Optional<Motor> motor() {
    return chosen(Role.MOTOR, Motor.class);
  }

  public Optional<Propeller> propeller() {
    return chosen(Role.PROPELLER, Propeller.class);
  }

  public Optional<Battery> battery() {
    return chosen(Role.BATTERY, Battery.class);
  }

  public Optional<Board> board() {
    return chosen(Role.BOARD, Board.class);
  }

  /** The transmitter as a part of its own. */
  public Optional<Transmitter> transmitter() {
    return chosen(Role.TRANSMITTER, Transmitter.class);
  }

  /** What sends video: the transmitter, else the one on the board. */
  public Optional<VideoSender> videoSender() {
    return transmitter().<VideoSender>map(part -> part).or(() -> board().map(Board::transmitter));
  }

  /** The camera as a part of its own. */
  public Optional<Camera> camera() {
    return chosen(Role.CAMERA, Camera.class);
  }

  /** The pilot's camera: the part, else the one sold with the transmitter. */
  public Optional<CameraUnit> cameraUnit() {
    return camera().<CameraUnit>map(part -> part).or(() -> transmitter().map(Transmitter::camera));
  }

  /** The receiver as a part of its own. */
  public Optional<Receiver> receiver() {
    return chosen(Role.RECEIVER, Receiver.class);
  }

  /** What hears the radio: the receiver, else the one on the board. */
  public Optional<RadioReceiver> radioReceiver() {
    return receiver().<RadioReceiver>map(part -> part).or(() -> board().map(Board::receiver));
  }

  public Optional<Antenna> videoAntenna() {
    return chosen(Role.VIDEO_ANTENNA, Antenna.class);
  }

  public Optional<Antenna> radioAntenna() {
    return chosen(Role.RADIO_ANTENNA, Antenna.class);
  }

  public Optional<Gps> gps() {
    return chosen(Role.GPS, Gps.class);
  }

  public Optional<Buzzer> buzzer() {
    return chosen(Role.BUZZER, Buzzer.class);
  }

  public Optional<PayloadCamera> payloadCamera() {
    return chosen(Role.PAYLOAD_CAMERA, PayloadCamera.class);
  }

  public Optional<Capacitor> capacitor() {
    return chosen(Role.CAPACITOR, Capacitor.class);
  }

  public Optional<Lead> lead() {
    return chosen(Role.LEAD, Lead.class);
  }

  /** Pieces of a role's part that fly: four motors, one antenna a port. */
  public int count(Role role) {
    return switch (role.count()) {
      case PER_ROTOR -> frame().map(Frame::rotors).orElse(role.pieces());
      case PER_PORT -> port(role).map(AntennaPort::count).orElse(1);
      case ONE -> 1;
    };
  }

  /** What an antenna of a role is plugged in, if it is there. */
  public Optional<AntennaPort> port(Role role) {
    return switch (role) {
      case VIDEO_ANTENNA -> videoSender().map(VideoSender::antenna);
      case RADIO_ANTENNA -> radioReceiver().map(RadioReceiver::antenna);
      default -> Optional.empty();
    };
  }

  private <P extends Part> Optional<P> chosen(Role role, Class<P> kind) {
    var part = byRole.get(role);
    return kind.isInstance(part) ? Optional.of(kind.cast(part)) : Optional.empty();
  }

  /** Two builds are equal if their parts' ids are; comparing records would cost searches much. */
  @Override
  public boolean equals(@Nullable Object other) {
    if (!(other instanceof Build build) || byRole.size() != build.byRole.size()) {
      return false;
    }
    for (var entry : byRole.entrySet()) {
      var part = build.byRole.get(entry.getKey());
      if (part == null || !part.id().equals(entry.getValue().id())) {
        return false;
      }
    }
    return true;
  }

  @Override
  public int hashCode() {
    var hash = 1;
    for (var part : byRole.values()) {
      hash = 31 * hash + part.id().hashCode();
    }
    return hash;
  }

  /** Ids of the parts in the order of roles, with counts, as the command line takes them. */
  @Override
  public String toString() {
    var ids = new ArrayList<String>();
    byRole.forEach(
        (role, part) -> ids.add(count(role) == 1 ? part.id() : part.id() + "*" + count(role)));
    return String.join(",", ids);
  }
}
