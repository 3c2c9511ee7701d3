package pappus.answers.ranking;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pappus.answers.build.BuildLines;
import pappus.answers.build.Figures;
import pappus.assessment.Assessment;
import pappus.document.Lines;
import pappus.document.Spoken;
import pappus.ranking.Pick;
import pappus.ranking.Picks;

/** Picks, and what giving up a little saves, for a terminal. */
final class PickLines {
  private static final int INDENT = 2;
  private static final int COLUMN = 35;
  private static final int LEAST_ROOM = 20;

  private final Picks picks;
  private final Naming naming;
  private final Figures figures;
  private final int width;

  /**
   * @param width columns of the terminal
   */
  PickLines(Picks picks, Naming naming, Figures figures, int width) {
    this.width = width;
    this.picks = picks;
    this.naming = naming;
    this.figures = figures;
  }

  /** Each pick with its numbers, its main parts and what it is good for. */
  void picks(Lines lines) {
    var first = picks.first().orElseThrow();
    lines.whole(String.format(
        Locale.ROOT,
        "%-11s %s",
        (picks.picks().size() == 1 ? "Pick, " : "Picks, ") + figures.unit(),
        figures.heading()));
    for (var pick : picks.picks()) {
      var row = naming.row(pick.build());
      lines.strong(String.format(
              Locale.ROOT,
              "%-11s %s  %s%s",
              pick.kind().word(),
              figures.of(pick.build()),
              row,
              pick.isProven() ? "" : (row.isEmpty() ? "" : ", ") + "not proven")
          .stripTrailing());
      lines.row("  " + names(pick, first), INDENT);
      if (pick.kind() != first.kind()) {
        lines.row("  " + traded(pick, first), INDENT);
      }
    }
    if (!picks.areBelieved()) {
      lines.say("? All of them fly better than such aircraft are known to, and nothing else "
          + (picks.isProven() ? "flies" : "was found")
          + ": distrust them until one is measured.");
    }
    missing().ifPresent(lines::say);
  }

  private static String names(Pick pick, Pick first) {
    var same = pick.kind() != first.kind()
        && pick.build().build().hasMainsOf(first.build().build());
    return same
        ? "As the " + first.kind().word() + ", with "
            + String.join(", ", BuildLines.otherwise(pick.build(), first.build()))
        : BuildLines.names(pick.build());
  }

  /** What one gets for what, against the first pick. */
  private String traded(Pick pick, Pick first) {
    var traded = new ArrayList<String>();
    if (pick.kind() == Pick.Kind.STRONGEST || first.kind() == Pick.Kind.STRONGEST) {
      var isMore = thrust(pick.build()) > thrust(first.build());
      traded.add("T/W %s, %s from %s"
          .formatted(
              Spoken.number(thrust(pick.build()), 1),
              isMore ? "up" : "down",
              Spoken.number(thrust(first.build()), 1)));
    }
    if (pick.kind() == Pick.Kind.LIGHTEST || first.kind() == Pick.Kind.LIGHTEST) {
      var grams = pick.build().mass().grams() - first.build().mass().grams();
      traded.add((grams < 0 ? "saves " : "adds ") + Spoken.number(Math.abs(grams), 0) + " g");
    }
    if (pick.kind() == Pick.Kind.THRIFTY || first.kind() == Pick.Kind.CHEAPEST) {
      var cents = pick.build().cost().cents() - first.build().cost().cents();
      traded.add((cents < 0 ? "saves " : "costs ")
          + Spoken.price(Math.abs(cents), BuildLines.currency(pick.build())));
    }
    if (first.kind() == Pick.Kind.OWNED) {
      traded.add(pick.build().cost().piecesToBuy() + " to buy, not "
          + first.build().cost().piecesToBuy());
    }
    var isLonger = pick.band().low() > first.band().low();
    traded.add((isLonger ? "gains " : "costs ")
        + (isLonger
            ? figures.lost(pick.band().low(), first.band().low())
            : figures.lost(first.band().low(), pick.band().low())));
    return Spoken.sentence(String.join(", ", traded)) + ".";
  }

  private static double thrust(Assessment build) {
    return build.flight().orElseThrow().thrustToWeight();
  }

  /** Why there are not four. */
  private Optional<String> missing() {
    var isOfFlight = picks.first().orElseThrow().kind().isOfFlight();
    if (!isOfFlight && picks.picks().size() > 1) {
      return Optional.empty();
    }
    var missing = new ArrayList<String>();
    if (picks.named("thrifty").isEmpty()) {
      missing.add("thrifty pick: nothing at 95 % of it saves 5 % of the price");
    }
    if (picks.named("strongest").isEmpty()) {
      missing.add("strongest pick: nothing at 80 % has a tenth more thrust");
    }
    if (picks.named("lightest").isEmpty()) {
      missing.add("lightest pick: nothing at 80 % saves 3 % of the mass");
    }
    if (missing.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        picks.isProven()
            ? "No " + String.join("; no ", missing) + "."
            : "No other pick was found in what was searched.");
  }

  /** What a little less flight saves. */
  void givingUp(Lines lines) {
    var first = picks.mostFlight().orElseThrow();
    lines.whole("Giving up a little, against the " + first.kind().word());
    lines.whole(givenUp("plan on", figures.unit(), "price", "g", ""));
    for (var given : picks.givingUp()) {
      var build = given.build();
      var planWith = given.planWith() / 1000.0;
      var name = naming.known(build);
      var names = name.isEmpty() ? BuildLines.otherwise(build, first.build()) : List.of(name);
      lines.whole(givenUp(
          figures.planned(planWith),
          figures.change(first.band().low(), planWith),
          Spoken.priceChange(
              build.cost().cents() - first.build().cost().cents(), BuildLines.currency(build)),
          Spoken.change(build.mass().grams() - first.build().mass().grams(), 0),
          BuildLines.within(names, Math.max(LEAST_ROOM, width - COLUMN))));
    }
  }

  private static String givenUp(
      String planWith, String lost, String price, String grams, String name) {
    return String.format(Locale.ROOT, "%8s %7s %9s %6s  %s", planWith, lost, price, grams, name)
        .stripTrailing();
  }
}
