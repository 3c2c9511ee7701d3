package pappus.answers.shape;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import pappus.assessment.Workload;

/** What a day of flying asks of packs and chargers. */
record WorkdayJson(
    @JsonPropertyDescription(
        "Flights that fill it, each with the figure to plan with; as many charges.")
    int flights,

    @JsonPropertyDescription("Packs if none is charged on site.")
    int packs,

    @JsonPropertyDescription("Packs if each is charged as soon as it has landed.")
    int packsInTurn,

    @JsonPropertyDescription("Charging current in capacities an hour (C).")
    double chargeRate,

    @JsonPropertyDescription("Time that one pack takes to charge, min.")
    double chargeMinutes,

    @JsonPropertyDescription("All charges one after the other, h.")
    double chargeHours) {
  static WorkdayJson of(Workload load) {
    return new WorkdayJson(
        load.flights(),
        load.flights(),
        load.packsInTurn(),
        load.chargeRate(),
        load.chargeMinutes(),
        load.chargeHours());
  }
}
