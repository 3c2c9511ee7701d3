package pappus.answers.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pappus.assessment.Assessment;
import pappus.assessment.Heat;
import pappus.document.Spoken;
import pappus.scenario.Scenario;

/** Where the work can hurt someone. Common practice; local rules and licensed practice come first. */
public final class Cautions {
  private Cautions() {}

  /** Cautions for a build, in the order in which they matter. */
  public static List<String> of(Assessment assessment, Scenario scenario) {
    var cautions = new ArrayList<String>();
    cautions.add(ESTIMATES);
    cautions.add(
        "Bench: propellers off until the last step; check polarity with a meter; first power through a current limiter.");
    pack(assessment).ifPresent(cautions::add);
    heat(assessment, scenario).ifPresent(cautions::add);
    cautions.add(VIDEO);
    cautions.add(flight(scenario));
    return cautions;
  }

  /** Before anybody relies on a number. */
  public static final String ESTIMATES =
      "Estimates: nothing of this build was measured. Weigh it, fly it gently and plan with the lower figure.";

  /** Before a transmitter gets power. */
  private static final String VIDEO =
      "Video: never power a transmitter without its antenna; local rules set its power and channel.";

  /** Before the pack is charged; absent without one. */
  public static Optional<String> pack(Assessment assessment) {
    return assessment
        .build()
        .battery()
        .map(
            pack -> "Pack: choose "
                + pack.chemistry().label()
                + " on the charger, stay with it, charge at 1 C at most unless its maker says more; never charge a puffed, dented or over-drained pack.");
  }

  /** Before it takes off. */
  public static String flight(Scenario scenario) {
    return "Flight: first hover in the open, low, for one minute; check the failsafe with propellers off. A mass below a cap"
        + scenario.massCap().because()
        + " is neither harmless nor exempt from airspace, privacy and registration rules: those are yours to check.";
  }

  /** The same, each in a line: {@code assess} has all of it. */
  public static List<String> inLines(Assessment assessment, Scenario scenario) {
    var cautions = new ArrayList<String>();
    cautions.add("Estimates, nothing measured: weigh it, fly gently, plan with the lower figure.");
    cautions.add("Propellers off until the last step; first power through a current limiter.");
    assessment
        .build()
        .battery()
        .map(pack -> pack.chemistry().label().replaceAll(",.*", ""))
        .ifPresent(cells -> cautions.add(
            "Charge it as %s, attended, at 1 C at most; never a damaged pack.".formatted(cells)));
    heat(assessment, scenario).ifPresent(cautions::add);
    cautions.add("Antenna on before power; local rules set radio power, channel and airspace.");
    return cautions;
  }

  /** For answers that compare builds: {@link #of} has all that goes with one. */
  public static String brief() {
    return "Estimates: nothing here was measured. " + general();
  }

  /** For answers that rest on measurements. */
  public static String general() {
    return "Lithium packs, propellers and radio power can hurt: assess prints the cautions for a build, and local rules come first.";
  }

  /** How warm windings get, and what that rests on. */
  public static Optional<String> windings(Assessment assessment, Scenario scenario) {
    return assessment
        .flight()
        .map(flight -> Heat.of(scenario, assessment))
        .map(heat -> "Windings: " + reached(heat) + " (" + Heat.ASSUMPTION + ").");
  }

  /** Before it is flown for long; absent where windings stay cool. */
  public static Optional<String> heat(Assessment assessment, Scenario scenario) {
    return assessment
        .flight()
        .map(flight -> Heat.of(scenario, assessment))
        .filter(Heat::isHigh)
        .map(
            heat -> "Motors: windings are estimated to reach "
                + reached(heat)
                + ", to a factor of two; above 100 °C keep bursts short and feel the motors after a few minutes (common practice).");
  }

  private static String reached(Heat heat) {
    return celsius(heat.steadyCelsius())
        + " in steady flight and "
        + celsius(heat.burstCelsius())
        + " after "
        + Spoken.number(heat.burstSeconds(), 0)
        + " s of full throttle";
  }

  private static String celsius(double celsius) {
    return Spoken.number(celsius, 0) + " °C" + (Heat.isAtLimit(celsius) ? " or more" : "");
  }
}
