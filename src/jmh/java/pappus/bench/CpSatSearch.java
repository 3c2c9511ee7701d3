package pappus.bench;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import pappus.assessment.Assessment;
import pappus.part.Role;
import pappus.search.flat.FlatModel;

/**
 * The best build by CP-SAT: it proposes the build of the flat model with the highest ceiling, the assessment says what
 * it is worth, and the build is ruled out, until no ceiling is above the best.
 */
final class CpSatSearch {
  private static final int THREADS = 2;

  private final FlatModel flat;
  private final CpModel model = new CpModel();
  private final IntVar[] parts;
  private final IntVar objective;

  CpSatSearch(FlatModel flat) {
    Loader.loadNativeLibraries();
    this.flat = flat;
    this.parts = flat.roles().stream()
        .map(role -> model.newIntVar(0, flat.options(role) - 1L, role.key()))
        .toArray(IntVar[]::new);
    for (var table : flat.tables()) {
      var allowed = model.addAllowedAssignments(columns(table.roles()));
      table.rows().forEach(allowed::addTuple);
    }
    var grams = sum(flat.milligrams());
    sum(flat.cents());
    var ceilings = flat.ceilings();
    var most = ceilings.rows().stream().mapToInt(row -> row[3]).max().orElse(0);
    this.objective = model.newIntVar(0, most, "objective");
    ceilings(ceilings, most, grams);
    model.maximize(objective);
  }

  /** What was found, and whether nothing better is left. */
  record Found(Optional<Assessment> best, boolean isProven) {}

  /** Looks for the best until time is up. */
  Found run(Duration most) {
    var until = System.nanoTime() + most.toNanos();
    Assessment best = null;
    while (System.nanoTime() < until) {
      var solver = new CpSolver();
      solver.getParameters().setNumWorkers(THREADS);
      solver.getParameters().setMaxTimeInSeconds((until - System.nanoTime()) / 1e9);
      var status = solver.solve(model);
      if (status == CpSolverStatus.INFEASIBLE) {
        return new Found(Optional.ofNullable(best), true);
      }
      if (status != CpSolverStatus.OPTIMAL && status != CpSolverStatus.FEASIBLE) {
        break;
      }
      var row = new int[parts.length];
      for (var i = 0; i < row.length; i++) {
        row[i] = (int) solver.value(parts[i]);
      }
      model.addForbiddenAssignments(parts).addTuple(row);
      var assessment = flat.assess(row);
      if (assessment.isFeasible() && (best == null || assessment.objective() > best.objective())) {
        best = assessment;
        model.addGreaterOrEqual(objective, best.objective() / FlatModel.COARSE + 1);
      }
    }
    return new Found(Optional.ofNullable(best), false);
  }

  private IntVar[] columns(List<Role> roles) {
    return roles.stream().map(role -> parts[flat.roles().indexOf(role)]).toArray(IntVar[]::new);
  }

  private IntVar sum(FlatModel.Sum sum) {
    var terms = flat.roles().stream()
        .map(role -> {
          var each = sum.of(role).stream().mapToLong(Integer::longValue).toArray();
          var term = model.newIntVar(0, Integer.MAX_VALUE, role.key() + " adds");
          model.addElement(columns(List.of(role))[0], each, term);
          return term;
        })
        .toArray(IntVar[]::new);
    var total = model.newIntVar(0, sum.most(), "sum");
    model.addEquality(total, LinearExpr.sum(terms));
    return total;
  }

  private void ceilings(FlatModel.Ceilings ceilings, int most, IntVar grams) {
    var ceiling = model.newIntVar(0, most, "ceiling");
    var perGram = model.newIntVar(0, Integer.MAX_VALUE, "perGram");
    var more = model.newIntVar(0, Integer.MAX_VALUE, "more");
    var lost = model.newIntVar(0, most, "lost");
    var mains = columns(List.of(Role.MOTOR, Role.PROPELLER, Role.BATTERY));
    var table =
        model.addAllowedAssignments(new IntVar[] {mains[0], mains[1], mains[2], ceiling, perGram});
    ceilings.rows().forEach(table::addTuple);
    var above = LinearExpr.weightedSum(new IntVar[] {grams, more}, new long[] {1, -1000});
    model.addLinearConstraint(above, ceilings.leastMilligrams(), ceilings.leastMilligrams() + 999L);
    model.addMultiplicationEquality(lost, perGram, more);
    model.addLessOrEqual(
        LinearExpr.weightedSum(new IntVar[] {objective, lost, ceiling}, new long[] {1, 1, -1}), 0);
  }
}
