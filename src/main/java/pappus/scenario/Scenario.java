package pappus.scenario;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import pappus.part.Frame;
import pappus.part.Lump;
import pappus.part.OrderedFrames;
import pappus.part.Part;
import pappus.part.Role;
import pappus.quantity.Money;
import pappus.quantity.Require;

/** One question to the catalogue. */
public record Scenario(
    @JsonPropertyDescription(
        "Short name, 1 to 64 small letters, digits and hyphens; results go to a folder of this name; absent: the file's own name, scenario for standard input.")
    @Shortened(Shortened.Way.LEFT_OUT)
    String name,

    @JsonPropertyDescription("What it is about, for people; absent: nothing is said of it.")
    @Nullable
    String note,

    @JsonPropertyDescription(
        "The heaviest the aircraft may be; a plain number is grams to stay below, as rules are mostly worded: 250 is less than 250 g.")
    @Shortened(Shortened.Way.NUMBER)
    MassCap massCap,

    @JsonPropertyDescription("Least thrust-to-weight, 1 to 20.")
    double leastThrustToWeight,

    @JsonPropertyDescription(
        "The most it may cost; a plain number is in the currency of the catalogue; absent: no bound.")
    @Shortened(Shortened.Way.NUMBER)
    @Nullable
    Money budget,

    @JsonPropertyDescription("Where it flies.") Air air,
    @JsonPropertyDescription("How it flies.") Flight flight,

    @JsonPropertyDescription(
        "What builds are ranked by: endurance, range over ground for a cruise or a profile that covers any, or, where a least flight is asked for, the least price, the least all-up mass or the most thrust-to-weight; absent: endurance.")
    @Nullable
    Goal goal,

    @JsonPropertyDescription(
        "Minutes in the air that every build must have by the figure to plan with, 0.1 to 1000; absent: no bound.")
    @Nullable
    Double leastMinutes,

    @JsonPropertyDescription(
        "Kilometres over ground in all that every build must have by the figure to plan with, 0.01 to 1000; absent: no bound.")
    @Nullable
    Double leastKilometres,

    @JsonPropertyDescription(
        "Degrees straight ahead of the pilot's camera, both sides together and seen from above, in which no front propeller disc may stand, 1 to 180; absent: no bound.")
    @Nullable
    Double clearViewDegrees,

    @JsonPropertyDescription(
        "owned: of builds that plan with 95 % of the best or more, those with the fewest pieces to buy come first, then the cheapest; screws and other small hardware count as none. Absent: the goal alone.")
    @Nullable
    Prefer prefer,

    @JsonPropertyDescription("What it carries; absent: nothing.") @Nullable
    Payload payload,

    @JsonPropertyDescription("Which parts may be used; absent: all.") @Nullable
    Choice parts,

    @JsonPropertyDescription(
        "What the fields of whatever fills a role must hold, by role and field; absent: anything.")
    @Nullable
    Where where,

    @JsonPropertyDescription("A quad that is there, to be changed; absent: all is built anew.")
    @Nullable
    Aircraft aircraft,

    @JsonPropertyDescription(
        "A frame of the designer's own that every build is to have, not in any catalogue; absent: none.")
    @Nullable
    Frame draftFrame,

    @JsonPropertyDescription("What the pilot has on the ground; absent: anything goes.") @Nullable
    Pilot pilot,

    @JsonPropertyDescription(
        "Video power wanted, mW; absent: the lowest setting, or the lowest that reaches as far as is asked for.")
    @Nullable
    Double transmitterMilliwatts,

    @JsonPropertyDescription(
        "How far from the pilot picture and control must reach by their likeliest figures, in line of sight, m, 1 to 100000; absent: no bound. Permitted power, band and range are local law.")
    @Nullable
    Double reachMetres,

    @JsonPropertyDescription("Extras the build must have; absent: none.") @Nullable
    List<Wish> wants,

    @JsonPropertyDescription("What to do with unknown facts; absent: keep.") @Nullable
    UnknownFacts unknownFacts,

    @JsonPropertyDescription("Rules set aside; absent: none.") @Nullable
    List<Waiver> waivers,

    @JsonPropertyDescription(
        "Whether uncertain figures count by their likeliest value or worse; absent: expected.")
    @Nullable
    Outlook outlook,

    @JsonPropertyDescription("How many candidates to rank, 1 to 100; absent: 10.") @Nullable
    Integer candidates,

    @JsonPropertyDescription(
        "In how many of frame, motor, propeller and battery each candidate differs at least from every earlier one, 1 or 2; absent: 2.")
    @Nullable
    Integer candidatesDifferIn,

    @JsonPropertyDescription("What is bought beside one build; absent: nothing.") @Nullable
    AlsoBuy alsoBuy,

    @JsonPropertyDescription(
        "A day of flying, for which packs and charges are counted; absent: none is.")
    @Nullable
    Workday workday,

    @JsonPropertyDescription(
        "Parts already wired, in one; a text is the name of one in a catalogue's lumps.json; absent: none.")
    @Shortened(Shortened.Way.NAME)
    @Nullable
    Lump lump) {
  private static final int USUAL_CANDIDATES = 10;
  private static final int USUAL_DIFFERENCES = 2;

  public Scenario {
    Require.text("name", name);
    if (!name.matches("[a-z0-9][a-z0-9-]{0,63}")) {
      Require.refuse(
          "name must be 1 to 64 small letters, digits and hyphens, but is %s.".formatted(name));
    } else if (name.matches("con|prn|aux|nul|(com|lpt)[0-9]")) {
      Require.refuse("name must be that of a folder everywhere, but %s is none on some systems."
          .formatted(name));
    }
    if (note != null) {
      Require.text("note", note);
    }
    Require.present("massCap", massCap);
    Require.inRange("leastThrustToWeight", leastThrustToWeight, 1, 20);
    Require.present("air", air);
    Require.present("flight", flight);
    if (air.windMetresPerSecond() != null && !flight.takesWindOfPlace()) {
      Require.refuse(
          "air.windMetresPerSecond must be left out where the flight has a wind of its own, but is %s with the style %s."
              .formatted(
                  Require.plain(air.windMetresPerSecond()), flight.style().word()));
    }
    requireLeastFlight(goal, leastMinutes, leastKilometres);
    if (clearViewDegrees != null) {
      Require.inRange("clearViewDegrees", clearViewDegrees, 1, 180);
    }
    if (prefer != null && goal != null && !goal.isOfFlight()) {
      Require.refuse("prefer must be left out where the goal is %s, but is %s."
          .formatted(goal.name().toLowerCase(Locale.ROOT), prefer.name().toLowerCase(Locale.ROOT)));
    }
    if (!flight.coversGround()) {
      if (goal == Goal.RANGE) {
        Require.refuse(
            "goal must be endurance where the flight covers no ground, but is range with the style %s."
                .formatted(flight.style().word()));
      }
      if (leastKilometres != null) {
        Require.refuse(
            "leastKilometres must be left out where the flight covers no ground, but is %s with the style %s."
                .formatted(Require.plain(leastKilometres), flight.style().word()));
      }
    }
    if (transmitterMilliwatts != null) {
      Require.inRange(
          "transmitterMilliwatts",
          transmitterMilliwatts,
          0.1,
          5000,
          "Maybe it was written in watts.");
    }
    if (reachMetres != null) {
      Require.inRange(
          "reachMetres", reachMetres, 1, 100_000, "Maybe it was written in kilometres.");
      if (lump != null && lump.roles().containsAll(List.of(Role.TRANSMITTER, Role.RECEIVER))) {
        Require.refuse(
            "reachMetres must be left out where a lump sends and hears, but is %s: nothing is known of its links."
                .formatted(Require.plain(reachMetres)));
      }
    }
    wants = wants == null ? null : Require.list("wants", wants);
    waivers = waivers == null ? null : Require.list("waivers", waivers);
    if (candidates != null) {
      Require.inRange("candidates", candidates, 1, 100);
    }
    if (candidatesDifferIn != null) {
      Require.inRange("candidatesDifferIn", candidatesDifferIn, 1, 2);
    }
  }

  private static void requireLeastFlight(
      @Nullable Goal goal, @Nullable Double minutes, @Nullable Double kilometres) {
    if (minutes != null) {
      Require.inRange("leastMinutes", minutes, 0.1, 1000, "Maybe it was written in seconds.");
      if (goal == Goal.RANGE) {
        Require.refuse(
            "leastMinutes must be left out where the goal is range, but is %s. Maybe leastKilometres is meant."
                .formatted(Require.plain(minutes)));
      }
    }
    if (kilometres != null) {
      Require.inRange("leastKilometres", kilometres, 0.01, 1000, "Maybe it was written in metres.");
      if (goal == null || goal == Goal.ENDURANCE) {
        Require.refuse(
            "leastKilometres must be left out where the goal is endurance, but is %s. Maybe leastMinutes is meant, or another goal."
                .formatted(Require.plain(kilometres)));
      }
      if (minutes != null) {
        Require.refuse("leastKilometres must be left out where leastMinutes is given, but is %s."
            .formatted(Require.plain(kilometres)));
      }
    }
    if (goal != null && !goal.isOfFlight()) {
      if (minutes == null && kilometres == null) {
        Require.refuse(
            "goal must be endurance or range where no least flight is asked for, but is %s. Maybe state leastMinutes or leastKilometres."
                .formatted(goal.name().toLowerCase(Locale.ROOT)));
      }
    }
  }

  /** A scenario that asks for nothing: a hover at sea level, however heavy. */
  public static Scenario anything() {
    return new Scenario(
        "anything",
        "Any flight.",
        new MassCap(MassCap.MOST_GRAMS, false, "none", null),
        1,
        null,
        new Air(0, null, null, null, null),
        Flight.HOVERING,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null);
  }

  /** What builds are ranked by. */
  public Goal goalOrEndurance() {
    return goal == null ? Goal.ENDURANCE : goal;
  }

  /** Which figure of a flight counts, endurance or range, whatever builds are ranked by. */
  public Goal flightGoal() {
    return goal == Goal.RANGE || leastKilometres != null ? Goal.RANGE : Goal.ENDURANCE;
  }

  /** Whether the figure of a flight that counts is its range over ground. */
  public boolean isForRange() {
    return flightGoal() == Goal.RANGE;
  }

  /** Which parts may be used; a draft frame is fixed, in any way to order it that is not fixed itself. */
  public Choice choice() {
    var drafts = drafts().stream().map(Frame::id).toList();
    if (drafts.isEmpty() || partsOrAny().fixedIds().stream().anyMatch(drafts::contains)) {
      return partsOrAny();
    }
    return drafts.size() == 1
        ? partsOrAny().fixing(drafts.get(0))
        : partsOrAny().allowing(Role.FRAME, drafts);
  }

  /** A draft frame in every way that it can be ordered; none without one. */
  public List<Frame> drafts() {
    return draftFrame == null ? List.of() : OrderedFrames.of(draftFrame);
  }

  /** Which parts may be used as it is written, without the draft frame. */
  public Choice partsOrAny() {
    return parts == null ? Choice.ANY : parts;
  }

  /** Wishes by property. */
  public Where whereOrAny() {
    return where == null ? Where.ANY : where;
  }

  /** Whether a build may have a part in a role, by its id and by its properties. */
  public boolean permits(Role role, Part part) {
    return choice().permits(role, part.id()) && whereOrAny().admits(role, part);
  }

  /** What the pilot has. */
  public Pilot pilotOrAny() {
    return pilot == null ? Pilot.ANY : pilot;
  }

  /** Grams carried besides the aircraft. */
  public double payloadGrams() {
    return payload == null ? 0 : payload.massGrams();
  }

  /** Power wanted of the video transmitter, mW; zero asks for the lowest setting. */
  public double milliwattsOrLowest() {
    return transmitterMilliwatts == null ? 0 : transmitterMilliwatts;
  }

  /** Whether the power of video follows from how far it must reach. */
  public boolean choosesPower() {
    return reachMetres != null && transmitterMilliwatts == null;
  }

  /** Whether the build must have an extra. */
  public boolean wants(Role role) {
    return wants != null && wants.stream().anyMatch(wish -> wish.role() == role);
  }

  /** Whether parts with unknown facts are kept. */
  public boolean keepsUnknown() {
    return unknownFacts != UnknownFacts.LEAVE_OUT;
  }

  /** Rules set aside. */
  public List<Waiver> waived() {
    return waivers == null ? List.of() : waivers;
  }

  /** What the ranking trusts. */
  public Outlook outlookOrExpected() {
    return outlook == null ? Outlook.EXPECTED : outlook;
  }

  /** How many candidates to rank. */
  public int count() {
    return candidates == null ? USUAL_CANDIDATES : candidates;
  }

  /** In how many main parts each candidate differs at least from every earlier one, 1 or 2. */
  public int differences() {
    var asked = candidatesDifferIn == null ? USUAL_DIFFERENCES : candidatesDifferIn;
    var possible = aircraft == null
        ? asked
        : (int) aircraft.mayChange().stream().filter(Role.MAIN::contains).count();
    return Math.max(1, Math.min(asked, possible));
  }

  /** Roles that a lump fills, for which no part is taken. */
  public Set<Role> lumped() {
    return lump == null ? Set.of() : lump.roles();
  }

  /** What is bought beside one build. */
  public AlsoBuy alsoBuyOrNothing() {
    return alsoBuy == null ? AlsoBuy.NOTHING : alsoBuy;
  }

  /** What to do with a part of which the catalogue does not say enough. */
  public enum UnknownFacts {
    /** Keep it and say what has to be looked up. */
    @JsonProperty("keep")
    KEEP,
    /** Leave it out. */
    @JsonProperty("leave-out")
    LEAVE_OUT
  }
}
