package pappus.scenario;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import pappus.quantity.Require;

/** How the aircraft is flown and when it lands. */
public record Flight(
    @JsonPropertyDescription("How it is flown.") Style style,

    @JsonPropertyDescription(
        "Share of the charge kept at landing, 0 to 0.9; absent: LiPo 0.20, Li-ion 0.10.")
    @Nullable
    Double reserve,

    @JsonPropertyDescription(
        "Volts of a cell in steady flight at which to land, 2.5 to 4.1; absent: LiPo 3.5, Li-ion 3.0.")
    @Nullable
    Double landingVoltsPerCell,

    @JsonPropertyDescription(
        "Volts of a cell at full throttle not to be passed, 2 to 4; absent: LiPo 3.0, Li-ion 2.5.")
    @Nullable
    Double floorVoltsPerCell,

    @JsonPropertyDescription(
        "State of charge at which thrust-to-weight is judged, 0.2 to 1; absent: 0.5, mid-flight.")
    @Nullable
    Double thrustAtCharge,

    @JsonPropertyDescription(
        "Share of thrust lost to arms and body under the discs, 0 to 0.3; absent: by the width of the arms.")
    @Nullable
    Double thrustLost,

    @JsonPropertyDescription(
        "For a cruise: speed through the air, m/s, 1 to 60; absent: that of best range, each way its own.")
    @Nullable
    Double airspeedMetresPerSecond,

    @JsonPropertyDescription(
        "For a cruise: wind, m/s, 0 to 30, flown out against and back with; absent: 0.")
    @Nullable
    Double windMetresPerSecond,

    @JsonPropertyDescription(
        "For a profile: 1 to 20 legs, flown in turn over and over until the flight ends; each once where one lasts as long as possible.")
    @Nullable
    List<Leg> legs,

    @JsonPropertyDescription(
        "Volts of a cell to which the pack is charged, 3.9 to 4.4; absent, or above what its chemistry takes: full.")
    @Nullable
    Double chargedToVoltsPerCell,

    @JsonPropertyDescription(
        "How used up the pack is: new; used, about 100 flights or a year; tired, at the end of its useful life; absent: new.")
    @Nullable
    PackAge packAge,

    @JsonPropertyDescription(
        "How long full throttle is held at once, s, 1 to 60, for the motors' heat; absent: 5.")
    @Nullable
    Double burstSeconds,

    @JsonPropertyDescription(
        "Whether pack, plug and leads must stand full throttle, on a full pack and where thrust is judged, so that motor output needs no limit for their sake; absent: no.")
    @Nullable
    Boolean packStandsFullThrottle,

    @JsonPropertyDescription(
        "Height over the ground at which it flies far away, m, 1 to 5000, for how far radio links reach; absent: 30, assumed.")
    @Nullable
    Double heightMetres) {
  /** Standing in calm air, all else usual. */
  public static final Flight HOVERING = new Flight(
      Style.HOVER, null, null, null, null, null, null, null, null, null, null, null, null, null);

  static final double MOST_AIRSPEED = 60;

  private static final int MOST_LEGS = 20;
  private static final double MOST_WIND = 30;

  /** A climb away from trouble takes some five seconds: common practice, no published source. */
  private static final double USUAL_BURST_SECONDS = 5;

  private static final double MID_FLIGHT = 0.5;

  /** Above hedges and houses, and mostly below what rules allow: an assumption. */
  private static final double USUAL_HEIGHT = 30;

  /** Ways of flying. */
  public enum Style {
    /** Standing in calm air. */
    @JsonProperty("hover")
    HOVER,
    /** Circling at the airspeed of best endurance. */
    @JsonProperty("loiter")
    LOITER,
    /** Straight, out against the wind and back with it. */
    @JsonProperty("cruise")
    CRUISE,
    /** Legs in turn, over and over. */
    @JsonProperty("profile")
    PROFILE;

    /** As it stands in files. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  public Flight {
    Require.present("style", style);
    if (reserve != null) {
      Require.inRange("reserve", reserve, 0, 0.9, "Maybe it was written in percent.");
    }
    if (landingVoltsPerCell != null) {
      Require.inRange(
          "landingVoltsPerCell", landingVoltsPerCell, 2.5, 4.1, "Maybe it is that of the pack.");
    }
    if (floorVoltsPerCell != null) {
      Require.inRange(
          "floorVoltsPerCell", floorVoltsPerCell, 2, 4, "Maybe it is that of the pack.");
    }
    if (thrustAtCharge != null) {
      Require.inRange("thrustAtCharge", thrustAtCharge, 0.2, 1);
    }
    if (thrustLost != null) {
      Require.inRange("thrustLost", thrustLost, 0, 0.3);
    }
    if (airspeedMetresPerSecond != null) {
      requireStyle("airspeedMetresPerSecond", Style.CRUISE, style);
      Require.inRange(
          "airspeedMetresPerSecond",
          airspeedMetresPerSecond,
          1,
          MOST_AIRSPEED,
          "Maybe it was written in km/h.");
    }
    if (windMetresPerSecond != null) {
      requireStyle("windMetresPerSecond", Style.CRUISE, style);
      Require.inRange(
          "windMetresPerSecond",
          windMetresPerSecond,
          0,
          MOST_WIND,
          "Maybe it was written in km/h.");
    }
    if (legs != null) {
      legs = Require.notEmpty("legs", Require.list("legs", legs));
      requireStyle("legs", Style.PROFILE, style);
      if (legs.size() > MOST_LEGS) {
        Require.refuse("legs must list at most " + MOST_LEGS + ", but lists " + legs.size() + ".");
      }
      checkStay(legs);
    } else if (style == Style.PROFILE) {
      Require.refuse("legs must be given where the style is profile, but is left out.");
    }
    if (chargedToVoltsPerCell != null) {
      Require.inRange(
          "chargedToVoltsPerCell",
          chargedToVoltsPerCell,
          3.9,
          4.4,
          "Maybe it is that of the pack.");
    }
    if (burstSeconds != null) {
      Require.inRange("burstSeconds", burstSeconds, 1, 60);
    }
    if (heightMetres != null) {
      Require.inRange("heightMetres", heightMetres, 1, 5000);
    }
  }

  private static void checkStay(List<Leg> legs) {
    var stays = 0;
    for (var i = 0; i < legs.size(); i++) {
      if (!legs.get(i).stays()) {
        continue;
      }
      stays++;
      if (stays > 1) {
        Require.refuse(
            "legs[%s].asLongAsPossible must be true of one leg at most, but is of an earlier one too."
                .formatted(i));
      }
      if (legs.get(i).leadsBack()) {
        checkBack(legs, i);
      }
    }
  }

  private static void checkBack(List<Leg> legs, int stay) {
    if (legs.subList(0, stay).stream().noneMatch(Leg::coversGround)) {
      Require.refuse(
          "legs[%s].back must be left out where no leg before it leads anywhere.".formatted(stay));
    }
    for (var i = 0; i < stay; i++) {
      var leg = legs.get(i);
      if (leg.coversGround() && leg.metres() == null) {
        Require.refuse(
            "legs[%s].seconds must be metres in a leg that is flown back, since the way home is as long over ground."
                .formatted(i));
      }
    }
  }

  private static void requireStyle(String name, Style needed, Style style) {
    if (style != needed) {
      Require.refuse("%s must be left out unless the style is %s, but the style is %s."
          .formatted(name, needed.word(), style.word()));
    }
  }

  /** Whether pack, plug and leads must stand full throttle. */
  public boolean asksForFullThrottle() {
    return packStandsFullThrottle != null && packStandsFullThrottle;
  }

  /** Whether the wind of the place is that of the flight: a cruise and legs have their own. */
  public boolean takesWindOfPlace() {
    return style == Style.HOVER || style == Style.LOITER;
  }

  /** Whether what builds are ranked by leads from one place to another: the whole flight, or the stay of a profile. */
  public boolean coversGround() {
    return style == Style.CRUISE
        || (style == Style.PROFILE
            && (stay().isPresent()
                ? legsInTurn().get(stay().getAsInt()).coversGround()
                : legsInTurn().stream().anyMatch(Leg::coversGround)));
  }

  /** Which leg of a profile lasts as long as possible, from 0; empty where all go over and over. */
  public OptionalInt stay() {
    return IntStream.range(0, legsInTurn().size())
        .filter(leg -> legsInTurn().get(leg).stays())
        .findFirst();
  }

  /** The legs before the stay as they are flown home, the last one first, by their place in the list; none without. */
  public SortedMap<Integer, Leg> legsBack() {
    var back = new TreeMap<Integer, Leg>(Comparator.reverseOrder());
    var stay = stay();
    if (stay.isPresent() && legsInTurn().get(stay.getAsInt()).leadsBack()) {
      for (var i = 0; i < stay.getAsInt(); i++) {
        if (legsInTurn().get(i).coversGround()) {
          back.put(i, legsInTurn().get(i).reversed());
        }
      }
    }
    return back;
  }

  /** The legs of a profile. */
  public List<Leg> legsInTurn() {
    return legs == null ? List.of() : legs;
  }

  /** Wind of a cruise, m/s. */
  public double windOrCalm() {
    return windMetresPerSecond == null ? 0 : windMetresPerSecond;
  }

  /** How used up the pack is. */
  public PackAge packAgeOrNew() {
    return packAge == null ? PackAge.NEW : packAge;
  }

  /** How long full throttle is held at once, s. */
  public double burstSecondsOrUsual() {
    return burstSeconds == null ? USUAL_BURST_SECONDS : burstSeconds;
  }

  /** Height over the ground far away, m. */
  public double heightOrUsual() {
    return heightMetres == null ? USUAL_HEIGHT : heightMetres;
  }

  /** State of charge at which thrust-to-weight is judged. */
  public double thrustAtChargeOrMidFlight() {
    return thrustAtCharge == null ? MID_FLIGHT : thrustAtCharge;
  }
}
