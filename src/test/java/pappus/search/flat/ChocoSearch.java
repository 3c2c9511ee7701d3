package pappus.search.flat;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.constraints.Constraint;
import org.chocosolver.solver.constraints.Propagator;
import org.chocosolver.solver.constraints.PropagatorPriority;
import org.chocosolver.solver.constraints.extension.Tuples;
import org.chocosolver.solver.exception.ContradictionException;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.IntVar;
import org.chocosolver.util.ESat;
import pappus.assessment.Assessment;
import pappus.part.Role;

/** The best build by another's search: Choco's, on a flat model, with the assessment as the last constraint. */
public final class ChocoSearch {
  private final FlatModel flat;
  private final Model model = new Model("builds");
  private final IntVar[] parts;
  private final IntVar objective;

  /**
   * @param hasCeilings whether it is told what motor, propeller and battery reach at most
   */
  public ChocoSearch(FlatModel flat, boolean hasCeilings) {
    this.flat = flat;
    this.parts = flat.roles().stream()
        .map(role -> model.intVar(role.key(), 0, flat.options(role) - 1))
        .toArray(IntVar[]::new);
    this.objective = model.intVar("objective", 1, Integer.MAX_VALUE / 4, true);
    for (var table : flat.tables()) {
      model.table(columns(table.roles()), tuples(table.rows())).post();
    }
    var grams = sum(flat.milligrams());
    sum(flat.cents());
    if (hasCeilings) {
      ceilings(flat.ceilings(), grams);
    }
    new Constraint("assessment", new Assessed(flat, parts, objective)).post();
    model.setObjective(Model.MAXIMIZE, objective);
  }

  /**
   * What was found.
   *
   * @param best empty if there is none
   * @param isProven whether the search came to its end
   */
  public record Found(Optional<Assessment> best, boolean isProven, long nodes) {}

  /** Looks for the best until time is up. */
  public Found run(Duration most) {
    var solver = model.getSolver();
    solver.setSearch(Search.lastConflict(Search.domOverWDegSearch(parts)));
    solver.limitTime(most.toMillis());
    Assessment best = null;
    while (solver.solve()) {
      best = flat.assess(Arrays.stream(parts).mapToInt(IntVar::getValue).toArray());
    }
    return new Found(
        Optional.ofNullable(best), !solver.isStopCriterionMet(), solver.getNodeCount());
  }

  private IntVar[] columns(List<Role> roles) {
    return roles.stream().map(role -> parts[flat.roles().indexOf(role)]).toArray(IntVar[]::new);
  }

  private static Tuples tuples(List<int[]> rows) {
    var tuples = new Tuples(true);
    rows.forEach(tuples::add);
    return tuples;
  }

  private IntVar sum(FlatModel.Sum sum) {
    var terms = flat.roles().stream()
        .map(role -> {
          var each = sum.of(role).stream().mapToInt(Integer::intValue).toArray();
          var term = model.intVar(
              role.key() + " adds",
              Arrays.stream(each).min().orElse(0),
              Arrays.stream(each).max().orElse(0),
              true);
          model.element(term, each, columns(List.of(role))[0]).post();
          return term;
        })
        .toArray(IntVar[]::new);
    var total = model.intVar("sum", 0, sum.most(), true);
    model.sum(terms, "=", total).post();
    return total;
  }

  private void ceilings(FlatModel.Ceilings ceilings, IntVar grams) {
    var most = ceilings.rows().stream().mapToInt(row -> row[3]).max().orElse(0);
    var steepest = ceilings.rows().stream().mapToInt(row -> row[4]).max().orElse(0);
    var ceiling = model.intVar("ceiling", 0, most, true);
    var perGram = model.intVar("perGram", 0, steepest, true);
    var more = model.intVar("more", 0, grams.getUB() / 1000, true);
    var lost = model.intVar("lost", 0, most, true);
    var mains = columns(List.of(Role.MOTOR, Role.PROPELLER, Role.BATTERY));
    var propellers = flat.options(Role.PROPELLER);
    var batteries = flat.options(Role.BATTERY);
    var size = flat.options(Role.MOTOR) * propellers * batteries;
    var ceilingOf = new int[size];
    var perGramOf = new int[size];
    for (var row : ceilings.rows()) {
      var place = (row[0] * propellers + row[1]) * batteries + row[2];
      ceilingOf[place] = row[3];
      perGramOf[place] = row[4];
    }
    var three = model.intVar("three", 0, size - 1, true);
    model
        .scalar(mains, new int[] {propellers * batteries, batteries, 1}, "=", three)
        .post();
    model.element(ceiling, ceilingOf, three).post();
    model.element(perGram, perGramOf, three).post();
    // Whole grams, rounded down.
    model
        .scalar(new IntVar[] {grams, more}, new int[] {1, -1000}, ">=", ceilings.leastMilligrams())
        .post();
    model
        .scalar(
            new IntVar[] {grams, more},
            new int[] {1, -1000},
            "<",
            ceilings.leastMilligrams() + 1000)
        .post();
    model.times(perGram, more, lost).post();
    model
        .scalar(new IntVar[] {ceiling, lost, objective}, new int[] {1, -1, -1}, ">=", 0)
        .post();
  }

  /** Once all parts are chosen, the assessment says what they are worth. */
  private static final class Assessed extends Propagator<IntVar> {
    private final transient FlatModel flat;
    private final transient IntVar objective;
    private final int parts;

    Assessed(FlatModel flat, IntVar[] parts, IntVar objective) {
      super(with(parts, objective), PropagatorPriority.VERY_SLOW, false);
      this.flat = flat;
      this.objective = objective;
      this.parts = parts.length;
    }

    private static IntVar[] with(IntVar[] parts, IntVar objective) {
      var all = Arrays.copyOf(parts, parts.length + 1);
      all[parts.length] = objective;
      return all;
    }

    @Override
    public void propagate(int mask) throws ContradictionException {
      if (areChosen()) {
        var assessment = assessment();
        if (!assessment.isFeasible()) {
          fails();
        }
        objective.instantiateTo((int) (assessment.objective() / FlatModel.COARSE), this);
      }
    }

    private boolean areChosen() {
      return Arrays.stream(vars, 0, parts).allMatch(IntVar::isInstantiated);
    }

    private Assessment assessment() {
      return flat.assess(
          Arrays.stream(vars, 0, parts).mapToInt(IntVar::getValue).toArray());
    }

    @Override
    public ESat isEntailed() {
      if (!areChosen()) {
        return ESat.UNDEFINED;
      }
      var assessment = assessment();
      return ESat.eval(assessment.isFeasible()
          && objective.contains((int) (assessment.objective() / FlatModel.COARSE)));
    }
  }
}
