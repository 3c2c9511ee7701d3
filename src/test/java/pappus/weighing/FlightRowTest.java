package pappus.weighing;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.files.Source;

class FlightRowTest {
  private static final String ALL =
      "style,minutes,charged_mah,pack,age,air_c,pack_c,landing_v,sensor_mah\n";

  private final Problems problems = new Problems();

  private List<FlightRow> read(String text) {
    return FlightRow.read(Source.of("f.csv", text.getBytes(UTF_8)), problems);
  }

  @Test
  void readsEveryColumn() {
    assertThat(read(ALL + "Cruise,12.5,800,reed-pack,Used,-5,15,6.9,760\n"))
        .containsExactly(new FlightRow(
            "f.csv",
            2,
            "cruise",
            12.5,
            800,
            Optional.of("reed-pack"),
            Optional.of("used"),
            OptionalDouble.of(-5),
            OptionalDouble.of(15),
            OptionalDouble.of(6.9),
            OptionalDouble.of(760)));
    assertThat(problems.sorted()).isEmpty();
  }

  @Test
  void takesThePackOfTheBuildAndTheScenarioWhereNothingElseIsSaid() {
    var plain = new FlightRow(
        "f.csv",
        2,
        "hover",
        10,
        600,
        Optional.empty(),
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty());
    assertThat(read("style,minutes,charged_mah\nhover,10,600\n")).containsExactly(plain);
    assertThat(read(ALL + "hover,10,600,,,,,,\n")).containsExactly(plain);
    assertThat(problems.sorted()).isEmpty();
  }

  @Test
  void namesEveryWrongCellByItsLine() {
    var rows = read(
        ALL
            + "glide,0,0,,old,-31,-11,0,0\nhover,601,60001,,,51,51,61,60001\n,1,1,,,,,,\nprofile,1,1,,tired,,,,\n");

    assertThat(rows).extracting(FlightRow::line).containsExactly(5);
    assertThat(problems.sorted())
        .extracting(Problem::toString)
        .containsExactly(
            "f.csv:2: age must be new, used, tired, but is \"old\".",
            "f.csv:2: air_c must be a plain number from -30 to 50, but is \"-31\".",
            "f.csv:2: charged_mah must be a plain number from 1 to 60000, but is \"0\".",
            "f.csv:2: landing_v must be a plain number from 1 to 60, but is \"0\".",
            "f.csv:2: minutes must be a plain number from 0.1 to 600, but is \"0\".",
            "f.csv:2: pack_c must be a plain number from -10 to 50, but is \"-11\".",
            "f.csv:2: sensor_mah must be a plain number from 1 to 60000, but is \"0\".",
            "f.csv:2: style must be hover, loiter, cruise, profile, but is \"glide\".",
            "f.csv:3: air_c must be a plain number from -30 to 50, but is \"51\".",
            "f.csv:3: charged_mah must be a plain number from 1 to 60000, but is \"60001\".",
            "f.csv:3: landing_v must be a plain number from 1 to 60, but is \"61\".",
            "f.csv:3: minutes must be a plain number from 0.1 to 600, but is \"601\".",
            "f.csv:3: pack_c must be a plain number from -10 to 50, but is \"51\".",
            "f.csv:3: sensor_mah must be a plain number from 1 to 60000, but is \"60001\".",
            "f.csv:4: style must be plain text of 1 to 60 characters, but is \"\".");
  }

  @Test
  void namesColumnsThatAreMissing() {
    assertThat(read("style,minutes\nhover,10\n")).isEmpty();
    assertThat(problems.sorted())
        .extracting(Problem::toString)
        .containsExactly("f.csv:1: must have a column charged_mah, but has none.");
  }
}
