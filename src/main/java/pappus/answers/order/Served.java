package pappus.answers.order;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import pappus.order.AskedGroup;
import pappus.order.column.Column;
import pappus.order.plan.Plan;

/**
 * Learners of a group who get the same build.
 *
 * @param name the group's, with a number where its builds differ
 * @param number of learners
 */
record Served(AskedGroup group, String name, int number, Column column) {
  /** By group; within one the most learners first. */
  static List<Served> of(Plan plan) {
    var served = new ArrayList<Served>();
    for (var asker : plan.askers()) {
      var counts = new LinkedHashMap<Column, Integer>();
      for (var learner = 0; learner < plan.columns().size(); learner++) {
        if (plan.choice().learners().get(learner) == asker.asked().index()) {
          counts.merge(plan.columns().get(learner), 1, Integer::sum);
        }
      }
      var sorted = counts.entrySet().stream()
          .sorted((one, other) -> one.getValue().equals(other.getValue())
              ? Integer.compare(one.getKey().number(), other.getKey().number())
              : Integer.compare(other.getValue(), one.getValue()))
          .toList();
      for (var i = 0; i < sorted.size(); i++) {
        served.add(new Served(
            asker.asked(),
            sorted.size() == 1 ? asker.asked().name() : asker.asked().name() + "-" + (i + 1),
            sorted.get(i).getValue(),
            sorted.get(i).getKey()));
      }
    }
    return served;
  }

  /** Flight by the likeliest figures, seconds or metres. */
  double figure() {
    return column.assessment().objective() / 1e6;
  }

  /** Flight to plan with, seconds or metres. */
  double planWith() {
    return column.assessment().planned() / 1000.0;
  }
}
