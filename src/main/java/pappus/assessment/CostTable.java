package pappus.assessment;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pappus.fitting.Fitting;
import pappus.part.Part;
import pappus.scenario.AlsoBuy;
import pappus.scenario.OwnLine;

/**
 * What has to be bought, in whole selling units: to fly once, or with all that a scenario buys beside a build.
 *
 * @param lines one a part
 * @param own what is no part
 * @param cents sum, whole cents
 */
public record CostTable(List<Line> lines, List<OwnLine> own, long cents) {
  /**
   * One line of what is bought.
   *
   * @param label what it is
   * @param part the part
   * @param pieces how many fly
   * @param spares how many are wanted beyond those
   * @param fromHand how many of all of them are at hand
   * @param units selling units to buy
   * @param cents price of them, whole cents; 0 if owned
   * @param owned whether the builder has all of them already
   */
  public record Line(
      String label,
      Part part,
      int pieces,
      int spares,
      int fromHand,
      int units,
      long cents,
      boolean owned) {
    /** Selling units to buy beyond what flies. */
    public int spareUnits() {
      return owned ? 0 : units - part.sold().unitsFor(Math.max(0, pieces - fromHand));
    }

    /** Price of those, whole cents. */
    public long spareCents() {
      return spareUnits() * part.price().cents();
    }

    /** Selling units that have to be paid. */
    public int unitsToBuy() {
      return owned ? 0 : units;
    }
  }

  public CostTable {
    lines = List.copyOf(lines);
    own = List.copyOf(own);
  }

  /**
   * What counts of everything a build as it goes together is bought from: what else a scenario buys is in it if that
   * counts against the budget.
   *
   * @param purse what of it costs nothing
   */
  static CostTable of(Fitting fitting, Purse purse) {
    return of(fitting, purse, purse.alsoBuy().counts() ? purse.alsoBuy() : AlsoBuy.NOTHING);
  }

  /** Everything that is bought, what a scenario buys beside a build included, whether that counts or not. */
  static CostTable whole(Fitting fitting, Purse purse) {
    return of(fitting, purse, purse.alsoBuy());
  }

  private static CostTable of(Fitting fitting, Purse purse, AlsoBuy also) {
    var build = fitting.build();
    var lines = new ArrayList<Line>();
    var taken = new HashMap<String, Integer>();
    build
        .parts()
        .forEach((role, part) ->
            lines.add(line(role.label(), part, build.count(role), purse, also, taken)));
    var spared = new HashSet<String>();
    for (var item : fitting.hardware().items()) {
      item.part().ifPresent(part -> {
        // Two columns of a stack may each need one: their spares are bought once.
        var with = spared.add(item.label() + part.id()) ? also : AlsoBuy.NOTHING;
        lines.add(line(item.label(), part, item.pieces(), purse, with, taken));
      });
    }
    var own = new ArrayList<OwnLine>();
    var lump = fitting.scenario().lump();
    if (lump != null && lump.price() != null) {
      own.add(new OwnLine(lump.name(), lump.price()));
    }
    own.addAll(also.ownLines());
    return new CostTable(
        lines,
        own,
        lines.stream().mapToLong(Line::cents).sum()
            + own.stream().mapToLong(line -> line.cents()).sum());
  }

  /** @param taken pieces at hand that went into lines before, by part */
  private static Line line(
      String label, Part part, int pieces, Purse purse, AlsoBuy also, Map<String, Integer> taken) {
    var spares = also.spares(label, part);
    var there = purse.hasAny(part) ? pieces : 0;
    var wanted = pieces + spares - there;
    if (wanted == 0) {
      return new Line(label, part, pieces, spares, there, part.sold().unitsFor(pieces), 0, true);
    }
    var before = taken.getOrDefault(part.id(), 0);
    var fromShelf = Math.min(wanted, Math.max(0, purse.shelf().owned(part) - before));
    if (fromShelf > 0) {
      taken.put(part.id(), before + fromShelf);
    }
    var units = part.sold().unitsFor(wanted - fromShelf);
    return new Line(
        label,
        part,
        pieces,
        spares,
        there + fromShelf,
        units,
        units * part.price().cents(),
        fromShelf == wanted);
  }

  /** Pieces that fly and are not at hand; screws and other small hardware are none. */
  public int piecesToBuy() {
    return lines.stream()
        .filter(line -> !line.owned() && !line.part().kind().isSmall())
        .mapToInt(line -> Math.max(0, line.pieces() - line.fromHand()))
        .sum();
  }

  /** Pieces of each part that fly, whatever they serve as. */
  Map<Part, Integer> pieces() {
    var pieces = new LinkedHashMap<Part, Integer>();
    lines.forEach(line -> pieces.merge(line.part(), line.pieces(), Integer::sum));
    return pieces;
  }
}
