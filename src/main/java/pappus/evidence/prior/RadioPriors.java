package pappus.evidence.prior;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pappus.part.Gps;
import pappus.part.Receiver;

/** What receivers draw and weigh (common practice, no published source). */
final class RadioPriors {
  private RadioPriors() {}

  static List<String> remarks(Receiver receiver) {
    return Stream.of(
            Bounds.hard(0.25, 0.45).remark("power drawn", receiver.watts(), " W"),
            // From fast plain links to the slowest chirps (open firmware's constants, and a
            // margin).
            Bounds.hard(-124, -88)
                .remark("weakest signal", receiver.sensitivity().dbm(), " dBm"),
            Bounds.hard(0.3, hasThreadedPort(receiver) ? 12 : 4)
                .remark("mass", receiver.mass().grams(), " g"))
        .flatMap(Optional::stream)
        .toList();
  }

  static List<String> remarks(Gps gps) {
    return Stream.of(
            Bounds.hard(0.1, 0.25).remark("power drawn", gps.watts(), " W"),
            Bounds.hard(1, 20).remark("mass", gps.mass().grams(), " g"))
        .flatMap(Optional::stream)
        .toList();
  }

  private static boolean hasThreadedPort(Receiver receiver) {
    var plug = receiver.antenna().connector();
    if (plug == null) {
      return false;
    }
    return switch (plug) {
      case SMA, RP_SMA -> true;
      case U_FL, SMALL_U_FL, MMCX, SOLDERED -> false;
    };
  }
}
