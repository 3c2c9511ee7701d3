package pappus.part;

import java.lang.reflect.InvocationTargetException;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import pappus.quantity.Money;

/**
 * Invented parts for tests: a four-inch quad on four cells in which everything fits. A test changes
 * what it is about with {@link #with}.
 */
public final class Parts {
  private static final String MAKER = "example";
  private static final String SOURCE = "invented";

  private Parts() {}

  /** A build of every role but GPS, buzzer, payload camera and lead. */
  public static Build build() {
    return of(
            frame(),
            motor(),
            propeller(),
            battery(),
            board(),
            transmitter(),
            camera(),
            receiver(),
            capacitor())
        .with(Role.VIDEO_ANTENNA, videoAntenna())
        .with(Role.RADIO_ANTENNA, radioAntenna());
  }

  /** The whole build with some parts in the place of others; each goes into its own role. */
  public static Build build(Part... changed) {
    var build = build();
    for (var part : changed) {
      build = build.with(part.fills().get(0), part);
    }
    return build;
  }

  /** A build of these parts alone. */
  public static Build of(Part... parts) {
    var build = Build.empty();
    for (var part : parts) {
      build = build.with(part.fills().get(0), part);
    }
    return build;
  }

  /** The record with one component changed. */
  public static <R extends Record> R with(R record, String component, @Nullable Object value) {
    return with(record, Collections.singletonMap(component, value));
  }

  /** The motor with several bolt circles, mm. */
  public static Motor drilled(Motor motor, Motor.CirclesNeeded needed, Double... circles) {
    return with(
        motor, Map.of("boltCirclesMillimetres", List.of(circles), "boltCirclesNeeded", needed));
  }

  /** The record with components changed that go together only so. */
  private static <R extends Record> R with(R record, Map<String, @Nullable Object> changed) {
    var components = record.getClass().getRecordComponents();
    var values = new @Nullable Object[components.length];
    var found = 0;
    try {
      for (var i = 0; i < components.length; i++) {
        var name = components[i].getName();
        found += changed.containsKey(name) ? 1 : 0;
        values[i] = changed.containsKey(name)
            ? changed.get(name)
            : components[i].getAccessor().invoke(record);
      }
      if (found < changed.size()) {
        throw new IllegalArgumentException(
            record.getClass().getSimpleName() + " has no component of " + changed.keySet());
      }
      var types = Arrays.stream(components).map(part -> part.getType()).toArray(Class<?>[]::new);
      @SuppressWarnings("unchecked")
      var copied = (R) record.getClass().getConstructor(types).newInstance(values);
      return copied;
    } catch (InvocationTargetException refused) {
      throw new IllegalArgumentException(Objects.requireNonNull(refused.getCause()));
    } catch (ReflectiveOperationException unreadable) {
      throw new IllegalStateException(unreadable);
    }
  }

  public static Frame frame() {
    return new Frame(
        "frame",
        MAKER,
        "Frame",
        euros(3000),
        Sale.EACH,
        Mass.of(40, Known.MEASURED),
        130,
        130,
        null,
        2.5,
        new Frame.ArmWidth(8, 6),
        4,
        List.of(circle(12)),
        null,
        List.of(position("middle", 0, holes(StackPattern.P20))),
        List.of(new Frame.PlateHeight(20, 0), new Frame.PlateHeight(25, 1.2)),
        List.of(19.0),
        60,
        null,
        null,
        new Frame.Bay(Frame.Bay.Side.TOP, 40, -50, 50, null, 20),
        0,
        null,
        null,
        null,
        SOURCE,
        List.of(),
        null);
  }

  /** A plain hole circle, mm. */
  public static Span circle(double millimetres) {
    return new Span(millimetres, millimetres);
  }

  /** A position with a plate above it. */
  public static Frame.Position position(
      String name, double xMillimetres, MountingHoles... patterns) {
    return new Frame.Position(name, xMillimetres, List.of(patterns), false);
  }

  /** M2 holes, square to the frame. */
  public static MountingHoles holes(StackPattern pattern) {
    return new MountingHoles(pattern, 2.2, false);
  }

  public static Motor motor() {
    return new Motor(
        "motor",
        MAKER,
        "Motor",
        euros(1500),
        Sale.EACH,
        Mass.of(10, Known.MEASURED),
        14,
        4,
        2750,
        Motor.KvReading.LOADED,
        150,
        Motor.ResistanceReading.WINDING,
        0.6,
        10,
        null,
        12.0,
        null,
        new CellRange(2, 4),
        List.of(12.0),
        null,
        4,
        ScrewThread.M2,
        2.5,
        Seat.SCREWS_1_5,
        19,
        15,
        100,
        26,
        Known.MAKER,
        null,
        SOURCE,
        List.of());
  }

