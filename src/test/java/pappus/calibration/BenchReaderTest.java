package pappus.calibration;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.files.Source;

class BenchReaderTest {
  private static final String HEADER =
      "# a remark\nmotor_key,label_kv_rpm_per_v,propeller_key,supply_label_v,esc_pulse_us,thrust_gf,"
          + "voltage_v,current_a,speed_rpm\n";

  @Test
  void namesEveryBadCellByLineAndColumn() {
    var problems = new Problems();
    var text = HEADER + "a,2600,1,11.1,1050,1e2,11,NaN,3421\na,2600,1\n";
    var rows = BenchReader.read(Source.of("b.csv", text.getBytes(UTF_8)), problems);
    assertThat(rows).isEmpty();
    assertThat(problems.sorted())
        .extracting(Problem::toString)
        .containsExactly(
            "b.csv:3: current_a must be a plain number from 0 to 1000, but is \"NaN\".",
            "b.csv:3: thrust_gf must be a plain number from -1000 to 100000, but is \"1e2\".",
            "b.csv:4: must have 9 cells, but has 3.");
  }

  @Test
  void takesFiveInchesAndLightAirWhereNoColumnSaysOtherwise() {
    var row = PublishedBench.rows().get(0);
    assertThat(PublishedBench.rows()).hasSize(704);
    assertThat(row.diameterMillimetres()).isEqualTo(127);
    assertThat(row.airDensityKgPerCubicMetre()).isEqualTo(1.2);
  }

  @Test
  void takesAnEmptySpeedOrTorqueAsNotRead() {
    var problems = new Problems();
    var text = HEADER.replace("speed_rpm", "speed_rpm,torque_mnm,air_density_kg_per_m3,diameter_mm")
        + "a,2600,1,11.1,1050,100,11,2.5,,,1.15,102\na,2600,1,11.1,1050,100,11,2.5,9000,31.5,1.15,102\n";
    var rows = BenchReader.read(Source.of("b.csv", text.getBytes(UTF_8)), problems);
    assertThat(problems.sorted()).isEmpty();
    assertThat(rows).extracting(BenchRow::speedRpm).containsExactly(0.0, 9000.0);
    assertThat(rows).extracting(BenchRow::torqueMillinewtonMetres).containsExactly(0.0, 31.5);
    assertThat(rows).allMatch(row -> row.airDensityKgPerCubicMetre() == 1.15);
    assertThat(rows).allMatch(row -> row.diameterMillimetres() == 102);
  }

  @Test
  void takesTheStatorWhereAColumnTellsIt() {
    var problems = new Problems();
    var text = HEADER.replace("speed_rpm", "speed_rpm,stator_diameter_mm")
        + "a,2600,1,11.1,1050,100,11,2.5,9000,14\na,2600,1,11.1,1050,100,11,2.5,9000,\na,2600,1,11.1,1050,100,11,2.5,9000,0.014\n";
    var rows = BenchReader.read(Source.of("b.csv", text.getBytes(UTF_8)), problems);
    assertThat(rows).extracting(BenchRow::statorMillimetres).containsExactly(14.0, 0.0);
    assertThat(problems.sorted())
        .extracting(Problem::toString)
        .containsExactly(
            "b.csv:5: stator_diameter_mm must be a plain number from 4 to 100, but is \"0.014\".");
  }

  @Test
  void saysOnceThatAColumnIsMissingOrUnknown() {
    var problems = new Problems();
    var text = "motor_key,thrust_g\na,2\n";
    assertThat(BenchReader.read(Source.of("b.csv", text.getBytes(UTF_8)), problems))
        .isEmpty();
    assertThat(problems.sorted())
        .extracting(Problem::toString)
        .hasSize(9)
        .contains("b.csv:1: must have a column thrust_gf, but has none.")
        .anyMatch(line -> line.startsWith("b.csv:1: column \"thrust_g\" is not known."));
  }
}
