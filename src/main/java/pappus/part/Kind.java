package pappus.part;

import java.util.Optional;
import java.util.stream.Stream;

/** Kinds of parts; each has a file of its own, an object with one list. */
public enum Kind {
  FRAME("frame", "frames", Frame.class),
  MOTOR("motor", "motors", Motor.class),
  PROPELLER("propeller", "propellers", Propeller.class),
  BATTERY("battery", "batteries", Battery.class),
  BOARD("board", "boards", Board.class),
  TRANSMITTER("transmitter", "transmitters", Transmitter.class),
  CAMERA("camera", "cameras", Camera.class),
  RECEIVER("receiver", "receivers", Receiver.class),
  ANTENNA("antenna", "antennas", Antenna.class),
  GPS("gps", "gps", Gps.class),
  BUZZER("buzzer", "buzzers", Buzzer.class),
  PAYLOAD_CAMERA("payload-camera", "payload-cameras", PayloadCamera.class),
  CAPACITOR("capacitor", "capacitors", Capacitor.class),
  LEAD("lead", "leads", Lead.class),
  SCREW("screw", "screws", Screw.class),
  STRAP("strap", "straps", Strap.class),
  ADAPTER("adapter", "adapters", Adapter.class),
  SUNDRY("sundry", "sundries", Sundry.class);

  private final String key;
  private final String listName;
  private final Class<? extends Part> record;

  Kind(String key, String listName, Class<? extends Part> record) {
    this.key = key;
    this.listName = listName;
    this.record = record;
  }

  /** The kind of a word on the command line. */
  public static Optional<Kind> ofKey(String key) {
    return Stream.of(values()).filter(kind -> kind.key.equals(key)).findFirst();
  }

  /** The kind whose file in a catalogue folder is called so. */
  public static Optional<Kind> ofFileName(String fileName) {
    return Stream.of(values()).filter(kind -> kind.fileName().equals(fileName)).findFirst();
  }

  /** Whether its parts are small hardware, which comes along with others. */
  public boolean isSmall() {
    return this == SCREW || this == STRAP || this == ADAPTER || this == SUNDRY;
  }

  /** The word on the command line. */
  public String key() {
    return key;
  }

  /** Name of the list in its file. */
  public String listName() {
    return listName;
  }

  /** Name of its file in a catalogue folder. */
  public String fileName() {
    return listName + ".json";
  }

  /** Class of its records. */
  public Class<? extends Part> recordClass() {
    return record;
  }
}
