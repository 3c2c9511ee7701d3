package pappus.part;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;

/** What a part does in a build. A role is filled once, whichever part fills it. */
public enum Role {
  @JsonProperty("frame")
  FRAME("frame", 1),
  @JsonProperty("motor")
  MOTOR("motor", 4),
  @JsonProperty("propeller")
  PROPELLER("propeller", 4),
  @JsonProperty("battery")
  BATTERY("battery", 1),
  @JsonProperty("board")
  BOARD("flight board", 1),
  @JsonProperty("transmitter")
  TRANSMITTER("video transmitter", 1),
  @JsonProperty("camera")
  CAMERA("camera", 1),
  @JsonProperty("receiver")
  RECEIVER("receiver", 1),
  @JsonProperty("video-antenna")
  VIDEO_ANTENNA("video antenna", 1),
  @JsonProperty("radio-antenna")
  RADIO_ANTENNA("radio antenna", 1),
  @JsonProperty("gps")
  GPS("GPS", 1),
  @JsonProperty("buzzer")
  BUZZER("buzzer", 1),
  @JsonProperty("payload-camera")
  PAYLOAD_CAMERA("payload camera", 1),
  @JsonProperty("capacitor")
  CAPACITOR("capacitor", 1),
  @JsonProperty("lead")
  LEAD("battery lead", 1);

  /** What a build may do without, and has only where it is asked for. */
  public static final Set<Role> EXTRAS =
      Collections.unmodifiableSet(EnumSet.of(GPS, BUZZER, PAYLOAD_CAMERA));

  private final String label;
  private final int pieces;

  Role(String label, int pieces) {
    this.label = label;
    this.pieces = pieces;
  }

  /** The word a person uses. */
  public String label() {
    return label;
  }

  /** Pieces a quad has of it, before a part asks for more (two antenna ports). */
  public int pieces() {
    return pieces;
  }

  /** The word in files and on the command line. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
