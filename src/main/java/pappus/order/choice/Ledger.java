package pappus.order.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import pappus.order.Ware;
import pappus.order.column.Column;

/**
 * The books of a choice that changes learner by learner: pieces, spares, units, money and kinds, kept up with each change.
 * Not safe for several threads.
 */
public final class Ledger {
  /** One piece short, or one kind too many, weighs as much as so many cents beyond the budget. */
  public static final long PIECE = 1_000_000;

  private final Choice choice;
  private final Books books;
  private final @Nullable Column[] taken;
  private final int[] pieces;
  private final int[] spares;
  private final int[] units;
  private final int[] builds;
  private final int[][] kindsTaken;
  private long shortPieces;
  private long elsewhereCents;
  private long sumCents;
  private long extraCents;
  private int kinds;
  private long sum;
  private int changed;

  /** Nobody has a build yet. */
  public Ledger(Choice choice) {
    this.choice = choice;
    this.books = choice.books();
    this.taken = new Column[choice.learners().size()];
    var wares = choice.inputs().wares().all().size();
    this.pieces = new int[wares];
    this.spares = new int[wares];
    this.units = new int[wares];
    this.builds = new int[books.slots()];
    this.kindsTaken = new int[choice.same().size()][];
    for (var rule = 0; rule < kindsTaken.length; rule++) {
      kindsTaken[rule] = new int[books.kinds(rule).size()];
    }
  }

  /** With everybody's builds. */
  public static Ledger of(Choice choice, List<Column> columns) {
    var ledger = new Ledger(choice);
    for (var learner = 0; learner < columns.size(); learner++) {
      ledger.give(learner, columns.get(learner));
    }
    return ledger;
  }

  /** The build of a learner who has one. */
  public Column taken(int learner) {
    return Objects.requireNonNull(taken[learner]);
  }

  /** Everybody's builds; everybody must have one. */
  public List<Column> columns() {
    return IntStream.range(0, taken.length).mapToObj(this::taken).toList();
  }

  /** Least share of all learners but two, whole thousandths. */
  long worstOfOthers(int one, int other) {
    var worst = Long.MAX_VALUE;
    for (var learner = 0; learner < taken.length; learner++) {
      if (learner != one && learner != other) {
        worst = Math.min(worst, taken(learner).thousandths());
      }
    }
    return worst;
  }

  /** Gives a learner a build in the place of what was there; none takes it away. */
  public void give(int learner, @Nullable Column column) {
    var before = taken[learner];
    if (Objects.equals(before, column)) {
      return;
    }
    if (before != null) {
      book(before, -1);
    }
    taken[learner] = column;
    if (column != null) {
      book(column, 1);
    }
  }

  private void book(Column column, int sign) {
    sum += sign * column.share();
    extraCents += sign * column.extraCents();
    var taking = books.of(column);
    changed += sign * taking.changes();
    for (var i = 0; i < taking.size(); i++) {
      book(taking.slot(i), sign * taking.pieces(i), sign);
    }
    for (var rule = 0; rule < kindsTaken.length; rule++) {
      if (taking.kind(rule) >= 0) {
        kindsTaken[rule][taking.kind(rule)] += sign;
      }
    }
  }

  private void book(int slot, int more, int sign) {
    var ware = books.ware(slot);
    var w = ware.index();
    shortPieces -= shortOf(ware);
    var before = builds[slot];
    builds[slot] = before + sign;
    spares[w] += books.spares(slot, before + sign) - books.spares(slot, before);
    var wasUsed = pieces[w] > 0;
    pieces[w] += more;
    shortPieces += shortOf(ware);
    if (wasUsed != pieces[w] > 0 && !books.isSmall(w)) {
      kinds += sign;
    }
    var now = books.unitsFor(w, pieces[w] + spares[w]);
    if (now != units[w]) {
      var cents = books.cents(ware, now) - books.cents(ware, units[w]);
      units[w] = now;
      sumCents += cents;
      if (!ware.lots().isEmpty() && ware.lots().get(0).shop() < 0) {
        elsewhereCents += cents;
      }
    }
  }

  private long shortOf(Ware ware) {
    var w = ware.index();
    return Math.max(0, pieces[w] + spares[w] - books.there(w));
  }

  /** Units of each ware to buy. */
  public int[] units() {
    return units.clone();
  }

  /** Pieces of a ware that fly. */
  public int pieces(Ware ware) {
    return pieces[ware.index()];
  }

  /** Pieces of a ware beyond those. */
  public int spares(Ware ware) {
    return spares[ware.index()];
  }

  /** All that is paid. */
  public long cents() {
    var till = choice.inputs().till();
    return extraCents
        + (till.isSeparable() ? till.withPostage(sumCents, elsewhereCents) : till.cents(units));
  }

  private long tooManyKinds() {
    var excess = 0L;
    for (var rule = 0; rule < kindsTaken.length; rule++) {
      excess += Choice.excess(choice.same().get(rule), kinds(rule));
    }
    return excess;
  }

  /** Kinds that are there of what is to be the same. */
  public List<String> kinds(int rule) {
    var there = new ArrayList<String>();
    for (var kind = 0; kind < kindsTaken[rule].length; kind++) {
      if (kindsTaken[rule][kind] > 0) {
        there.add(books.kinds(rule).get(kind));
      }
    }
    return there;
  }

  /** What it breaks: pieces short, kinds too many and cents beyond the budget; 0 where it can be bought. */
  public long broken() {
    return PIECE * (shortPieces + tooManyKinds())
        + Math.max(0, cents() - choice.inputs().budgetCents());
  }

  /** Least share of any learner, whole thousandths; who has no build counts as one with no share. */
  private long worst() {
    var worst = Long.MAX_VALUE;
    for (var column : taken) {
      worst = Math.min(worst, column == null ? 0 : column.thousandths());
    }
    return worst;
  }

  /** How good it is as it is now. */
  public Standing standing() {
    return new Standing(broken(), worst(), sum, cents(), kinds, changed);
  }
}
