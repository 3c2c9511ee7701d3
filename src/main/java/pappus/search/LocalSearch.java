package pappus.search;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.function.BooleanSupplier;
import pappus.assessment.Assessment;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Role;

/** Improves what a search met, one part at a time. */
public final class LocalSearch {
  private static final int MOST_ROUNDS = 6;
  private static final int MOST_NEARLY = 24;

  private final Question question;
  private final Incumbents incumbents;

  public LocalSearch(Question question, Incumbents incumbents) {
    this.question = question;
    this.incumbents = incumbents;
  }

  /**
   * Swaps every part of every leading candidate, and of some that only just miss, for every other of its role, until
   * none gets better. This also finds each candidate its best accessories.
   *
   * @param count candidates wanted
   * @param stopped asked now and then whether to give up early
   */
  public void improve(int count, BooleanSupplier stopped) {
    var done = new LinkedHashSet<Build>();
    for (var round = 0; round < MOST_ROUNDS; round++) {
      var leaders = new ArrayList<>(
          incumbents.distinct(count + 5, question.assessor().scenario().differences()));
      var worst = leaders.isEmpty() ? 0 : leaders.get(leaders.size() - 1).objective();
      incumbents.nearlyFeasible().stream()
          .filter(near -> near.objective() > worst)
          .limit(MOST_NEARLY)
          .forEach(leaders::add);
      var fresh = leaders.stream().map(Assessment::build).filter(done::add).toList();
      if (fresh.isEmpty()) {
        return;
      }
      for (var build : fresh) {
        for (var role : Role.values()) {
          if (stopped.getAsBoolean()) {
            return;
          }
          swapAll(build, role);
        }
      }
    }
  }

  /** Swaps every part of the build that comes closest, where none is feasible, until none comes closer. */
  public void improveClosest(BooleanSupplier stopped) {
    var done = new LinkedHashSet<Build>();
    for (var round = 0; round < MOST_ROUNDS; round++) {
      var closest = incumbents.closest();
      if (closest.isEmpty() || stopped.getAsBoolean() || !done.add(closest.get().build())) {
        return;
      }
      for (var role : Role.values()) {
        swapAll(closest.get().build(), role);
      }
    }
  }

  private void swapAll(Build build, Role role) {
    for (var option : question.options(role)) {
      var chosen = new EnumMap<Role, Part>(Role.class);
      chosen.putAll(build.parts());
      chosen.put(role, option);
      var swapped = Question.tidy(chosen);
      if (!swapped.equals(build)) {
        incumbents.offer(question.assessor().assess(swapped));
      }
    }
  }
}