  public static Propeller propeller() {
    return new Propeller(
        "propeller",
        MAKER,
        "Propeller",
        euros(300),
        new Sale(Sale.Unit.SET, 4),
        Mass.of(2.5, Known.MEASURED),
        4,
        2.5,
        2,
        List.of(Seat.SCREWS_1_5),
        6,
        null,
        Known.MAKER,
        null,
        SOURCE,
        List.of());
  }

  public static Battery battery() {
    return new Battery(
        "battery",
        MAKER,
        "Battery",
        euros(2000),
        Sale.EACH,
        Mass.of(100, Known.MEASURED),
        Chemistry.LIPO,
        4,
        1,
        850,
        null,
        null,
        75.0,
        null,
        null,
        Connector.XT30,
        18,
        60,
        true,
        60,
        30,
        28,
        Known.MAKER,
        null,
        SOURCE,
        List.of());
  }

  public static Board board() {
    return new Board(
        "board",
        MAKER,
        "Board",
        euros(6000),
        Sale.EACH,
        Mass.of(9, Known.MEASURED),
        Board.Layout.ALL_IN_ONE,
        new MountingHoles(StackPattern.P20, 3.2, false),
        8,
        null,
        new VoltWindow(6, 26),
        25,
        null,
        null,
        null,
        null,
        null,
        List.of(new Board.Regulator(5, 2, null), new Board.Regulator(9, 2, null)),
        3,
        true,
        0.8,
        new Board.PowerPlug(Connector.XT30, 18, 50),
        null,
        null,
        false,
        SOURCE,
        List.of());
  }

  public static Transmitter transmitter() {
    return new Transmitter(
        "transmitter",
        MAKER,
        "Transmitter",
        euros(2500),
        Sale.EACH,
        Mass.of(5, Known.MEASURED),
        VideoSender.ANALOGUE,
        new MountingHoles(StackPattern.P20, 3.2, false),
        5,
        new VoltWindow(7, 26),
        List.of(new OutputPower(25, 1.5, null), new OutputPower(400, 4, null)),
        new AntennaPort(AntennaConnector.U_FL, Band.GHZ_5_8, 1, null, null),
        SerialNeed.HALF,
        null,
        false,
        SOURCE,
        List.of());
  }

  public static Camera camera() {
    return new Camera(
        "camera",
        MAKER,
        "Camera",
        euros(2000),
        Sale.EACH,
        Mass.of(5, Known.MEASURED),
        VideoSender.ANALOGUE,
        19,
        20,
        0,
        0.8,
        new VoltWindow(4.5, 20),
        null,
        SOURCE,
        List.of());
  }

  public static Receiver receiver() {
    return new Receiver(
        "receiver",
        MAKER,
        "Receiver",
        euros(1500),
        Sale.EACH,
        Mass.of(1, Known.MEASURED),
        "link-a",
        new VoltWindow(4.5, 5.5),
        SerialNeed.FULL,
        new AntennaPort(AntennaConnector.U_FL, Band.GHZ_2_4, 1, null, null),
        false,
        new Sensitivity(-108, 250),
        0.5,
        SOURCE,
        List.of());
  }

  public static Antenna videoAntenna() {
    return new Antenna(
        "video-antenna",
        MAKER,
        "Antenna",
        euros(500),
        Sale.EACH,
        Mass.of(1.5, Known.MEASURED),
        AntennaConnector.U_FL,
        Band.GHZ_5_8,
        Polarisation.RIGHT,
        1.5,
        SOURCE,
        List.of());
  }

  public static Antenna radioAntenna() {
    return new Antenna(
        "radio-antenna",
        MAKER,
        "Antenna",
        euros(400),
        Sale.EACH,
        Mass.of(0.6, Known.MEASURED),
        AntennaConnector.U_FL,
        Band.GHZ_2_4,
        Polarisation.LINEAR,
        0,
        SOURCE,
        List.of());
  }

  public static Gps gps() {
    return new Gps(
        "gps",
        MAKER,
        "GPS",
        euros(1500),
        Sale.EACH,
        Mass.of(4, Known.MEASURED),
        false,
        new VoltWindow(3.3, 5.5),
        0.2,
        SOURCE,
        List.of());
  }

