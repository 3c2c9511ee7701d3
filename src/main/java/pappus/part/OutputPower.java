package pappus.part;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import pappus.quantity.Require;

/** A setting of a video transmitter. */
public record OutputPower(
    @JsonPropertyDescription("Power radiated, mW, 0.1 to 5000.")
    double milliwatts,

    @JsonPropertyDescription("Power drawn, W, 0.1 to 40.") @ByClass
    double watts,

    @JsonPropertyDescription(
        "Power measured at the plug of the antenna, mW, 0.1 to 5000; absent: what it is set to.")
    @Nullable
    Double antennaMilliwatts) {
  /** Below this multiple of what it radiates, what it draws is a data error (engineering estimate). */
  private static final double LEAST_DRAWN = 1.8;

  public OutputPower {
    Require.inRange("milliwatts", milliwatts, 0.1, 5000, "Maybe it was written in watts.");
    Require.inRange("watts", watts, 0.1, 40);
    if (antennaMilliwatts != null) {
      Require.inRange(
          "antennaMilliwatts", antennaMilliwatts, 0.1, 5000, "Maybe it was written in watts.");
    }
    if (watts < LEAST_DRAWN * milliwatts / 1000) {
      throw new IllegalArgumentException(String.format(
          Locale.ROOT,
          "watts must be at least 1.8 times what is radiated, but is %s for %s mW.",
          Require.plain(watts),
          Require.plain(milliwatts)));
    }
  }

  /** Power at the plug of the antenna, mW. */
  public double atAntenna() {
    return antennaMilliwatts == null ? milliwatts : antennaMilliwatts;
  }

  /**
   * The settings, checked to be rising.
   *
   * @throws IllegalArgumentException if there are none or one does not radiate more than the one
   *     before
   */
  static List<OutputPower> rising(List<OutputPower> powers) {
    var listed = Require.notEmpty("powers", Require.list("powers", powers));
    for (var i = 1; i < listed.size(); i++) {
      if (listed.get(i).milliwatts() <= listed.get(i - 1).milliwatts()) {
        throw new IllegalArgumentException(String.format(
            Locale.ROOT,
            "powers[%d].milliwatts must be above %s, but is %s.",
            i,
            Require.plain(listed.get(i - 1).milliwatts()),
            Require.plain(listed.get(i).milliwatts())));
      }
    }
    return listed;
  }
}
