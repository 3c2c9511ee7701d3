package pappus.plausibility;

import java.util.List;
import pappus.catalog.Gps;
import pappus.catalog.Receiver;

/** What receivers draw (common practice, no published source). */
final class RadioLaws {
  private RadioLaws() {}

  static List<String> remarks(Receiver receiver) {
    return Bounds.hard(0.25, 0.45).remark("power drawn", receiver.watts(), " W").stream()
        .toList();
  }

  static List<String> remarks(Gps gps) {
    return Bounds.hard(0.1, 0.25).remark("power drawn", gps.watts(), " W").stream()
        .toList();
  }
}
