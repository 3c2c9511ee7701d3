package pappus.shop;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pappus.part.Kind;
import pappus.part.Part;

/** Everything the shop sells, by kind, in the order of ids. */
final class Shop {
  /** Made once: random catalogues ask for all of it again and again. */
  private static final Map<Kind, List<Part>> PARTS = Stream.of(Kind.values())
      .collect(Collectors.toUnmodifiableMap(
          kind -> kind,
          kind -> parts(kind).stream()
              .<Part>map(part -> part)
              .sorted(Comparator.comparing(Part::id))
              .toList()));

  private Shop() {}

  static List<Part> of(Kind kind) {
    return Objects.requireNonNull(PARTS.get(kind));
  }

  private static List<? extends Part> parts(Kind kind) {
    return switch (kind) {
      case FRAME -> Frames.all();
      case MOTOR -> Motors.all();
      case PROPELLER -> Propellers.all();
      case BATTERY -> Batteries.all();
      case BOARD -> Boards.all();
      case TRANSMITTER -> Video.transmitters();
      case CAMERA -> Video.cameras();
      case RECEIVER -> Radio.receivers();
      case ANTENNA -> Radio.antennas();
      case GPS -> Radio.satellite();
      case BUZZER -> SmallParts.buzzers();
      case PAYLOAD_CAMERA -> PayloadCameras.all();
      case CAPACITOR -> SmallParts.capacitors();
      case LEAD -> SmallParts.leads();
      case SCREW -> Screws.all();
      case STRAP -> SmallParts.straps();
      case ADAPTER -> SmallParts.adapters();
      case SUNDRY -> SmallParts.sundries();
    };
  }
}
