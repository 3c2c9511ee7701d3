package pappus.answers.offer;

import java.util.ArrayList;
import java.util.List;
import pappus.offer.OfferedBuild;

/** Where what is bought can hurt someone. Common practice; local rules and licensed practice come first. */
final class BuyerCautions {
  private BuyerCautions() {}

  /** For who buys a build and has not built one. */
  static List<String> of(OfferedBuild build) {
    var cautions = new ArrayList<String>();
    cautions.add(
        "Minutes, grams and thrust are estimates until this very aircraft is weighed and flown: plan with what is told here, never with more.");
    cautions.add(
        "Propellers cut: take them off for whatever is done indoors, and keep everybody away once the pack is plugged in.");
    build
        .delivered()
        .build()
        .battery()
        .ifPresent(
            pack -> cautions.add(
                "Charge the pack as "
                    + pack.chemistry().label()
                    + ", at 1 C at most unless its maker says more, and stay with it; a puffed, dented or over-drained pack is never charged again."));
    cautions.add(
        "Where it may fly, who may fly it, registration, insurance, privacy, radio power and channel are for local rules: a mass below a cap"
            + build.scenario().massCap().because()
            + " exempts from none of them by itself.");
    return cautions;
  }
}
