package pappus.search.flat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import pappus.assessment.Assessment;
import pappus.assessment.flight.FrameAir;
import pappus.assessment.flight.PartialBound;
import pappus.compatibility.CompatibilityRule;
import pappus.part.Board;
import pappus.part.Build;
import pappus.part.Frame;
import pappus.part.Part;
import pappus.part.Role;
import pappus.search.Question;

/**
 * A question as solvers of whole numbers take it: one number a role, tables of what goes together, and sums. What does
 * not go into tables and sums is left to the assessment of whole builds.
 */
public final class FlatModel {
  /** Objectives are counted in so many of the assessment's, so that they go into 32 bits. */
  public static final long COARSE = 100;

  private final Question question;
  private final long mostRows;
  private final List<Role> roles;

  /**
   * Rows of numbers of options that go together.
   *
   * @param roles in the order of the columns
   */
  public record Table(List<Role> roles, List<int[]> rows) {}

  /** Milligrams or cents of each option of each role, and what they may sum up to. */
  public record Sum(Map<Role, List<Integer>> each, int most) {
    /** What each option of a role adds. */
    public List<Integer> of(Role role) {
      return each.getOrDefault(role, List.of());
    }
  }

  /**
   * What a motor, a propeller and a battery reach at most, and how much of it each milligram above the lightest costs.
   *
   * @param rows numbers of motor, propeller and battery, coarse objective at the least mass, loss a gram
   */
  public record Ceilings(List<int[]> rows, int leastMilligrams) {}

  /**
   * @param mostRows larger tables are left out: the assessment asks those rules
   */
  public FlatModel(Question question, long mostRows) {
    this.question = question;
    this.mostRows = mostRows;
    this.roles = EnumSet.allOf(Role.class).stream()
        .filter(role -> !question.options(role).isEmpty())
        .toList();
  }

  public List<Role> roles() {
    return roles;
  }

  /** How many parts may fill a role. */
  public int options(Role role) {
    return question.options(role).size();
  }

  /** The assessment of the parts with these numbers, in the order of the roles. */
  public Assessment assess(int[] numbers) {
    var chosen = new EnumMap<Role, Part>(Role.class);
    for (var i = 0; i < numbers.length; i++) {
      chosen.put(roles.get(i), question.options(roles.get(i)).get(numbers[i]));
    }
    return question.assessor().assess(Question.tidy(chosen));
  }

  /** What each rule leaves, for those of which the table is small enough. */
  public List<Table> tables() {
    var tables = new ArrayList<Table>();
    for (var rule : question.assessor().ruleBook().all()) {
      var columns = columns(rule);
      var size = columns.stream().mapToDouble(this::options).reduce(1, (one, other) -> one * other);
      if (!columns.isEmpty() && size <= mostRows) {
        var rows = new ArrayList<int[]>();
        fill(rule, columns, new int[columns.size()], 0, rows);
        if (rows.size() < size) {
          tables.add(new Table(columns, rows));
        }
      }
    }
    return tables;
  }

  /** The roles a rule reads, and those of which a part may bring one of them along. */
  private List<Role> columns(CompatibilityRule rule) {
    var columns = EnumSet.noneOf(Role.class);
    var more = EnumSet.copyOf(rule.reads());
    while (columns.addAll(more)) {
      more = EnumSet.noneOf(Role.class);
      for (var role : roles) {
        if (columns.stream().anyMatch(read -> read != role && maybeBrought(read, role))) {
          more.add(role);
        }
      }
    }
    columns.retainAll(roles);
    return List.copyOf(columns);
  }

  private boolean maybeBrought(Role role, Role by) {
    return role == Role.LEAD
        ? Set.of(Role.BOARD, Role.BATTERY).contains(by)
        : question.options(by).stream().anyMatch(part -> part.fills().contains(role));
  }

