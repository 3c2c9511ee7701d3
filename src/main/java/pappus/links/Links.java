package pappus.links;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pappus.evidence.prior.ClassPriors;
import pappus.evidence.prior.LinkPriors;
import pappus.links.Link.Way;
import pappus.part.Antenna;
import pappus.part.AntennaPort;
import pappus.part.Band;
import pappus.part.Build;
import pappus.part.OutputPower;
import pappus.part.Polarisation;
import pappus.part.RadioReceiver;
import pappus.part.Transmitter;
import pappus.part.VideoSender;
import pappus.physics.link.LinkBudget;
import pappus.physics.link.Mismatch;
import pappus.physics.link.Propagation;
import pappus.quantity.Require;
import pappus.scenario.Pilot;
import pappus.scenario.Scenario;

/**
 * Picture and control of builds for one scenario. Safe for several threads.
 *
 * <p>Why: src/site/markdown/decisions.md#reach-limits-and-never-ranks
 */
public final class Links {
  /** What video senders can be turned down to, mW (common practice, no published source). */
  private static final double LEAST_MILLIWATTS = 25;

  private final Scenario scenario;
  private final Pilot pilot;
  private final Map<Way, Map<Band, Double>> best = new EnumMap<>(Way.class);

  /** What is on the aircraft's side of a link. */
  private record Aerial(double gainDbi, double mismatchDb, List<String> assumed) {}

  /** Where nothing is known of the antennas that a build may get. */
  public Links(Scenario scenario) {
    this(scenario, List.of());
  }

  /**
   * @param antennas that builds may get: no other is on any of them; none: they may be any
   */
  public Links(Scenario scenario, Collection<Antenna> antennas) {
    this.scenario = scenario;
    this.pilot = scenario.pilotOrAny();
    for (var way : Way.values()) {
      var byBand = new EnumMap<Band, Double>(Band.class);
      for (var antenna : antennas) {
        var net = antenna.gainDbi() - mismatch(way, antenna.polarisation()).decibels();
        byBand.merge(antenna.band(), net, Math::max);
      }
      best.put(way, byBand);
    }
  }

  public Scenario scenario() {
    return scenario;
  }

  /** What two antennas lose because of their polarisations; nothing where one of them is not known. */
  public static Mismatch mismatch(@Nullable Polarisation one, @Nullable Polarisation other) {
    if (one == null || other == null || one == other) {
      return Mismatch.NONE;
    }
    return one.opposes(other) ? Mismatch.OPPOSITE_HANDS : Mismatch.LINEAR_TO_CIRCULAR;
  }

  /** The radio's whip is linear. */
  private Mismatch mismatch(Way way, Polarisation aboard) {
    return mismatch(aboard, way == Way.VIDEO ? pilot.polarisation() : Polarisation.LINEAR);
  }

  /**
   * What a video sender is set to. Where a reach is asked for and no power: of the settings that reach so far the one that
   * draws least, the lowest of equals, and the highest there is where none does. In a build without the antenna that it
   * needs, as with the best one that it may get: whichever it gets, it draws no less.
   */
  public OutputPower setting(VideoSender sender, Build build) {
    if (!scenario.choosesPower()) {
      return sender.settingFor(scenario.milliwattsOrLowest());
    }
    var asked = Objects.requireNonNull(scenario.reachMetres());
    var powers = sender.powers();
    return powers.stream()
        .filter(power -> video(sender, power, build).reaches(asked))
        .min(Comparator.comparingDouble(OutputPower::watts))
        .orElseGet(() -> powers.get(powers.size() - 1));
  }

  /** The most that a video sender draws in any build, W. */
  public double mostWatts(VideoSender sender) {
    return scenario.choosesPower()
        ? sender.powers().stream().mapToDouble(OutputPower::watts).max().orElse(0)
        : setting(sender, Build.empty()).watts();
  }

  /** The links of a build, as far as something is known of both their ends. */
  public Reach of(Build build) {
    return new Reach(
        build
            .videoSender()
            .filter(
                sender -> build.videoAntenna().isPresent() || isKnown(Way.VIDEO, comesWith(sender)))
            .map(sender -> video(sender, setting(sender, build), build)),
        build
            .radioReceiver()
            .filter(radio ->
                build.radioAntenna().isPresent() || isKnown(Way.CONTROL, radio.antennaFixed()))
            .map(radio -> control(radio, build)));
  }

  /** Whether a build only begun may still reach as far as is asked for, whatever antennas it gets. */
  public boolean mayReach(Build begun) {
    var asked = scenario.reachMetres();
    return asked == null
        || (begun
                .videoSender()
                .map(sender -> video(sender, setting(sender, begun), begun).reaches(asked))
                .orElse(true)
            && begun
                .radioReceiver()
                .map(radio -> control(radio, begun).reaches(asked))
                .orElse(true));
  }

