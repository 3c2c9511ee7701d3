package pappus.part;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import pappus.quantity.Money;
import pappus.quantity.Require;

/** A brushless motor. */
public record Motor(
    @JsonPropertyDescription("Catalogue key.") String id,
    @JsonPropertyDescription("Who makes it.") @ByClass String maker,
    @JsonPropertyDescription("What it is called.") String name,
    @JsonPropertyDescription("Price of one selling unit.") Money price,
    @JsonPropertyDescription("How it is sold.") @ByClass Sale sold,
    @JsonPropertyDescription("Mass of one piece.") Mass mass,

    @AlsoSaid("stator: 1404 is 14 by 4 mm, 1303.5 is 13 by 3.5")
    @JsonPropertyDescription("Stator diameter, mm, 8 to 40.")
    double statorDiameterMillimetres,

    @JsonPropertyDescription("Stator height, mm, 2 to 20.") double statorHeightMillimetres,

    @AlsoSaid("KV: 3800") @JsonPropertyDescription("Kv, rpm/V, 300 to 30000.")
    double speedConstantRpmPerVolt,

    @JsonPropertyDescription("Whether Kv is the label's or was read under load.") @ByClass
    KvReading speedConstantReading,

    @JsonPropertyDescription("Resistance between two leads, mΩ, 10 to 2000.") @ByClass
    double resistanceMilliohms,

    @JsonPropertyDescription("The winding alone, or fitted on a bench with controller and leads.")
    @ByClass
    ResistanceReading resistanceReading,

    @JsonPropertyDescription("No-load current, A, 0.05 to 5.") @ByClass
    double noLoadCurrentAmps,

    @JsonPropertyDescription("Volts at which it was read, V, 1 to 30.") @ByClass
    double noLoadVolts,

    @JsonPropertyDescription("Exponent of its growth with speed, 0 to 1; absent: 0.33.") @Nullable
    Double noLoadGrowth,

    @JsonPropertyDescription("Current it stands without end, A; absent: not known.") @Nullable
    Double continuousAmps,

    @JsonPropertyDescription(
        "Current it stands for some seconds, A; absent: 1.3 × continuous, assumed.")
    @Nullable
    Double burstAmps,

    @AlsoSaid("cells: 2-4S") @JsonPropertyDescription("Cells in series the maker allows.") @ByClass
    CellRange cells,

    @AlsoSaid("bolt pattern: 12x12 is one bolt circle, 16x19 both of one pattern, 9x9/12x12 either")
    @JsonPropertyDescription("Bolt circles, mm, each once: 12 by 12 mm is one; empty: not known.")
    List<Double> boltCirclesMillimetres,

    @JsonPropertyDescription(
        "Of several bolt circles: both (one pattern of two distances, such as 16 by 19 mm) or either (drilled for each by itself, such as 9 by 9 and 12 by 12 mm, all with its thread); absent: no more than one.")
    @Nullable
    CirclesNeeded boltCirclesNeeded,

    @JsonPropertyDescription("Screws that hold it, 2 to 6.") @ByClass
    int screwCount,

    @JsonPropertyDescription("Their thread.") @ByClass ScrewThread screw,

    @JsonPropertyDescription(
        "Deepest a screw may reach into it, mm; absent: as usual for the thread.")
    @Nullable
    Double threadDepthMillimetres,

    @JsonPropertyDescription("What holds the propeller.") Seat propellerSeat,

    @JsonPropertyDescription("Outer diameter of the bell, mm, 8 to 50.") @ByClass
    double bellDiameterMillimetres,

    @JsonPropertyDescription("Height without the shaft, mm, 5 to 50.") @ByClass
    double heightMillimetres,

    @JsonPropertyDescription("Length of the three wires its mass includes, mm; 0: none.") @ByClass
    double leadsIncludedMillimetres,

    @JsonPropertyDescription("Their gauge, AWG, 14 to 34.") @ByClass
    int leadGauge,

    @JsonPropertyDescription("How Kv, resistance and no-load current are known.") @ByClass
    Known figures,

    @JsonPropertyDescription(
        "One standard deviation of the resistance, share of the value, 0 to 0.5; of the no-load current twice that; absent: measured 0.02, maker 0.05, estimated 0.10 (engineering estimates).")
    @Nullable
    Double figuresDoubt,

    @JsonPropertyDescription("Where the numbers come from.") @ByClass
    String source,

    @JsonIgnore List<Assumed> assumed)
    implements Part {

  public Motor {
    Part.check(id, maker, name, price, sold, mass, source);
    assumed = Assumed.listOf(assumed);
    Require.inRange("statorDiameterMillimetres", statorDiameterMillimetres, 8, 40);
    Require.inRange("statorHeightMillimetres", statorHeightMillimetres, 2, 20);
    Require.inRange("speedConstantRpmPerVolt", speedConstantRpmPerVolt, 300, 30_000);
    Require.present("speedConstantReading", speedConstantReading);
    Require.inRange(
        "resistanceMilliohms", resistanceMilliohms, 10, 2000, "Maybe it was written in ohms.");
    Require.present("resistanceReading", resistanceReading);
    Require.inRange("noLoadCurrentAmps", noLoadCurrentAmps, 0.05, 5);
    Require.inRange("noLoadVolts", noLoadVolts, 1, 30);
    if (noLoadGrowth != null) {
      Require.inRange("noLoadGrowth", noLoadGrowth, 0, 1);
    }
    if (continuousAmps != null) {
      Require.inRange("continuousAmps", continuousAmps, 0.5, 120);
    }
    if (burstAmps != null) {
      Require.inRange("burstAmps", burstAmps, 0.5, 150);
    }
    Require.present("cells", cells);
    boltCirclesMillimetres = Require.list("boltCirclesMillimetres", boltCirclesMillimetres);
    checkCircles(boltCirclesMillimetres, boltCirclesNeeded);
    Require.inRange("screwCount", screwCount, 2, 6);
    Require.present("screw", screw);
    if (threadDepthMillimetres != null) {
      Require.inRange("threadDepthMillimetres", threadDepthMillimetres, 0.5, 10);
    }
    Require.present("propellerSeat", propellerSeat);
    Require.inRange("bellDiameterMillimetres", bellDiameterMillimetres, 8, 50);
    Require.inRange("heightMillimetres", heightMillimetres, 5, 50);
    Require.inRange("leadsIncludedMillimetres", leadsIncludedMillimetres, 0, 500);
    Require.inRange("leadGauge", leadGauge, 14, 34);
    Require.present("figures", figures);
    if (figuresDoubt != null) {
      Require.inRange("figuresDoubt", figuresDoubt, 0, 0.5, "Maybe it was written in percent.");
    }
  }

  /** Two numbers alone are read one way by one builder and the other way by the next. */
  private static void checkCircles(List<Double> circles, @Nullable CirclesNeeded needed) {
    var listed = String.join(", ", circles.stream().map(Require::plain).toList());
    if (Set.copyOf(circles).size() < circles.size()) {
      Require.refuse(
          "boltCirclesMillimetres must list each bolt circle once, but is %s. Maybe an even pattern, such as 12 by 12 mm, is one bolt circle."
              .formatted(listed));
    } else if (needed == null && circles.size() > 1) {
      Require.refuse(
          "boltCirclesMillimetres must be no more than one where boltCirclesNeeded is left out, but is %s. Maybe boltCirclesNeeded is both (one pattern of two distances, such as 16 by 19 mm) or either (drilled for each by itself, such as 9 by 9 and 12 by 12 mm)."
              .formatted(listed));
    } else if (needed == CirclesNeeded.BOTH && circles.size() > 2) {
      Require.refuse(
          "boltCirclesMillimetres must be two where boltCirclesNeeded is both, but is %s."
              .formatted(listed));
    } else if (needed != null && circles.size() < 2) {
      Require.refuse(
          "boltCirclesNeeded must be left out unless there are several boltCirclesMillimetres, but is given. Maybe a bolt circle is missing.");
    }
  }

  /** Bolt patterns of which one is enough, each with all of its bolt circles, mm; none if not known. */
  public List<List<Double>> boltPatterns() {
    if (boltCirclesNeeded == CirclesNeeded.EITHER) {
      return boltCirclesMillimetres.stream().map(List::of).toList();
    }
    return boltCirclesMillimetres.isEmpty() ? List.of() : List.of(boltCirclesMillimetres);
  }

  @Override
  public Kind kind() {
    return Kind.MOTOR;
  }

  @Override
  public List<Role> fills() {
    return List.of(Role.MOTOR);
  }

  /** How the speed constant was read. */
  public enum KvReading {
    /** Printed on the motor: 2 to 9 % above what it turns under load. */
    @JsonProperty("label")
    LABEL,
    /** Read on a bench under load. */
    @JsonProperty("loaded")
    LOADED
  }

  /** How many of several bolt circles an arm must be drilled for. */
  public enum CirclesNeeded {
    /** They are the two distances of one pattern. */
    @JsonProperty("both")
    BOTH,
    /** Each is a pattern by itself. */
    @JsonProperty("either")
    EITHER
  }

  /** What the resistance contains. */
  public enum ResistanceReading {
    @JsonProperty("winding")
    WINDING,
    @JsonProperty("fitted")
    FITTED
  }
}
