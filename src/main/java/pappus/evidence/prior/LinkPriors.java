package pappus.evidence.prior;

import org.jspecify.annotations.Nullable;
import pappus.part.AntennaConnector;
import pappus.part.Band;
import pappus.part.Polarisation;
import pappus.part.Sensitivity;

/**
 * What antennas and receivers of radio links usually are, where nobody says. All of it is known to about 6 dB (engineering
 * estimates from limits of standards and from what open firmware tells of its chips).
 */
public final class LinkPriors {
  /** Noise of 18 MHz, a receiver's own 8 dB, and 10 dB above it: a picture with snow, ± 4 dB, dBm. */
  public static final double ANALOGUE_DBM = -85;

  /** 20 MHz at a middling rate, −74 dBm by the standard, of which chips leave some 8 dB, ± 6 dB, dBm. */
  public static final double DIGITAL_DBM = -82;

  /** A small antenna to all sides on the goggles, 1 to 2 dBi. */
  public static final double GROUND_GAIN_DBI = 1.5;

  /** Held in a hand or worn on the head, m. */
  public static final double GROUND_HEIGHT_M = 1.5;

  /** What small radios send without an amplifier, mW. */
  public static final double RADIO_MILLIWATTS = 100;

  /** A whip, 0 to 2 dBi. */
  public static final double RADIO_GAIN_DBI = 2;

  /** To one side a thin wire hears well, to others not at all, dBi. */
  private static final double WIRE_GAIN_DBI = 0;

  private static final double VIDEO_WHIP_DBI = 1;
  private static final double CIRCULAR_DBI = 1.5;

  private LinkPriors() {}

  /** Gain of an antenna, dBi, ± 1. */
  public static double gainDbi(Band band, Polarisation polarisation) {
    return polarisation != Polarisation.LINEAR
        ? CIRCULAR_DBI
        : band == Band.GHZ_5_8 ? VIDEO_WHIP_DBI : WIRE_GAIN_DBI;
  }

  /** Polarisation of an antenna with a plug: what is screwed or snapped on firmly is mostly circular, of either hand. */
  public static Polarisation polarisation(Band band, @Nullable AntennaConnector plug) {
    if (band != Band.GHZ_5_8 || plug == null) {
      return Polarisation.LINEAR;
    }
    return switch (plug) {
      case MMCX, SMA, RP_SMA -> Polarisation.RIGHT;
      case U_FL, SMALL_U_FL, SOLDERED -> Polarisation.LINEAR;
    };
  }

  /** What a receiver of control still follows, ± 6 dB: slow chirps of long links, at middling rates. */
  public static Sensitivity sensitivity(Band band) {
    return switch (band) {
      case MHZ_900 -> new Sensitivity(-112, 200);
      case GHZ_2_4 -> new Sensitivity(-108, 250);
      case GHZ_5_8 -> new Sensitivity(-98, 250);
    };
  }
}
