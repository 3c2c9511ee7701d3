package pappus.part;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pappus.quantity.Money;
import pappus.quantity.Require;
import pappus.quantity.Units;

/** A propeller; mass is that of one. */
public record Propeller(
    @JsonPropertyDescription("Catalogue key.") String id,
    @JsonPropertyDescription("Who makes it.") @ByClass String maker,
    @JsonPropertyDescription("What it is called.") String name,
    @JsonPropertyDescription("Price of one selling unit.") Money price,
    @JsonPropertyDescription("How it is sold.") @ByClass Sale sold,
    @JsonPropertyDescription("Mass of one piece.") Mass mass,

    @AlsoSaid("size: 4x2.5x2 is diameter, pitch and blades; 75mm-3 diameter and blades")
    @JsonPropertyDescription("Diameter, inch, 1 to 8.")
    double diameterInches,

    @JsonPropertyDescription("Pitch, inch, 0.5 to 10.") double pitchInches,
    @JsonPropertyDescription("Blades, 2 to 8.") int blades,
    @JsonPropertyDescription("Seats it can be held on.") List<Seat> seats,

    @JsonPropertyDescription("Thickness of the hub, mm, 1 to 15.") @ByClass
    double hubThicknessMillimetres,

    @JsonPropertyDescription("Coefficients measured at rest; absent: only the geometry is known.")
    @Nullable
    StaticTest test,

    @JsonPropertyDescription("How the coefficients are known.") @ByClass
    Known figures,

    @JsonPropertyDescription(
        "One standard deviation of those figures, share of the value, 0 to 0.5; absent: measured 0.02, maker 0.05, estimated 0.10 (engineering estimates).")
    @Nullable
    Double figuresDoubt,

    @JsonPropertyDescription("Where the numbers come from.") @ByClass
    String source,

    @JsonIgnore List<Assumed> assumed)
    implements Part {
  /** Speed times diameter of usual propellers at full throttle: an engineering estimate. */
  private static final double FULL_THROTTLE_RPM_INCHES = 110_000;

  public Propeller {
    Part.check(id, maker, name, price, sold, mass, source);
    assumed = Assumed.listOf(assumed);
    Require.inRange("diameterInches", diameterInches, 1, 8, "Maybe it was written in millimetres.");
    Require.inRange("pitchInches", pitchInches, 0.5, 10);
    Require.inRange("blades", blades, 2, 8);
    seats = Require.notEmpty("seats", Require.list("seats", seats));
    Require.inRange("hubThicknessMillimetres", hubThicknessMillimetres, 1, 15);
    Require.present("figures", figures);
    if (figuresDoubt != null) {
      Require.inRange("figuresDoubt", figuresDoubt, 0, 0.5, "Maybe it was written in percent.");
    }
  }

  @Override
  public Kind kind() {
    return Kind.PROPELLER;
  }

  @Override
  public List<Role> fills() {
    return List.of(Role.PROPELLER);
  }

  /** Diameter, mm. */
  public double diameterMillimetres() {
    return Units.inchesToMillimetres(diameterInches);
  }

  /** The row that is all that is known of it. */
  public Optional<Row> onlyRow() {
    return test == null || test.rows().size() > 1
        ? Optional.empty()
        : Optional.of(test.rows().get(0));
  }

  /** Speed of a row of its test, rpm: where none is stated, about where tips of small quads end. */
  public double rpm(Row row) {
    return row.rpm() == null ? FULL_THROTTLE_RPM_INCHES / diameterInches : row.rpm();
  }

  /** A test at rest. */
  public record StaticTest(
      @JsonPropertyDescription("One row per speed, speeds rising.")
      List<Row> rows,

      @JsonPropertyDescription("Density of the air of the test, kg/m³; absent: 1.225.") @Nullable
      Double airDensityKgPerCubicMetre,

      @JsonPropertyDescription("Its temperature, °C; absent: 15.") @Nullable
      Double airTemperatureCelsius) {
    public StaticTest {
      rows = Require.notEmpty("rows", Require.list("rows", rows));
      var slower = 0.0;
      for (var i = 0; rows.size() > 1 && i < rows.size(); i++) {
        var rpm = rows.get(i).rpm();
        if (rpm == null) {
          throw new IllegalArgumentException(
              "rows[" + i + "].rpm must be given where there are several rows, but is left out.");
        }
        if (rpm <= slower) {
          throw new IllegalArgumentException("rows[%s].rpm must be above %s, but is %s."
              .formatted(i, Require.plain(slower), Require.plain(rpm)));
        }
        slower = rpm;
      }
      if (airDensityKgPerCubicMetre != null) {
        Require.inRange("airDensityKgPerCubicMetre", airDensityKgPerCubicMetre, 0.5, 1.5);
      }
      if (airTemperatureCelsius != null) {
        Require.inRange("airTemperatureCelsius", airTemperatureCelsius, -40, 60);
      }
    }
  }

  /** Coefficients at one speed, as T/(ρ n² D⁴) and P/(ρ n³ D⁵). */
  public record Row(
      @JsonPropertyDescription(
          "Speed, revolutions a minute, 500 to 80000; absent, where it is the only row: that of full throttle, taken as 110000 over the diameter in inches.")
      @Nullable
      Double rpm,

      @JsonPropertyDescription("T/(ρ n² D⁴), 0.02 to 0.5.") double thrustCoefficient,
      @JsonPropertyDescription("0.005 to 0.6.") double powerCoefficient) {
    public Row {
      if (rpm != null) {
        Require.inRange("rpm", rpm, 500, 80_000);
      }
      Require.inRange("thrustCoefficient", thrustCoefficient, 0.02, 0.5);
      Require.inRange("powerCoefficient", powerCoefficient, 0.005, 0.6);
      var merit =
          StrictMath.pow(thrustCoefficient, 1.5) / (powerCoefficient * Math.sqrt(Math.PI / 2));
      if (merit > 0.75) {
        throw new IllegalArgumentException(String.format(
            Locale.ROOT,
            "powerCoefficient must leave a figure of merit of at most 0.75, but is %s, which gives %.2f.",
            Require.plain(powerCoefficient),
            merit));
      }
    }
  }
}