  private void fill(
      CompatibilityRule rule, List<Role> columns, int[] row, int column, List<int[]> rows) {
    if (column == row.length) {
      var chosen = new EnumMap<Role, Part>(Role.class);
      for (var i = 0; i < row.length; i++) {
        chosen.put(columns.get(i), question.options(columns.get(i)).get(row[i]));
      }
      if (!question.assessor().ruleBook().isBroken(rule, Question.tidy(chosen))) {
        rows.add(row.clone());
      }
      return;
    }
    for (var i = 0; i < options(columns.get(column)); i++) {
      row[column] = i;
      fill(rule, columns, row, column + 1, rows);
    }
  }

  /** Masses under the cap. */
  public Sum milligrams() {
    return sum(
        build -> question.assessor().prospects().begun(build).grams() * 1000,
        question.assessor().scenario().massCap().largestMilligrams());
  }

  /** Prices within the budget. */
  public Sum cents() {
    var budget = question.assessor().scenario().budget();
    return sum(
        build -> question.assessor().prospects().begun(build).cents(),
        budget == null ? Integer.MAX_VALUE / 2 : budget.cents());
  }

  private interface Measure {
    double of(Build build);
  }

  /** What each part adds at least: nothing where another may bring along what it is for. */
  private Sum sum(Measure measure, long most) {
    var each = new EnumMap<Role, List<Integer>>(Role.class);
    var none = measure.of(Build.empty());
    for (var role : roles) {
      var brought = roles.stream().anyMatch(by -> by != role && maybeBrought(role, by));
      each.put(
          role,
          question.options(role).stream()
              .map(part ->
                  brought ? 0 : (int) Math.floor(measure.of(Build.empty().with(role, part)) - none))
              .toList());
    }
    return new Sum(each, (int) (most - Math.floor(none)) + 1);
  }

  /** What every motor, propeller and battery reach with the least of everything else, in a hover. */
  public Ceilings ceilings() {
    var sum = milligrams();
    var frame = FrameAir.any(question.options(Role.FRAME).stream()
        .map(part -> question.assessor().prospects().air((Frame) part)));
    var losses = new ArrayList<OptionalDouble>(List.of(OptionalDouble.empty()));
    question.options(Role.BOARD).stream()
        .map(board -> question.assessor().prospects().rippleShare((Board) board))
        .filter(OptionalDouble::isPresent)
        .mapToDouble(OptionalDouble::getAsDouble)
        .min()
        .ifPresent(least -> losses.add(OptionalDouble.of(least)));
    var least = roles.stream()
        .mapToInt(role -> sum.of(role).stream().mapToInt(i -> i).min().orElse(0))
        .sum();
    var begun = question.assessor().prospects().begun(Build.empty()).grams();
    var cap = question.assessor().scenario().massCap().largestMilligrams() / 1000.0;
    var rows = new ArrayList<int[]>();
    for (var motor = 0; motor < options(Role.MOTOR); motor++) {
      for (var propeller = 0; propeller < options(Role.PROPELLER); propeller++) {
        for (var battery = 0; battery < options(Role.BATTERY); battery++) {
          var build = Build.empty()
              .with(Role.MOTOR, question.options(Role.MOTOR).get(motor))
              .with(Role.PROPELLER, question.options(Role.PROPELLER).get(propeller))
              .with(Role.BATTERY, question.options(Role.BATTERY).get(battery));
          var prospect = question.assessor().prospects().of(build);
          if (prospect.isPresent()) {
            var atLeast = most(prospect.get(), begun + least / 1000.0, losses, frame);
            var atMost = most(prospect.get(), cap, losses, frame);
            var perGram = (atLeast - atMost) / Math.max(1, cap - begun - least / 1000.0);
            rows.add(new int[] {
              motor, propeller, battery, (int) Math.ceil(atLeast), (int) Math.floor(perGram)
            });
          }
        }
      }
    }
    return new Ceilings(rows, least);
  }

  private static double most(
      PartialBound prospect, double grams, List<OptionalDouble> losses, FrameAir air) {
    return losses.stream()
            .mapToDouble(
                loss -> prospect.figure(new PartialBound.Least(grams, 0, 0, loss, air), false))
            .max()
            .orElse(0)
        * Assessment.OBJECTIVE
        / COARSE;
  }
}
