package pappus.calibration;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import pappus.files.Problems;
import pappus.files.Source;

/** Published rows of one motor with one propeller, printed as makers print their tables. */
final class MakersTableTest {
  private static final MakersTable.Pair PAIR = new MakersTable.Pair("m", 2650, 21, "p", 127);

  private static List<BenchRow> published() {
    return PublishedBench.rows().stream()
        .filter(row -> row.motorKey().equals("a") && row.propellerKey().equals("1"))
        .filter(row -> row.defect().isEmpty())
        .toList();
  }

  private static List<BenchRow> read(String title, Function<BenchRow, String> cells) {
    var text = title
        + published().stream().map(row -> "\n" + cells.apply(row)).collect(Collectors.joining());
    var problems = new Problems();
    var rows = MakersTable.read(Source.of("table.csv", text.getBytes(UTF_8)), PAIR, problems);
    assertThat(problems.sorted()).isEmpty();
    return rows;
  }

  private static String cells(String form, Object... values) {
    return String.format(Locale.ROOT, form, values);
  }

  @Test
  void readsWhatIsPrinted() {
    var rows = read(
        "Throttle (%),Thrust (g),Voltage (V),Current (A),Power (W),RPM,Efficiency (g/W)",
        row -> cells(
            "%.0f%%,%.1f,%.2f,%.2f,%.1f,%.0f,3",
            (row.pulseMicroseconds() - 1000) / 10,
            row.thrustGrams(),
            row.volts(),
            row.currentA(),
            row.busPowerW(),
            row.speedRpm()));

    assertThat(rows).hasSameSizeAs(published());
    assertThat(rows.get(5).volts()).isCloseTo(published().get(5).volts(), offset());
    assertThat(rows.get(5).speedRpm()).isEqualTo(Math.rint(published().get(5).speedRpm()));
    assertThat(rows.get(0).labelKvRpmPerVolt()).isEqualTo(2650);
  }

  /** Amperes and watts give the volts; thrust in kilograms, no throttle. */
  @Test
  void twoOfCurrentVoltageAndPowerAreEnough() {
    var rows = read(
        "Pull [kg];Amps;Watts",
        row -> cells("%.5f;%.3f;%.3f", row.thrustGrams() / 1000, row.currentA(), row.busPowerW()));

    for (var i = 0; i < rows.size(); i++) {
      assertThat(rows.get(i).volts() / published().get(i).volts()).isBetween(0.97, 1.03);
      assertThat(rows.get(i).thrustGrams()).isCloseTo(published().get(i).thrustGrams(), offset());
      assertThat(rows.get(i).speedRpm()).isZero();
    }
  }

  /** One table is enough for the pair: its own rows are met, and what it cannot tell is said. */
  @Test
  void oneTableIsEnoughForAPair() {
    var rows = read(
        "thrust,volts,amps,rpm",
        row -> cells(
            "%.1f,%.3f,%.3f,%.0f", row.thrustGrams(), row.volts(), row.currentA(), row.speedRpm()));

    var fit = Calibrator.fit(rows);

    assertThat(fit.errors().rmsPercent()).isLessThan(6);
    var propeller = Objects.requireNonNull(fit.propellers().get("p"));
    var whole = Objects.requireNonNull(
        Calibrator.fit(PublishedBench.rows()).propellers().get("1"));
    assertThat(propeller.thrustCoefficient(10_000) / whole.thrustCoefficient(10_000))
        .isBetween(0.95, 1.05);
    assertThat(propeller.powerCoefficient(10_000) / whole.powerCoefficient(10_000))
        .isBetween(0.85, 1.15);
    assertThat(fit.cautions()).noneMatch(line -> line.startsWith("No row has its speed"));
    assertThat(Calibrator.fit(PublishedBench.rows()).cautions())
        .noneMatch(line -> line.startsWith("Hardly told") || line.startsWith("Not told apart"));
  }

  @Test
  void saysWhatRowsWithoutSpeedCannotTellApart() {
    var fit = Calibrator.fit(read(
        "thrust,volts,amps",
        row -> cells("%.1f,%.3f,%.3f", row.thrustGrams(), row.volts(), row.currentA())));

    assertThat(fit.cautions())
        .anyMatch(line -> line.startsWith("No row has its speed"))
        .anyMatch(
            line -> line.startsWith("Hardly told: the ") || line.startsWith("Not told apart"));
  }

  @Test
  void refusesWhatIsNoTable() {
    assertThat(problems("thrust (g),rpm\n100,9000"))
        .containsExactly(
            "table.csv:1: must have columns of thrust and of two of current, voltage and power, but has \"thrust (g)\", \"rpm\".");
    assertThat(problems("thrust (oz),volts,amps\n3,8,2"))
        .containsExactly("table.csv:1: thrust must be in g or kg, but is in \"oz\".");
    assertThat(problems("thrust,pull,volts,amps\n3,3,8,2"))
        .containsExactly(
            "table.csv:1: must have one column of thrust, but has \"thrust\" and \"pull\".");
    assertThat(problems("thrust,volts,amps\nmuch,8,2")).hasSize(1);
  }

  private static List<String> problems(String text) {
    var problems = new Problems();
    assertThat(MakersTable.read(Source.of("table.csv", text.getBytes(UTF_8)), PAIR, problems))
        .isEmpty();
    return problems.sorted().stream().map(Object::toString).toList();
  }

  private static org.assertj.core.data.Offset<Double> offset() {
    return org.assertj.core.data.Offset.offset(0.06);
  }
}
