package pappus.order.column;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import pappus.order.Lot;
import pappus.order.OrderInputs;
import pappus.order.Ware;

/**
 * The linear program of an order over some columns: how many learners take each, how many units are bought and which wares
 * are used, in fractions; what any order keeps, it keeps.
 *
 * <p>No learner is served twice; pieces come out of stock, in whole builds' worth; what is not there already is bought, spares
 * too; what is bought once a ware is used is paid as far as it is used; money is within the budget, and on the average of
 * a group within each learner's own.
 */
final class Program {
  private final OrderInputs inputs;
  private final Charges charges;
  private final List<Asker> askers;

  /** Above whatever anything else is worth. */
  private static final double KEPT = 1000;

  private static final String SAVED = "saved";

  private final List<Column> columns = new ArrayList<>();
  private final int free;
  private final Map<String, Integer> variables = new HashMap<>();
  private final Map<String, Integer> rows = new LinkedHashMap<>();
  private final List<Map<Integer, Double>> cells = new ArrayList<>();
  private final List<Double> right = new ArrayList<>();
  private final TreeMap<Integer, Ware> used = new TreeMap<>();

  /** Pieces of each ware that is used, by column. */
  private final Map<Integer, TreeMap<Integer, Integer>> pieces = new HashMap<>();

  /**
   * A solution.
   *
   * @param value of the gains of all columns that are taken
   * @param taken how many learners take each column
   */
  record Solved(double value, Map<Column, Double> taken, Prices prices) {}

  /**
   * @param columns by group
   */
  Program(OrderInputs inputs, Charges charges, List<Asker> askers, List<List<Column>> columns) {
    this(inputs, charges, askers, columns, Map.of(), 0);
  }

  /**
   * @param columns by group
   * @param kept columns that so many learners have already
   * @param heldBack cents of the budget that are left for what fractions do not tell
   */
  Program(
      OrderInputs inputs,
      Charges charges,
      List<Asker> askers,
      List<List<Column>> columns,
      Map<Column, Integer> kept,
      long heldBack) {
    this.inputs = inputs;
    this.charges = charges;
    this.askers = askers;
    columns.forEach(this.columns::addAll);
    this.free = this.columns.size();
    this.columns.addAll(kept.keySet());
    for (var column : this.columns) {
      var at = variables.size();
      variables.put("take " + at, at);
      for (var need : column.needs()) {
        used.put(need.ware().index(), need.ware());
        pieces
            .computeIfAbsent(need.ware().index(), fresh -> new TreeMap<>())
            .merge(at, need.pieces(), Integer::sum);
      }
    }
    addService();
    for (var i = free; i < this.columns.size(); i++) {
      row("kept " + i, kept.getOrDefault(this.columns.get(i), 0)).put(i, 1.0);
    }
    used.values().forEach(this::addWare);
    addMoney(heldBack);
  }

  private int variable(String name) {
    return variables.computeIfAbsent(name, fresh -> variables.size());
  }

  private Map<Integer, Double> row(String name, double most) {
    rows.put(name, cells.size());
    var row = new TreeMap<Integer, Double>();
    cells.add(row);
    right.add(most);
    return row;
  }

  private void addService() {
    for (var asker : askers) {
      var row = row("served " + asker.asked().index(), asker.pieces());
      for (var i = 0; i < columns.size(); i++) {
        if (columns.get(i).group() == asker.asked().index()) {
          row.put(i, 1.0);
        }
      }
    }
  }

  private void addWare(Ware ware) {
    var w = ware.index();
    var pieces = Objects.requireNonNull(this.pieces.get(w));
    var charge = charges.once(ware);
    if (ware.stock() < Lot.NO_END) {
      var stock = row("stock " + w, charge > 0 ? 0 : (double) charges.most(ware));
      pieces.forEach((i, count) -> stock.put(i, (double) count));
      if (charge > 0) {
        // What is used by half can give but half of what is there.
        stock.put(variable("use " + w), (double) -charges.most(ware));
      }
    }
    if (charge > 0) {
      addUse(ware, pieces);
    }
    if (ware.leastCents() == 0) {
      return;
    }
    var bought = row("bought " + w, ware.leftover());
    var perPiece = 1 + Charges.perPiece(ware, inputs);
    pieces.forEach((i, count) -> bought.put(i, count * perPiece));
    for (var l = 0; l < ware.lots().size(); l++) {
      var unit = variable("unit " + w + " " + l);
      bought.put(unit, (double) -ware.unit());
      if (ware.lots().size() > 1 && ware.lots().get(l).units() < Lot.NO_END) {
        row("lot " + w + " " + l, ware.lots().get(l).units()).put(unit, 1.0);
      }
    }
    if (charge > 0) {
      bought.put(variable("use " + w), (double) charge);
    }
  }

