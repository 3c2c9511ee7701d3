package pappus.bench;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.time.Duration;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import pappus.order.Ware;
import pappus.order.choice.Choice;
import pappus.order.column.Column;

/**
 * The largest sum of shares of an order by CP-SAT, among the builds that Timefold chose from: of orders from one lot a part at
 * one price, without postage, sameness or spares for so many builds each.
 */
final class CpSatOrder {
  private static final int THREADS = 2;
  private static final int MOST_UNITS = 2_000;

  private final Choice choice;
  private final CpModel model = new CpModel();
  private final Map<Column, IntVar> taken = new LinkedHashMap<>();
  private final Map<Ware, LinearExprBuilder> pieces = new LinkedHashMap<>();
  private final Map<String, IntVar> used = new HashMap<>();

  /**
   * @param least thousandths of a share that each is to have
   */
  CpSatOrder(Choice choice, long least) {
    Loader.loadNativeLibraries();
    this.choice = choice;
    var shares = LinearExpr.newBuilder();
    for (var group : choice.inputs().groups()) {
      var served = LinearExpr.newBuilder();
      for (var column : choice.columns().get(group.index())) {
        if (column.thousandths() >= least) {
          var count = model.newIntVar(0, group.pieces(), column.toString());
          taken.put(column, count);
          served.add(count);
          shares.addTerm(count, column.share());
        }
      }
      model.addEquality(served, group.pieces());
    }
    taken.forEach(this::need);
    var money = LinearExpr.newBuilder();
    pieces.forEach((ware, sum) -> buy(ware, sum, money));
    taken.forEach((column, count) -> money.addTerm(count, column.extraCents()));
    model.addLessOrEqual(money, choice.inputs().budgetCents());
    model.maximize(shares);
  }

  private void need(Column column, IntVar count) {
    for (var need : column.needs()) {
      var sum = pieces.computeIfAbsent(need.ware(), fresh -> LinearExpr.newBuilder());
      sum.addTerm(count, need.pieces());
      var spares = choice.inputs().spares(need.label(), need.ware(), 1);
      if (spares > 0) {
        var use = used.computeIfAbsent(need.ware().index() + " " + need.label(), name -> {
          var fresh = model.newBoolVar(name);
          sum.addTerm(fresh, spares);
          return fresh;
        });
        model.addLessOrEqual(
            count,
            LinearExpr.term(use, choice.inputs().groups().get(column.group()).pieces()));
      }
    }
  }

  private void buy(Ware ware, LinearExprBuilder sum, LinearExprBuilder money) {
    if (ware.lots().stream().mapToLong(lot -> lot.cents()).distinct().count() > 1) {
      throw new IllegalStateException("More than one price of " + ware.part().id());
    }
    var units =
        model.newIntVar(0, Math.min(MOST_UNITS, ware.stock()), ware.part().id());
    model.addLessOrEqual(
        sum, LinearExpr.newBuilder().addTerm(units, ware.unit()).add(ware.leftover()));
    money.addTerm(units, ware.leastCents());
  }

  /**
   * What was found until time was up.
   *
   * @param sum of shares, millionths; 0 where no order was found
   * @param atMost what none surpasses
   */
  record Found(long sum, double atMost) {}

  Found run(Duration most) {
    var solver = new CpSolver();
    solver.getParameters().setNumWorkers(THREADS);
    solver.getParameters().setMaxTimeInSeconds(most.toMillis() / 1e3);
    var status = solver.solve(model);
    var isFound = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
    return new Found(
        isFound ? Math.round(solver.objectiveValue()) : 0, solver.bestObjectiveBound());
  }
}
