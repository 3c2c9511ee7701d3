package pappus.order.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pappus.order.Ware;
import pappus.order.column.Column;

/**
 * What all books of a choice share, worked out once: what each build takes, what spares so many builds ask for, and what so
 * many units cost. Safe for several threads.
 */
final class Books {
  private static final long UNKNOWN = -1;

  private final Choice choice;
  private final List<Ware> wares;
  private final List<Ware> slotWares = new ArrayList<>();
  private final List<int[]> slotSpares = new ArrayList<>();
  private final Map<String, Integer> slots = new HashMap<>();
  private final Map<Column, Taking> takings = new HashMap<>();
  private final long[][] costs;
  private final long[] there;
  private final int[] units;
  private final int[] leftovers;
  private final boolean[] small;

  /** What a build takes. */
  static final class Taking {
    private final int[] slots;
    private final int[] pieces;
    private final int[] kinds;
    private final int changes;

    /**
     * @param slots a ware as what it serves as, each
     * @param pieces of each
     * @param kinds of what is to be the same, by rule; −1 where a rule does not ask
     * @param changes learners who do not get what was told before: 1 or 0
     */
    Taking(int[] slots, int[] pieces, int[] kinds, int changes) {
      this.slots = slots;
      this.pieces = pieces;
      this.kinds = kinds;
      this.changes = changes;
    }

    int size() {
      return slots.length;
    }

    int slot(int place) {
      return slots[place];
    }

    int pieces(int place) {
      return pieces[place];
    }

    int kind(int rule) {
      return kinds[rule];
    }

    int changes() {
      return changes;
    }
  }

  private final List<List<String>> keys = new ArrayList<>();

  Books(Choice choice) {
    this.choice = choice;
    this.wares = choice.inputs().wares().all();
    this.costs = new long[wares.size()][0];
    this.there = wares.stream().mapToLong(Ware::pieces).toArray();
    this.units = wares.stream().mapToInt(Ware::unit).toArray();
    this.leftovers = wares.stream().mapToInt(Ware::leftover).toArray();
    this.small = new boolean[wares.size()];
    wares.forEach(ware -> small[ware.index()] = ware.isSmall());
    choice.same().forEach(rule -> keys.add(new ArrayList<>()));
    choice.columns().forEach(columns -> columns.forEach(this::take));
  }

  private void take(Column column) {
    var needs = column.needs();
    var its = new int[needs.size()];
    var pieces = new int[needs.size()];
    for (var i = 0; i < its.length; i++) {
      var need = needs.get(i);
      its[i] = slots.computeIfAbsent(need.ware().index() + " " + need.label(), fresh -> {
        slotWares.add(need.ware());
        slotSpares.add(spares(need.label(), need.ware()));
        return slotWares.size() - 1;
      });
      pieces[i] = need.pieces();
    }
    var kinds = new int[keys.size()];
    for (var rule = 0; rule < kinds.length; rule++) {
      kinds[rule] = kind(rule, choice.key(choice.same().get(rule), column));
    }
    takings.put(column, new Taking(its, pieces, kinds, choice.changes(column) ? 1 : 0));
  }

  private int kind(int rule, String key) {
    if (key.isEmpty()) {
      return -1;
    }
    var known = keys.get(rule);
    if (!known.contains(key)) {
      known.add(key);
    }
    return known.indexOf(key);
  }

  private int[] spares(String label, Ware ware) {
    var spares = new int[choice.learners().size() + 1];
    Arrays.setAll(spares, builds -> choice.spares(label, ware, builds));
    if (costs[ware.index()].length == 0) {
      var most = 64 * spares.length + spares[spares.length - 1];
      costs[ware.index()] = new long[ware.part().sold().unitsFor(most) + 1];
      Arrays.fill(costs[ware.index()], UNKNOWN);
    }
    return spares;
  }

  Taking of(Column column) {
    var taking = takings.get(column);
    if (taking == null) {
      throw new IllegalStateException("A build is chosen that is not to choose: " + column);
    }
    return taking;
  }

  /** Pieces of a ware that can be had. */
  long there(int ware) {
    return there[ware];
  }

  /** Units of a ware to buy for so many pieces, after what is there. */
  int unitsFor(int ware, int pieces) {
    return Math.max(0, pieces - leftovers[ware] + units[ware] - 1) / units[ware];
  }

  /** Whether nobody counts a ware among kinds of parts. */
  boolean isSmall(int ware) {
    return small[ware];
  }

  int slots() {
    return slotWares.size();
  }

  Ware ware(int slot) {
    return slotWares.get(slot);
  }

  int spares(int slot, int builds) {
    return slotSpares.get(slot)[builds];
  }

  /** What so many units cost without postage. */
  long cents(Ware ware, int units) {
    var known = costs[ware.index()];
    if (units >= known.length) {
      return choice.inputs().till().cents(ware, units);
    }
    // Whoever finds it first finds the same.
    if (known[units] == UNKNOWN) {
      known[units] = choice.inputs().till().cents(ware, units);
    }
    return known[units];
  }

  /** Kinds that a rule tells apart. */
  List<String> kinds(int rule) {
    return keys.get(rule);
  }
}
