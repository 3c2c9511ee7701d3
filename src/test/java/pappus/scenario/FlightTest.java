package pappus.scenario;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pappus.files.InputException;
import pappus.files.Source;
import pappus.scenario.reading.ScenarioReader;

/** What a scenario may ask of a flight, as a file says it. */
class FlightTest {
  private static Scenario read(String flight, String more) {
    var text = """
        {
          "name": "light",
          "note": "An example.",
          "massCap": {"grams": 250, "strict": true, "rule": "an example"},
          "leastThrustToWeight": 2,
          "air": {"altitudeMetres": 0},
          "flight": %s%s
        }
        """.formatted(flight, more);
    return ScenarioReader.read(Source.of("s.json", text.getBytes(UTF_8))).scenario();
  }

  private static Flight flight(String flight) {
    return read(flight, "").flight();
  }

  @Test
  void hoversForTimeWithANewFullPackUnlessToldOtherwise() {
    var scenario = read("{\"style\": \"hover\"}", "");

    assertThat(scenario.flight()).isEqualTo(Flight.HOVERING);
    assertThat(scenario.flightGoal()).isEqualTo(Goal.ENDURANCE);
    assertThat(scenario.flight().packAgeOrNew()).isEqualTo(PackAge.NEW);
    assertThat(scenario.flight().burstSecondsOrUsual()).isEqualTo(5);
    assertThat(scenario.flight().coversGround()).isFalse();
  }

  @Test
  void readsACruiseForRange() {
    var scenario = read("""
        {"style": "cruise", "airspeedMetresPerSecond": 12, "windMetresPerSecond": 4,
         "chargedToVoltsPerCell": 4.2, "packAge": "used", "burstSeconds": 8}""", ", \"goal\": \"range\"");

    assertThat(scenario.flightGoal()).isEqualTo(Goal.RANGE);
    assertThat(scenario.flight().airspeedMetresPerSecond()).isEqualTo(12);
    assertThat(scenario.flight().windOrCalm()).isEqualTo(4);
    assertThat(scenario.flight().chargedToVoltsPerCell()).isEqualTo(4.2);
    assertThat(scenario.flight().packAgeOrNew()).isEqualTo(PackAge.USED);
    assertThat(scenario.flight().burstSecondsOrUsual()).isEqualTo(8);
  }

