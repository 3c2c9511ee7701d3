package pappus.search.plain;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.LongConsumer;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.assessment.Prospect;
import pappus.catalog.Battery;
import pappus.catalog.Board;
import pappus.catalog.Build;
import pappus.catalog.Frame;
import pappus.catalog.Part;
import pappus.catalog.Role;
import pappus.compatibility.CompatibilityRule;
import pappus.search.Pool;
import pappus.search.Question;

/**
 * Looks for a build that a ranking should have had: tries every frame, motor, propeller and battery in turn, and every
 * accessory with them. It leaves out only what a rule on the parts decided forbids, and what with the lightest and
 * thriftiest of everything else would not reach what the ranking claims. It shares the assessment with other searches,
 * and nothing else.
 */
public final class PlainSearch {
  private static final List<Role> MAIN =
      List.of(Role.MOTOR, Role.PROPELLER, Role.BATTERY, Role.FRAME);

  /** Above the rounding of sums, far below what any pilot could tell. */
  private static final double ROUNDING = 1e-9;

  /** More drag may lengthen a flight at a best speed, which it makes slower, by less than this. */
  private static final double SLOWED_BY_DRAG = 1e-2;

  private final Question question;
  private final Assessor assessor;
  private final List<Assessment> rows;
  private final boolean areAll;
  private final int apart;
  private final List<Role> accessories;
  private final Map<Role, Double> leastGrams = new EnumMap<>(Role.class);
  private final Map<Role, Double> leastWatts = new EnumMap<>(Role.class);
  private final OptionalDouble leastOwnLoss;
  private final double leastDragArea;
  private final double mostDragArea;
  private final List<Assessment> better = new ArrayList<>();
  private long looks;
  private long assessed;
  private long effort;
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
    for (var role : accessories) {
      var options = question.options(role);
      leastGrams.put(
          role, options.stream().mapToDouble(part -> grams(role, part)).min().orElse(0));
      leastWatts.put(role, options.stream().mapToDouble(this::leastWatts).min().orElse(0));
    }
    this.leastOwnLoss = question.options(Role.BOARD).stream()
        .map(board -> assessor.ownLoss((Board) board))
        .filter(OptionalDouble::isPresent)
        .mapToDouble(OptionalDouble::getAsDouble)
        .min();
    var areas = question.options(Role.FRAME).stream()
        .mapToDouble(frame -> assessor.dragArea((Frame) frame))
        .summaryStatistics();
    this.leastDragArea = areas.getMin();
    this.mostDragArea = areas.getMax();
  }

  private double grams(Role role, Part part) {
    var alone = Build.empty().with(role, part);
    return assessor.begun(alone).grams() - assessor.begun(Build.empty()).grams();
  }

  private double leastWatts(Part part) {
    return question.options(Role.BATTERY).stream()
        .mapToDouble(battery -> assessor.leastWatts(part, (Battery) battery))
        .min()
        .orElse(0);
  }

  /** Ends the run soon; may be called from another thread. */
  public void stop() {
    stopped = true;
  }

  /**
   * Runs to its end.
   *
   * @param most combinations to look at
   * @param progress told how many were looked at
   */
  public Found run(long most, LongConsumer progress) {
    effort = most;
    var motors = question.options(Role.MOTOR);
    var done = 0;
    for (var motor : motors) {
      mains(Build.empty().with(Role.MOTOR, motor), 1);
      if (isOver()) {
        break;
      }
      done++;
      progress.accept(looks);
    }
    return new Found(better, done, motors.size(), looks, assessed);
  }

  private boolean isOver() {
    return stopped || looks >= effort;
  }

  /** Adds main parts one after the other. */
  private void mains(Build build, int place) {
    if (place == MAIN.size()) {
      if (assessor.begun(build).grams() + accessoryGrams(build, accessories) <= capGrams()) {
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
      if (goesTogether(next, role) && (place < 2 || mayReach(next, accessories))) {
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
    if (isBrought(build, role)) {
      accessories(build, place + 1);
      return;
    }
    for (var part : question.options(role)) {
      looks++;
      var next = build.with(role, part);
      if (goesTogether(next, role) && mayReach(next, left)) {
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

  /** Whether a ranking of the best, each as different from all before as asked for, would have had it. */
  private boolean isMissing(Assessment assessment) {
    for (var row : rows) {
      if (Pool.BEST_FIRST.compare(assessment, row) < 0) {
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
            && !one.part(role).map(Part::id).equals(other.part(role).map(Part::id)))
        .count();
  }

  /** Whether no rule that can be asked since a role was decided says no. */
  private boolean goesTogether(Build build, Role latest) {
    var decided = build.parts().keySet();
    for (var rule : assessor.rules()) {
      if (rule.reads().contains(latest)
          && isDecided(rule, decided)
          && assessor.isBroken(rule, build)) {
        return false;
      }
    }
    return true;
  }

  private static boolean isDecided(CompatibilityRule rule, Set<Role> decided) {
    return decided.containsAll(rule.reads());
  }

  /** Whether a part that is decided stands in for a role already, or leaves no need for it. */
  private static boolean isBrought(Build build, Role role) {
    if (role != Role.LEAD) {
      return build.fills(role);
    }
    var plug = build.board().map(Board::plug);
    return plug.isPresent()
        && plug.get().connector() == build.battery().orElseThrow().connector();
  }

  /** Whether a build may still surpass what is claimed with the lightest and thriftiest of some roles. */
  private boolean mayReach(Build build, List<Role> open) {
    var frame = build.frame();
    var prospect = assessor.prospect(build);
    if (prospect.isEmpty()) {
      return false;
    }
    var counted = assessor.begun(build);
    var grams = counted.grams() + accessoryGrams(build, open);
    var budget = assessor.scenario().budget();
    if (grams > capGrams() || (budget != null && counted.cents() > budget.cents())) {
      return false;
    }
    var watts = 0.0;
    for (var entry : build.parts().entrySet()) {
      if (!MAIN.contains(entry.getKey())) {
        watts += assessor.leastWatts(entry.getValue(), build.battery().orElseThrow());
      }
    }
    for (var role : open) {
      watts += isNeeded(build, role) ? leastWatts.getOrDefault(role, 0.0) : 0;
    }
    var least = frame.map(part -> assessor.dragArea(part)).orElse(leastDragArea);
    var most = frame.map(part -> assessor.dragArea(part)).orElse(mostDragArea);
    var slower = assessor.choosesSpeeds() && least < most ? 1 + SLOWED_BY_DRAG : 1;
    for (var loss : losses(build)) {
      var strong = prospect
          .get()
          .mostGrams(
              assessor.scenario().leastThrustToWeight(),
              new Prospect.Least(grams, watts, 0, loss, least));
      if (grams > strong * (1 + ROUNDING)) {
        continue;
      }
      var maySlow = prospect.get().maySlow(new Prospect.Least(capGrams(), watts, 0, loss, most));
      var figure = prospect.get().figure(new Prospect.Least(grams, watts, 0, loss, least), maySlow);
      if (figure * slower * (1 + ROUNDING) * Assessment.OBJECTIVE >= claimed(build)) {
        return true;
      }
    }
    return false;
  }

  private double capGrams() {
    return assessor.scenario().massCap().largestMilligrams() / 1000.0 + ROUNDING;
  }

  private List<OptionalDouble> losses(Build build) {
    if (build.board().isPresent()) {
      return List.of(assessor.ownLoss(build.board().get()));
    }
    return leastOwnLoss.isPresent()
        ? List.of(OptionalDouble.empty(), leastOwnLoss)
        : List.of(OptionalDouble.empty());
  }

  private double accessoryGrams(Build build, List<Role> open) {
    var grams = 0.0;
    for (var role : open) {
      grams += isNeeded(build, role) ? leastGrams.getOrDefault(role, 0.0) : 0;
    }
    return grams;
  }

  /** Whether a role will need a part of its own, whatever is taken for the others. */
  private boolean isNeeded(Build build, Role role) {
    if (role == Role.LEAD || build.fills(role)) {
      return false;
    }
    return accessories.stream()
        .filter(other -> other != role && build.part(other).isEmpty())
        .flatMap(other -> question.options(other).stream())
        .noneMatch(part -> part.fills().contains(role));
  }
}
