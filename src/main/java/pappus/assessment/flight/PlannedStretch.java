package pappus.assessment.flight;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pappus.physics.flight.Leg;
import pappus.scenario.Flight;

/**
 * A stretch of what a scenario asks to be flown, before an aircraft is known.
 *
 * @param where as it is told of
 * @param metres over ground; absent for one in seconds
 * @param seconds how long it lasts in each round; 0 for one in metres, and for one that lasts as long as possible
 * @param airspeedMPerS asked for; absent for the best
 * @param leg its wind
 * @param coversGround false for circling or standing over a spot
 */
public record PlannedStretch(
    String where,
    @Nullable Double metres,
    double seconds,
    @Nullable Double airspeedMPerS,
    Leg leg,
    boolean coversGround) {
  /** Of any length: out and back are equally long over ground. */
  private static final double EACH_WAY_METRES = 1000;

  /** In turn; none for hover, which needs no course. */
  public static List<PlannedStretch> of(Flight flight) {
    return switch (flight.style()) {
      case HOVER -> List.of();
      case LOITER -> List.of(new PlannedStretch("in the loiter", null, 1, null, wind(0, 0), false));
      case CRUISE -> {
        var wind = flight.windOrCalm();
        var airspeed = flight.airspeedMetresPerSecond();
        yield wind == 0
            ? List.of(each("in the cruise", airspeed, 0))
            : List.of(
                each("on the way out", airspeed, wind), each("on the way back", airspeed, -wind));
      }
      case PROFILE -> {
        var stretches = new ArrayList<PlannedStretch>();
        var legs = flight.legsInTurn();
        for (var i = 0; i < legs.size(); i++) {
          stretches.add(of("on leg " + (i + 1), legs.get(i)));
          if (legs.get(i).stays()) {
            flight
                .legsBack()
                .forEach((leg, home) -> stretches.add(of("on leg " + (leg + 1) + ", back", home)));
          }
        }
        yield stretches;
      }
    };
  }

  private static PlannedStretch of(String where, pappus.scenario.Leg leg) {
    return new PlannedStretch(
        where,
        leg.metres(),
        leg.seconds() == null ? 0 : leg.seconds(),
        leg.airspeedMetresPerSecond(),
        wind(leg.headwindOrNone(), leg.crosswindOrNone()),
        leg.coversGround());
  }

  private static PlannedStretch each(String where, @Nullable Double airspeed, double headwind) {
    return new PlannedStretch(where, EACH_WAY_METRES, 0, airspeed, wind(headwind, 0), true);
  }

  private static Leg wind(double headwind, double crosswind) {
    return new Leg(EACH_WAY_METRES, -headwind, crosswind);
  }

  /** Whether its speed over ground is the aircraft's own best one. */
  public boolean choosesSpeed() {
    return coversGround && airspeedMPerS == null;
  }

  /** Over ground in a round, m; 0 over a spot, and where the wind is too strong. */
  double metresOfRound() {
    var over = metres;
    return over != null
        ? over
        : coversGround && airspeedMPerS != null
            ? seconds * Math.max(0, leg.progressMPerS(airspeedMPerS))
            : 0;
  }

  /**
   * The least time that it takes in a round, s.
   *
   * @param fastest speed over ground where none is asked for, m/s
   */
  double leastSeconds(double fastest) {
    var over = metres;
    if (over == null) {
      return seconds;
    }
    var asked = airspeedMPerS == null ? fastest : leg.progressMPerS(airspeedMPerS);
    return asked > 0 ? over / asked : 0;
  }

  /** Airspeed at which an aircraft would stand still over ground, m/s. */
  public double standstillMPerS() {
    var against = coversGround ? Math.max(-leg.tailwindMPerS(), 0) : leg.tailwindMPerS();
    return StrictMath.hypot(against, leg.crosswindMPerS());
  }
}
