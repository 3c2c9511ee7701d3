package pappus.explanation;

import java.util.ArrayList;
import java.util.List;
import pappus.assessment.Assessment;
import pappus.scenario.Scenario;

/** Where the work can hurt someone. Common practice; local rules and licensed practice come first. */
public final class Cautions {
  private Cautions() {}

  /** Cautions for a build, at the places they matter. */
  public static List<String> of(Assessment assessment, Scenario scenario) {
    var cautions = new ArrayList<String>();
    cautions.add(
        "Estimates: nothing of this build was measured. Weigh it, fly it gently, and plan with the lower figure before you promise anything.");
    cautions.add(
        "Bench: propellers off until the last step; check polarity with a meter; first power through a current limiter.");
    assessment
        .build()
        .battery()
        .ifPresent(
            pack -> cautions.add(
                "Pack: choose "
                    + pack.chemistry().label()
                    + " on the charger, stay with it, charge at 1 C at most unless its maker says more; never charge a puffed, dented or over-drained pack."));
    cautions.add(
        "Video: never power a transmitter without its antenna; permitted power and channel are local law.");
    cautions.add(
        "Flight: first hover in the open, low, for one minute; check the failsafe with propellers off. A mass below a cap ("
            + Spoken.safe(scenario.massCap().rule())
            + ") is neither harmless nor exempt from airspace, privacy and registration rules: those are yours to check.");
    return cautions;
  }
}
