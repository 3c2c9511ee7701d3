package pappus.shop;

import java.util.Comparator;
import java.util.List;
import pappus.part.Kind;
import pappus.part.Part;

/** Everything the shop sells, by kind, in the order of ids. */
final class Shop {
  private Shop() {}

  static List<Part> of(Kind kind) {
    return parts(kind).stream()
        .<Part>map(part -> part)
        .sorted(Comparator.comparing(Part::id))
        .toList();
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