  @Test
  void tellsLegsThatLeadSomewhereFromThoseOverASpot() {
    var legs = flight("""
        {"style": "profile", "legs": [
          {"metres": 200, "headwindMetresPerSecond": -3, "crosswindMetresPerSecond": 1},
          {"seconds": 30}, {"seconds": 30, "airspeedMetresPerSecond": 0},
          {"seconds": 30, "airspeedMetresPerSecond": 9}]}""").legsInTurn();

    assertThat(legs).extracting(Leg::coversGround).containsExactly(true, false, false, true);
    assertThat(legs.get(0).headwindOrNone()).isEqualTo(-3);
    assertThat(legs.get(0).crosswindOrNone()).isEqualTo(1);
    assertThat(legs.get(1).headwindOrNone()).isZero();
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
      {"style": "profile"} | flight.legs must be given where the style is profile, but is left out.
      {"style": "profile", "legs": []} | flight.legs must list at least one, but is empty.
      {"style": "loiter", "legs": [{"seconds": 5}]} | flight.legs must be left out unless the style is profile, but the style is loiter.
      {"style": "hover", "airspeedMetresPerSecond": 5} | flight.airspeedMetresPerSecond must be left out unless the style is cruise, but the style is hover.
      {"style": "loiter", "windMetresPerSecond": 5} | flight.windMetresPerSecond must be left out unless the style is cruise, but the style is loiter.
      {"style": "cruise", "windMetresPerSecond": 50} | flight.windMetresPerSecond must be from 0 to 30, but is 50. Maybe it was written in km/h.
      {"style": "cruise", "airspeedMetresPerSecond": 0} | flight.airspeedMetresPerSecond must be from 1 to 60, but is 0. Maybe it was written in km/h.
      {"style": "hover", "chargedToVoltsPerCell": 16.8} | flight.chargedToVoltsPerCell must be from 3.9 to 4.4, but is 16.8. Maybe it is that of the pack.
      {"style": "hover", "packAge": "old"} | flight.packAge must be new, used or tired, but is the text "old".
      {"style": "hover", "burstSeconds": 0} | flight.burstSeconds must be from 1 to 60, but is 0.
      {"style": "profile", "legs": [{"metres": 5, "seconds": 5}]} | flight.legs[0].seconds must be left out where metres are given, but both are given.
      {"style": "profile", "legs": [{"airspeedMetresPerSecond": 5}]} | flight.legs[0].metres must be given, or else seconds, but neither is given.
      {"style": "profile", "legs": [{"metres": 5, "asLongAsPossible": true}]} | flight.legs[0].metres must be left out where a leg lasts as long as possible, but is 5.
      {"style": "profile", "legs": [{"seconds": 5, "asLongAsPossible": true}]} | flight.legs[0].seconds must be left out where a leg lasts as long as possible, but is 5.
      {"style": "profile", "legs": [{"seconds": 5, "back": true}]} | flight.legs[0].back must be left out unless asLongAsPossible is true. Maybe it belongs to another leg.
      {"style": "profile", "legs": [{"asLongAsPossible": true}, {"asLongAsPossible": true}]} | flight.legs[1].asLongAsPossible must be true of one leg at most, but is of an earlier one too.
      {"style": "profile", "legs": [{"seconds": 5}, {"asLongAsPossible": true, "back": true}]} | flight.legs[1].back must be left out where no leg before it leads anywhere.
      {"style": "profile", "legs": [{"seconds": 5, "airspeedMetresPerSecond": 8}, {"asLongAsPossible": true, "back": true}]} | flight.legs[0].seconds must be metres in a leg that is flown back, since the way home is as long over ground.
      {"style": "profile", "legs": [{"metres": 0}]} | flight.legs[0].metres must be from 1 to 100000, but is 0.
      {"style": "profile", "legs": [{"seconds": 0}]} | flight.legs[0].seconds must be from 1 to 36000, but is 0.
      {"style": "profile", "legs": [{"metres": 5, "airspeedMetresPerSecond": 0}]} | flight.legs[0].airspeedMetresPerSecond must be above 0 in a leg of metres, but is 0. Maybe the leg is one of seconds.
      {"style": "profile", "legs": [{"metres": 5, "airspeedMetresPerSecond": 90}]} | flight.legs[0].airspeedMetresPerSecond must be from 0 to 60, but is 90. Maybe it was written in km/h.
      {"style": "profile", "legs": [{"metres": 5, "headwindMetresPerSecond": 40}]} | flight.legs[0].headwindMetresPerSecond must be from -30 to 30, but is 40. Maybe it was written in km/h.
      {"style": "profile", "legs": [{"metres": 5, "crosswindMetresPerSecond": -40}]} | flight.legs[0].crosswindMetresPerSecond must be from -30 to 30, but is -40. Maybe it was written in km/h.
      """)
  void refusesInOneLine(String flight, String message) {
    assertThatExceptionOfType(InputException.class)
        .isThrownBy(() -> flight(flight))
        .withMessage("s.json:7: " + message);
  }

  @Test
  void refusesMoreLegsThanAnybodyFlies() {
    var legs = "{\"seconds\": 5}, ".repeat(20) + "{\"seconds\": 5}";

    assertThatExceptionOfType(InputException.class)
        .isThrownBy(() -> flight("{\"style\": \"profile\", \"legs\": [" + legs + "]}"))
        .withMessage("s.json:7: flight.legs must list at most 20, but lists 21.");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
      {"style": "hover"}  | hover
      {"style": "loiter"} | loiter
      {"style": "profile", "legs": [{"seconds": 5}, {"seconds": 5, "airspeedMetresPerSecond": 0}]} | profile
      """)
  void refusesARangeThatGoesNowhere(String flight, String style) {
    assertThatExceptionOfType(InputException.class)
        .isThrownBy(() -> read(flight, ", \"goal\": \"range\""))
        .withMessage(
            "s.json:7: goal must be endurance where the flight covers no ground, but is range with the style "
                + style
                + ".");
  }
}
