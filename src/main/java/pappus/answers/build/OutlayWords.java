package pappus.answers.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import pappus.assessment.Assessment;
import pappus.assessment.CostTable;
import pappus.assessment.Workload;
import pappus.document.Spoken;
import pappus.part.Role;
import pappus.part.Sale;
import pappus.scenario.AlsoBuy;
import pappus.scenario.Scenario;

/** What is bought beside a build, and what a day of flying asks of packs and chargers. */
public final class OutlayWords {
  private OutlayWords() {}

  /**
   * Both in a sentence each, where the scenario asks for them.
   *
   * @param planWith share of the estimate to plan with
   */
  public static List<String> of(Assessment assessment, Scenario scenario, double planWith) {
    var lines = new ArrayList<String>();
    outlay(assessment, scenario).ifPresent(lines::add);
    workday(assessment, scenario, planWith).ifPresent(lines::add);
    return lines;
  }

  /** What all of it costs and what it is; empty where nothing is bought beside a build. */
  public static Optional<String> outlay(Assessment assessment, Scenario scenario) {
    return assessment.outlay().map(outlay -> {
      var currency = BuildLines.currency(assessment);
      var more = new ArrayList<String>();
      for (var line : outlay.lines()) {
        if (line.spares() > 0) {
          more.add(spare(line, currency));
        }
      }
      outlay.own().forEach(own -> more.add(own.text() + " " + cents(own.cents(), currency)));
      var beside = outlay.own().stream().mapToLong(own -> own.cents()).sum()
          + outlay.lines().stream().mapToLong(CostTable.Line::spareCents).sum();
      return "Outlay in all %s: to fly once %s%s; %s."
          .formatted(
              cents(outlay.cents(), currency),
              cents(outlay.cents() - beside, currency),
              more.stream().map(one -> "; " + one).collect(Collectors.joining()),
              counted(scenario));
    });
  }

  private static String counted(Scenario scenario) {
    return scenario.alsoBuyOrNothing().counts()
        ? "the price above is for all of it"
        : "only what it takes to fly once counts against a budget";
  }

  private static String spare(CostTable.Line line, String currency) {
    var sold = line.part().sold();
    var bought = line.spareUnits() == 0
        ? line.fromHand() > 0 ? "at hand" : "in what is bought to fly"
        : units(sold, line.spareUnits()) + cents(line.spareCents(), currency);
    return "%s, %s more (%s)".formatted(line.label(), line.spares(), bought);
  }

  private static String units(Sale sold, int units) {
    return sold.unit() == Sale.Unit.EACH
        ? ""
        : counted(units, sold.unit().name().toLowerCase(Locale.ROOT))
            + " of "
            + sold.pieces()
            + ", ";
  }

  private static String cents(long cents, String currency) {
    return cents % 100 == 0
        ? Spoken.price(cents, currency)
        : currency + " " + Spoken.number(cents / 100.0, 2);
  }

  /** What a day asks for; empty where none was asked for, or nothing flies. */
  public static Optional<Workload> workload(
      Assessment assessment, Scenario scenario, double planWith) {
    var day = scenario.workday();
    var seconds = planWith * assessment.milliseconds() / 1000.0;
    return day == null || seconds <= 0
        ? Optional.empty()
        : assessment.build().battery().map(battery -> Workload.of(day, battery, seconds));
  }

  private static Optional<String> workday(
      Assessment assessment, Scenario scenario, double planWith) {
    return workload(assessment, scenario, planWith).map(load -> {
      var day = Objects.requireNonNull(scenario.workday());
      var text =
          "%s min on site take %s of %s min with %s min between: %s charged beforehand, or %s charged in turn, %s min each at %s C, %s h of charging in all."
              .formatted(
                  Spoken.number(day.minutesOnSite(), 0),
                  counted(load.flights(), "flight"),
                  Spoken.minutes(Math.floor(planWith * assessment.milliseconds() / 30_000.0) * 30),
                  Spoken.number(day.swapOrUsual(), 0),
                  counted(load.flights(), "pack"),
                  load.packsInTurn(),
                  Spoken.number(load.chargeMinutes(), 0),
                  Spoken.number(load.chargeRate(), 1),
                  Spoken.number(load.chargeHours(), 1));
      var packs = scenario.alsoBuyOrNothing().packs();
      return packs == null || packs >= load.flights()
          ? text
          : text
              + " With %s, one has to be charged after %s."
                  .formatted(counted(packs, "pack"), counted(load.flightsWith(packs), "flight"));
    });
  }

  private static String counted(int count, String what) {
    return count + " " + what + (count == 1 ? "" : "s");
  }

  /** What a scenario buys beside a build, in a list of words; empty where it is nothing. */
  public static String named(AlsoBuy also) {
    var named = new ArrayList<String>();
    for (var spare : also.allSpares()) {
      named.add(
          spare.role() == Role.BATTERY && also.packs() != null
              ? also.packs() + " packs"
              : "spare " + spare.label());
    }
    also.ownLines().forEach(line -> named.add(line.text()));
    return String.join(", ", named);
  }
}
