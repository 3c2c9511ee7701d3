package pappus.search.plain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.LongConsumer;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.compatibility.CompatibilityRule;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Role;
import pappus.search.Incumbents;
import pappus.search.Question;

/**
 * Looks for a build that a ranking should have had: tries every frame, motor, propeller and battery in turn, and every
 * accessory with them. It leaves out only what a rule on the parts decided forbids, and what with the lightest and
 * thriftiest of everything else would not reach what the ranking claims. It shares the assessment with other searches,
 * and nothing else.
 */
public final class PlainSearch {
  private static final List<Role> MAIN =
      Role.MAIN.stream().sorted(Comparator.comparing(Role.FRAME::equals)).toList();

  /** So many motors are looked at side by side, however many processors there are. */
  private static final int AT_ONCE = 8;

  private final Question question;
  private final Assessor assessor;
  private final List<Assessment> rows;
  private final boolean areAll;
  private final int apart;
  private final List<Role> accessories;
  private final CrudeBound crude;
  private volatile boolean stopped;

  /**
   * What came of it.
   *
   * @param better builds that the ranking should have had
   * @param motors motors looked at with everything else, of so many
   * @param looks combinations of parts looked at
   * @param assessed builds assessed
   */
  public record Found(
      List<Assessment> better, int motors, int ofMotors, long looks, long assessed) {
    public Found {
      better = List.copyOf(better);
    }

    /** Whether nothing is left to look at. */
    public boolean isWhole() {
      return motors == ofMotors;
    }
  }

  /**
   * @param rows of the ranking, in its order
   * @param areAll whether the ranking claims that there are no more
   */
  public PlainSearch(Question question, List<Assessment> rows, boolean areAll) {
    this.question = question;
    this.assessor = question.assessor();
    this.rows = List.copyOf(rows);
    this.areAll = areAll;
    this.apart = assessor.scenario().differences();
    this.accessories = EnumSet.allOf(Role.class).stream()
        .filter(role -> !MAIN.contains(role) && !question.options(role).isEmpty())
        .sorted((one, other) -> Boolean.compare(other == Role.BOARD, one == Role.BOARD))
        .toList();
    this.crude = new CrudeBound(question, accessories);
  }

  /** Ends the run soon; may be called from another thread. */
  public void stop() {
    stopped = true;
  }

  /**
   * Runs to its end, on all processors; the answer does not depend on how many there are.
   *
   * @param most combinations to look at; shared evenly among motors that are looked at side by side
   * @param progress told how many were looked at
   */
  public Found run(long most, LongConsumer progress) {
    var motors = question.options(Role.MOTOR);
    var better = new ArrayList<Assessment>();
    var done = 0;
    var looks = 0L;
    var assessed = 0L;
    for (var from = 0; from < motors.size() && looks < most && !stopped; from += AT_ONCE) {
      var together = motors.subList(from, Math.min(from + AT_ONCE, motors.size()));
      var each = Math.max(1, (most - looks) / together.size());
      var found =
          together.parallelStream().map(motor -> new Look(each).with(motor)).toList();
      for (var look : found) {
        done += look.isOver() ? 0 : 1;
        looks += look.looks;
        assessed += look.assessed;
        better.addAll(look.better);
      }
      progress.accept(looks);
    }
    return new Found(better, done, motors.size(), looks, assessed);
  }

  /** All builds with one motor. */
  private final class Look {
    private final List<Assessment> better = new ArrayList<>();
    private final long most;
    private long looks;
    private long assessed;

    Look(long most) {
      this.most = most;
    }

    Look with(Part motor) {
      mains(Build.empty().with(Role.MOTOR, motor), 1);
      return this;
    }

    boolean isOver() {
      return stopped || looks >= most;
    }

    /** Adds main parts one after the other. */
    private void mains(Build build, int place) {
      if (place == MAIN.size()) {
        if (crude.mayWeigh(build, accessories)) {
          accessories(build, 0);
        }
        return;
      }
      var role = MAIN.get(place);
      for (var part : question.options(role)) {
        if (isOver()) {
          return;
        }
        looks++;
        var next = build.with(role, part);
        if (goesTogether(next, role)
            && (place < 2 || crude.mayReach(next, accessories, claimed(next)))) {
          mains(next, place + 1);
        }
      }
    }

    /** Adds accessories one after the other. */
    private void accessories(Build build, int place) {
      if (isOver()) {
        return;
      }
      if (place == accessories.size()) {
        assess(build);
        return;
      }
      var role = accessories.get(place);
      var left = accessories.subList(place + 1, accessories.size());
      if (build.bringsAlong(role)) {
        accessories(build, place + 1);
        return;
      }
      for (var part : question.options(role)) {
        looks++;
        var next = build.with(role, part);
        if (goesTogether(next, role) && crude.mayReach(next, left, claimed(next))) {
          accessories(next, place + 1);
        }
      }
    }

    private void assess(Build build) {
      var tidy = Question.tidy(build.parts());
      if (!tidy.equals(build)) {
        // The same build comes by without the part that another one brings along.
        return;
      }
      assessed++;
      var assessment = assessor.assess(build);
      if (assessment.isFeasible() && isMissing(assessment)) {
        better.add(assessment);
      }
    }
  }

  /** Whether a ranking of the best, each as different from all before as asked for, would have had it. */
  private boolean isMissing(Assessment assessment) {
    for (var row : rows) {
      if (Incumbents.BEST_FIRST.compare(assessment, row) < 0) {
        return true;
      }
      if (differences(assessment.build(), row.build()) < apart) {
        return false;
      }
    }
    return areAll;
  }

  /** What a build with these main parts would have to surpass to be missing. */
  private long claimed(Build build) {
    for (var row : rows) {
      if (differences(build, row.build()) + MAIN.size() - mains(build) < apart) {
        return row.objective();
      }
    }
    return areAll || rows.isEmpty() ? 0 : rows.get(rows.size() - 1).objective();
  }

  private static int mains(Build build) {
    return (int) MAIN.stream().filter(role -> build.part(role).isPresent()).count();
  }

  private static int differences(Build one, Build other) {
    return (int) MAIN.stream()
        .filter(role -> one.part(role).isPresent()
            && !one.part(role).map(Part::listedId).equals(other.part(role).map(Part::listedId)))
        .count();
  }

  /** Whether no rule that can be asked since a role was decided says no. */
  private boolean goesTogether(Build build, Role latest) {
    var decided = build.parts().keySet();
    for (var rule : assessor.ruleBook().all()) {
      if (rule.reads().contains(latest)
          && isDecided(rule, decided)
          && assessor.ruleBook().isBroken(rule, build)) {
        return false;
      }
    }
    return true;
  }

  private static boolean isDecided(CompatibilityRule rule, Set<Role> decided) {
    return decided.containsAll(rule.reads());
  }
}