  /** A ware is used as far as the learners of each group have it. */
  private void addUse(Ware ware, Map<Integer, Integer> pieces) {
    var w = ware.index();
    var use = variable("use " + w);
    row("used " + w, 1).put(use, 1.0);
    for (var asker : askers) {
      var row = row("use " + asker.asked().index() + " " + w, 0);
      row.put(use, (double) -charges.most(ware, asker.pieces()));
      pieces.forEach((i, count) -> {
        if (columns.get(i).group() == asker.asked().index()) {
          row.put(i, (double) count);
        }
      });
    }
  }

  private void addMoney(long heldBack) {
    var budget = Math.max(1.0, (double) inputs.budgetCents());
    var money = row("money", Math.max(0, 1 - heldBack / budget));
    money.put(variable(SAVED), 1.0);
    for (var ware : used.values()) {
      for (var l = 0; l < ware.lots().size(); l++) {
        var unit = variables.get("unit " + ware.index() + " " + l);
        if (unit != null) {
          money.put(unit, ware.lots().get(l).leastCents() / budget);
        }
      }
    }
    for (var i = 0; i < columns.size(); i++) {
      if (columns.get(i).extraCents() > 0) {
        money.put(i, columns.get(i).extraCents() / budget);
      }
    }
    for (var asker : askers) {
      if (asker.asked().isCapped()) {
        addOwnMoney(asker);
      }
    }
  }

  private void addOwnMoney(Asker asker) {
    var cap = Math.max(1.0, (double) asker.asked().capCents());
    var row = row("own " + asker.asked().index(), asker.pieces());
    for (var i = 0; i < columns.size(); i++) {
      var column = columns.get(i);
      if (column.group() == asker.asked().index()) {
        var cents = (double) column.extraCents();
        for (var need : column.needs()) {
          cents +=
              need.pieces() * (double) need.ware().leastCents() / need.ware().unit();
        }
        row.put(i, cents / cap);
      }
    }
  }

  /** The solution with the largest gain of all columns that are taken. */
  Solved maximise(ToDoubleFunction<Column> gain) {
    return maximise(gain, 0);
  }

  /**
   * The solution with the largest gain of all columns that are taken and of the money that is saved.
   *
   * @param saved gain of the whole budget
   */
  Solved maximise(ToDoubleFunction<Column> gain, double saved) {
    var gains = new double[variables.size()];
    gains[Objects.requireNonNull(variables.get(SAVED))] = saved;
    for (var i = 0; i < columns.size(); i++) {
      gains[i] = gain.applyAsDouble(columns.get(i)) + (i < free ? 0 : KEPT);
    }
    var table = new double[cells.size()][variables.size()];
    for (var row = 0; row < table.length; row++) {
      var one = table[row];
      cells.get(row).forEach((column, value) -> one[column] = value);
    }
    var solved =
        Simplex.maximise(gains, table, right.stream().mapToDouble(most -> most).toArray());
    var taken = new LinkedHashMap<Column, Double>();
    for (var i = 0; i < columns.size(); i++) {
      if (solved.level(i) > 1e-6) {
        taken.merge(columns.get(i), solved.level(i), Double::sum);
      }
    }
    return new Solved(solved.value(), taken, prices(solved));
  }

  private Prices prices(Simplex solved) {
    var wares = inputs.wares().all();
    var stock = new double[wares.size()];
    var bought = new double[wares.size()];
    var uses = new double[askers.size()][wares.size()];
    var own = new double[askers.size()];
    for (var ware : used.values()) {
      var w = ware.index();
      stock[w] = price(solved, "stock " + w, 1);
      bought[w] = price(solved, "bought " + w, 1);
      for (var g = 0; g < askers.size(); g++) {
        uses[g][w] = price(solved, "use " + g + " " + w, 1);
      }
    }
    for (var g = 0; g < askers.size(); g++) {
      own[g] =
          price(solved, "own " + g, Math.max(1.0, (double) askers.get(g).asked().capCents()));
    }
    var cent = price(solved, "money", Math.max(1.0, (double) inputs.budgetCents()));
    // What nobody took yet is to be paid all the same.
    for (var ware : wares) {
      if (!used.containsKey(ware.index())) {
        bought[ware.index()] = cent * ware.leastCents() / ware.unit();
      }
    }
    return new Prices(stock, bought, cent, uses, own).held(wares);
  }

  private double price(Simplex solved, String row, double unit) {
    var at = rows.get(row);
    return at == null ? 0 : solved.price(at) / unit;
  }
}