  public static Buzzer buzzer() {
    return new Buzzer(
        "buzzer",
        MAKER,
        "Buzzer",
        euros(500),
        Sale.EACH,
        Mass.of(2, Known.MEASURED),
        false,
        0.1,
        SOURCE,
        List.of());
  }

  /** Fed from 5 V. */
  public static PayloadCamera payloadCamera() {
    return payloadCamera(new VoltWindow(4.5, 5.5), 2);
  }

  /** With a cell of its own. */
  public static PayloadCamera payloadCameraWithCell() {
    return payloadCamera(null, 0);
  }

  private static PayloadCamera payloadCamera(@Nullable VoltWindow input, double watts) {
    return new PayloadCamera(
        "payload-camera",
        MAKER,
        "Payload camera",
        euros(9000),
        Sale.EACH,
        Mass.of(20, Known.MEASURED),
        30,
        40,
        20,
        input,
        watts,
        SOURCE,
        List.of());
  }

  public static Capacitor capacitor() {
    return new Capacitor(
        "capacitor",
        MAKER,
        "Capacitor",
        euros(100),
        Sale.EACH,
        Mass.of(2, Known.MEASURED),
        470,
        35,
        SOURCE,
        List.of());
  }

  /** From one plug to another; without a plug at the board it is a pigtail. */
  public static Lead lead(@Nullable Connector boardSide, Connector batterySide) {
    return new Lead(
        "lead",
        MAKER,
        "Lead",
        euros(300),
        Sale.EACH,
        Mass.of(4, Known.MEASURED),
        boardSide,
        batterySide,
        18,
        80,
        null,
        SOURCE,
        List.of());
  }

  public static Screw screw(
      ScrewThread thread, double millimetres, Screw.Material material, double grams) {
    var id = "%s-%s-%s".formatted(thread.label(), millimetres, material);
    return new Screw(
        id.toLowerCase(Locale.ROOT),
        MAKER,
        "Screw",
        euros(400),
        new Sale(Sale.Unit.BAG, 20),
        Mass.of(grams, Known.MEASURED),
        thread,
        millimetres,
        material,
        SOURCE,
        List.of());
  }

  public static Strap strap(
      String id, double widthMillimetres, double lengthMillimetres, double grams) {
    return new Strap(
        id,
        MAKER,
        "Strap",
        euros(200),
        Sale.EACH,
        Mass.of(grams, Known.MEASURED),
        widthMillimetres,
        lengthMillimetres,
        SOURCE,
        List.of());
  }

  public static Adapter stackPlate(String id, StackPattern stack, StackPattern part, double grams) {
    return adapter(id, Adapter.Purpose.STACK_PLATE, stack, part, null, null, 2, grams);
  }

  public static Adapter steppedGrommets() {
    return adapter("grommets", Adapter.Purpose.STEPPED_GROMMETS, null, null, null, null, 0, 0.3);
  }

  public static Adapter cameraShims(double cageMillimetres, double cameraMillimetres) {
    return adapter(
        "shims",
        Adapter.Purpose.CAMERA_SHIMS,
        null,
        null,
        cageMillimetres,
        cameraMillimetres,
        0,
        1);
  }

  public static Adapter reducingRings() {
    return adapter("rings", Adapter.Purpose.REDUCING_RINGS, null, null, null, null, 0, 0.2);
  }

  private static Adapter adapter(
      String id,
      Adapter.Purpose purpose,
      @Nullable StackPattern stack,
      @Nullable StackPattern part,
      @Nullable Double cageMillimetres,
      @Nullable Double cameraMillimetres,
      double heightMillimetres,
      double grams) {
    return new Adapter(
        id,
        MAKER,
        "Adapter",
        euros(150),
        Sale.EACH,
        Mass.of(grams, Known.MEASURED),
        purpose,
        stack,
        part,
        cageMillimetres,
        cameraMillimetres,
        heightMillimetres,
        SOURCE,
        List.of());
  }

  public static Sundry sundry(Sundry.Purpose purpose, double grams) {
    return new Sundry(
        purpose.name().toLowerCase(Locale.ROOT).replace('_', '-'),
        MAKER,
        "Sundry",
        euros(100),
        Sale.EACH,
        Mass.of(grams, Known.MEASURED),
        purpose,
        null,
        SOURCE,
        List.of());
  }

  /** Screws of the motors and a strap: what a build cannot do without. */
  public static List<Part> hardware() {
    return List.of(
        screw(ScrewThread.M2, 4, Screw.Material.STEEL, 0.15), strap("strap", 15, 200, 4));
  }

  public static Money euros(long cents) {
    return Money.ofCents(cents, "EUR");
  }
}
