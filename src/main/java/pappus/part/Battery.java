package pappus.part;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import pappus.quantity.Money;
import pappus.quantity.Require;

/** A pack as it flies. */
public record Battery(
    @JsonPropertyDescription("Catalogue key.") String id,
    @JsonPropertyDescription("Who makes it.") @ByClass String maker,
    @JsonPropertyDescription("What it is called.") String name,
    @JsonPropertyDescription("Price of one selling unit.") Money price,
    @JsonPropertyDescription("How it is sold.") @ByClass Sale sold,
    @JsonPropertyDescription("Mass of one piece.") Mass mass,
    @JsonPropertyDescription("Kind of cells.") Chemistry chemistry,

    @AlsoSaid("cells: 4S, 4S2P") @JsonPropertyDescription("Cells in series, 1 to 8.")
    int cellsInSeries,

    @JsonPropertyDescription("Cells in parallel, 1 to 6.") @ByClass
    int cellsInParallel,

    @JsonPropertyDescription("Label capacity of the pack, mAh, 50 to 30000.")
    double capacityMilliampHours,

    @JsonPropertyDescription(
        "Charge it gave in a full discharge of about an hour, warm and new, mAh; absent: 95 % of the label.")
    @Nullable
    Double deliveredMilliampHours,

    @JsonPropertyDescription(
        "Of one cell; absent: as usual for its chemistry and size, and half a spread more.")
    @Nullable
    Resistance resistance,

    @AlsoSaid("C rating: 75C, 75C/150C")
    @JsonPropertyDescription("Continuous discharge on the label, in capacities an hour (C).")
    @Nullable
    Double labelRating,

    @JsonPropertyDescription("Continuous current of the pack by the cell maker's sheet, A.")
    @Nullable
    Double continuousAmps,

    @JsonPropertyDescription(
        "Charging current in capacities an hour (C), 0.1 to 10; absent: 1 for LiPo, 0.5 for Li-ion (common practice, no published source).")
    @Nullable
    Double chargeRate,

    @JsonPropertyDescription("Its plug.") Connector connector,

    @JsonPropertyDescription("Gauge of its two leads, AWG, 12 to 30.") @ByClass
    int leadGauge,

    @JsonPropertyDescription("Length of each lead, mm, 0 to 300.") @ByClass
    double leadMillimetres,

    @JsonPropertyDescription("Whether the mass has leads and plug in it.")
    boolean massIncludesLeads,

    @AlsoSaid("size: 75x35x18") @JsonPropertyDescription("Longest side, mm.") @ByClass
    double lengthMillimetres,

    @JsonPropertyDescription("Second side, mm.") @ByClass double widthMillimetres,
    @JsonPropertyDescription("Third side, mm.") @ByClass double heightMillimetres,

    @JsonPropertyDescription("How capacity and resistance are known.") @ByClass
    Known figures,

    @JsonPropertyDescription(
        "One standard deviation of those figures, share of the value, 0 to 0.5; absent: measured 0.02, maker 0.05, estimated 0.10 (engineering estimates).")
    @Nullable
    Double figuresDoubt,

    @JsonPropertyDescription("Where the numbers come from.") @ByClass
    String source,

    @JsonIgnore List<Assumed> assumed)
    implements Part {

  public Battery {
    Part.check(id, maker, name, price, sold, mass, source);
    assumed = Assumed.listOf(assumed);
    Require.present("chemistry", chemistry);
    Require.inRange("cellsInSeries", cellsInSeries, 1, 8);
    Require.inRange("cellsInParallel", cellsInParallel, 1, 6);
    Require.inRange(
        "capacityMilliampHours", capacityMilliampHours, 50, 30_000, "Maybe it was written in Ah.");
    if (deliveredMilliampHours != null) {
      Require.inRange(
          "deliveredMilliampHours",
          deliveredMilliampHours,
          0.4 * capacityMilliampHours,
          1.5 * capacityMilliampHours);
    }
    if (labelRating != null) {
      Require.inRange("labelRating", labelRating, 0.5, 300);
    }
    if (continuousAmps != null) {
      Require.inRange("continuousAmps", continuousAmps, 0.5, 300);
    }
    if (chargeRate != null) {
      Require.inRange("chargeRate", chargeRate, 0.1, 10, "Maybe it was written in amperes.");
    }
    Require.present("connector", connector);
    Require.inRange("leadGauge", leadGauge, 12, 30);
    Require.inRange("leadMillimetres", leadMillimetres, 0, 300);
    Require.inRange("lengthMillimetres", lengthMillimetres, 10, 250);
    Require.inRange("widthMillimetres", widthMillimetres, 5, 100);
    Require.inRange("heightMillimetres", heightMillimetres, 3, 100);
    Require.present("figures", figures);
    if (figuresDoubt != null) {
      Require.inRange("figuresDoubt", figuresDoubt, 0, 0.5, "Maybe it was written in percent.");
    }
    var wattHours = capacityMilliampHours / 1000 * cellsInSeries * chemistry.nominalVolts();
    var wattHoursPerKilogram = wattHours / mass.grams() * 1000;
    if (wattHoursPerKilogram > 350 || wattHoursPerKilogram < 40) {
      throw new IllegalArgumentException(String.format(
          Locale.ROOT,
          "mass.grams must give 40 to 350 Wh/kg, but is %s, which gives %.0f.",
          Require.plain(mass.grams()),
          wattHoursPerKilogram));
    }
  }

  @Override
  public Kind kind() {
    return Kind.BATTERY;
  }

  @Override
  public List<Role> fills() {
    return List.of(Role.BATTERY);
  }

  /** Charging current in capacities an hour. */
  public double chargeRateOrUsual() {
    return chargeRate == null ? chemistry.usualChargeRate() : chargeRate;
  }

  /** Resistance of one cell of the pack at 25 °C. */
  public record Resistance(
      @JsonPropertyDescription("Of one cell of the pack (parallel cells counted as one), mΩ.")
      double milliohmsPerCell,

      @JsonPropertyDescription("How it was read.") Reading reading) {
    /** How a cell's resistance was read. */
    public enum Reading {
      /** Direct current after about ten seconds. */
      @JsonProperty("direct-current")
      DIRECT_CURRENT,
      /** A charger's or a 1 kHz meter's figure. */
      @JsonProperty("charger")
      CHARGER
    }

    public Resistance {
      Require.inRange(
          "milliohmsPerCell", milliohmsPerCell, 0.3, 500, "Maybe it was written in ohms.");
      Require.present("reading", reading);
    }
  }
}