  /**
   * What sending a picture as far as is asked for usually takes beyond the least power that senders have, W: with an antenna
   * as they usually are, of the ground's own polarisation. Nothing where the power does not follow from a reach.
   */
  public double usualWattsOfReach() {
    if (!scenario.choosesPower()) {
      return 0;
    }
    var family = pilot.video();
    var isAnalogue = family == null || !family.areDigital();
    var polarisation = Objects.requireNonNullElse(pilot.polarisation(), Polarisation.LINEAR);
    var aerial = new Aerial(LinkPriors.gainDbi(Band.GHZ_5_8, polarisation), 0, List.of());
    var asked = Objects.requireNonNull(scenario.reachMetres());
    var margin =
        video(LEAST_MILLIWATTS, Band.GHZ_5_8, isAnalogue, aerial).budget().marginDb(asked);
    var milliwatts = LEAST_MILLIWATTS * StrictMath.pow(10, Math.max(0, -margin) / 10);
    return ClassPriors.usualSenderWatts(isAnalogue, milliwatts)
        - ClassPriors.usualSenderWatts(isAnalogue, LEAST_MILLIWATTS);
  }

  private static boolean comesWith(VideoSender sender) {
    return sender instanceof Transmitter transmitter && transmitter.antennaIncluded();
  }

  /** Whether an antenna is there that is no part of its own. */
  private boolean isKnown(Way way, boolean comesAlong) {
    return comesAlong || scenario.lumped().contains(way.antenna());
  }

  private Link video(VideoSender sender, OutputPower power, Build build) {
    return video(
        power.atAntenna(),
        sender.antenna().band(),
        sender.family().equals(VideoSender.ANALOGUE),
        aerial(Way.VIDEO, sender.antenna(), build.videoAntenna(), comesWith(sender)));
  }

  private Link video(double milliwatts, Band band, boolean isAnalogue, Aerial aerial) {
    var assumed = new ArrayList<>(aerial.assumed);
    var sensitivity = usual(
        pilot.videoSensitivityDbm(),
        isAnalogue ? LinkPriors.ANALOGUE_DBM : LinkPriors.DIGITAL_DBM,
        "dBm at the goggles",
        assumed);
    var gain =
        usual(pilot.antennaGainDbi(), LinkPriors.GROUND_GAIN_DBI, "dBi on the ground", assumed);
    return link(
        Way.VIDEO, milliwatts, band, aerial, gain, sensitivity, LinkBudget.VIDEO_FADE_DB, assumed);
  }

  private Link control(RadioReceiver radio, Build build) {
    var aerial = aerial(Way.CONTROL, radio.antenna(), build.radioAntenna(), radio.antennaFixed());
    var assumed = new ArrayList<>(aerial.assumed);
    var milliwatts =
        usual(pilot.radioMilliwatts(), LinkPriors.RADIO_MILLIWATTS, "mW from the radio", assumed);
    var gain = usual(pilot.radioGainDbi(), LinkPriors.RADIO_GAIN_DBI, "dBi at the radio", assumed);
    return link(
        Way.CONTROL,
        milliwatts,
        radio.antenna().band(),
        aerial,
        gain,
        radio.sensitivity().dbm(),
        LinkBudget.CONTROL_FADE_DB,
        assumed);
  }

  private Link link(
      Way way,
      double milliwatts,
      Band band,
      Aerial aerial,
      double groundGainDbi,
      double sensitivityDbm,
      double fadeDb,
      List<String> assumed) {
    var height = usual(
        pilot.antennaHeightMetres(), LinkPriors.GROUND_HEIGHT_M, "m over the ground", assumed);
    if (scenario.flight().heightMetres() == null) {
      assumed.add("a flight %s m up".formatted(Require.plain(scenario.flight().heightOrUsual())));
    }
    var breakMetres =
        Propagation.breakMetres(height, scenario.flight().heightOrUsual(), band.hertz());
    return new Link(
        way,
        milliwatts,
        band,
        new LinkBudget(
            Propagation.dbm(milliwatts),
            aerial.gainDbi + groundGainDbi,
            sensitivityDbm,
            aerial.mismatchDb,
            fadeDb,
            band.hertz(),
            breakMetres),
        assumed);
  }

  private static double usual(
      @Nullable Double said, double usual, String what, List<String> assumed) {
    if (said != null) {
      return said;
    }
    assumed.add(Require.plain(usual) + " " + what);
    return usual;
  }

  private Aerial aerial(Way way, AntennaPort port, Optional<Antenna> antenna, boolean comesAlong) {
    if (antenna.isPresent()) {
      var part = antenna.get();
      return new Aerial(
          part.gainDbi(),
          mismatch(way, part.polarisation()).decibels(),
          part.assumed("gainDbi").map(one -> one.value() + " aboard").stream().toList());
    }
    if (isKnown(way, comesAlong)) {
      var said = port.polarisation();
      var polarisation =
          said == null ? LinkPriors.polarisation(port.band(), port.connector()) : said;
      var assumed = new ArrayList<String>();
      if (said == null) {
        assumed.add("a " + polarisation.label() + " antenna aboard");
      }
      var gain = usual(
          port.gainDbi(), LinkPriors.gainDbi(port.band(), polarisation), "dBi aboard", assumed);
      return new Aerial(gain, mismatch(way, polarisation).decibels(), assumed);
    }
    var net = Objects.requireNonNull(best.get(way)).get(port.band());
    return new Aerial(net == null ? Antenna.MOST_GAIN_DBI : net, 0, List.of());
  }
}
