package pappus.answers.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pappus.assessment.Assessment;
import pappus.document.Spoken;
import pappus.fitting.StackPlan;
import pappus.part.Role;
import pappus.scenario.Scenario;

/** What is said of a build in every text, each line to be wrapped. */
public final class BuildLines {
  private static final int MOST_ROLES = 2;

  private BuildLines() {}

  /** Its main parts. */
  public static String names(Assessment assessment) {
    return String.join(
        ", ",
        Role.MAIN.stream()
            .flatMap(role -> assessment.build().part(role).stream())
            .map(part -> part.name())
            .toList());
  }

  /** Every part with its id, and where it sits. */
  public static List<String> details(Assessment assessment) {
    var lines = new ArrayList<String>();
    assessment
        .build()
        .parts()
        .forEach(
            (role, part) -> lines.add(role.label() + ": " + part.name() + " [" + part.id() + "]"));
    lines.addAll(places(assessment));
    return lines;
  }

  /** The parts that the row does not name. */
  public static String accessories(Assessment assessment) {
    return String.join(
        ", ",
        assessment.build().parts().entrySet().stream()
            .filter(entry -> !Role.MAIN.contains(entry.getKey()))
            .map(entry -> entry.getKey().label() + " " + entry.getValue().name())
            .toList());
  }

  /** Their names alone. */
  public static String accessoryNames(Assessment assessment) {
    return String.join(
        ", ",
        assessment.build().parts().entrySet().stream()
            .filter(entry -> !Role.MAIN.contains(entry.getKey()))
            .map(entry -> entry.getValue().name())
            .toList());
  }

  /** How far plates stand apart, to be said after something; empty where no plate is above. */
  public static String height(Assessment assessment) {
    return assessment
        .fitting()
        .stackPlan()
        .flatMap(StackPlan::height)
        .map(height -> "; plates " + Spoken.number(height.millimetres(), 0) + " mm apart")
        .orElse("");
  }

  /** Where boards and pack sit. */
  public static List<String> places(Assessment assessment) {
    var lines = new ArrayList<String>();
    assessment.fitting().stackPlan().ifPresent(plan -> lines.add(stack(plan) + "."));
    assessment
        .fitting()
        .placing()
        .ifPresent(placing -> lines.add(pack(placing.packXMillimetres())));
    return lines;
  }

  /** By how much the pack sits before the middle of the motors, mm. */
  public static String pack(double xMillimetres) {
    var millimetres = Spoken.number(Math.abs(xMillimetres), 0);
    return millimetres.equals("0")
        ? "Pack: its middle is that of the motors."
        : "Pack: its middle %s mm %s the middle of the motors."
            .formatted(millimetres, xMillimetres > 0 ? "before" : "behind");
  }

  private static String stack(StackPlan plan) {
    var columns = plan.columns().stream()
        .map(column -> column.position().name()
            + ": "
            + String.join(
                " under ",
                column.layers().stream().map(layer -> layer.what().label()).toList()))
        .toList();
    return "Places: "
        + String.join("; ", columns)
        + plan.height()
            .map(height -> "; plates " + Spoken.number(height.millimetres(), 0) + " mm apart")
            .orElse("; no plate above");
  }

  /** Never a hundred: a normal sum promises nothing that far out. */
  public static String chance(Assessment assessment, Scenario scenario) {
    var chance = assessment.mass().chanceUnder(scenario.massCap());
    return chance > 0.99 ? "over 99 %" : Spoken.number(100 * chance, 0) + " %";
  }

  /** Of its prices. */
  public static String currency(Assessment assessment) {
    return assessment.cost().lines().get(0).part().price().currency();
  }

  /** What is at hand and so costs nothing, if anything is. */
  public static Optional<String> atHand(Assessment assessment) {
    var taken = assessment.cost().lines().stream()
        .filter(line -> line.fromHand() > 0)
        .map(line -> "%s of %s %s"
            .formatted(
                line.fromHand(), line.pieces() + line.spares(), line.part().id()))
        .toList();
    return taken.isEmpty()
        ? Optional.empty()
        : Optional.of("At hand, at no cost: " + String.join(", ", taken) + ".");
  }

  /** The parts of a build that another has not: main parts by name, or else the roles of the accessories. */
  public static List<String> otherwise(Assessment build, Assessment than) {
    var names = new ArrayList<String>();
    for (var role : Role.MAIN) {
      var mine = build.build().part(role);
      if (!mine.equals(than.build().part(role))) {
        mine.ifPresent(part -> names.add(part.name()));
      }
    }
    return names.isEmpty() ? List.of(accessories(build, than)) : names;
  }

  /**
   * As many of some names as there is room for, and how many more there are.
   *
   * @param room columns
   */
  public static String within(List<String> names, int room) {
    var told = names.size();
    while (told > 1 && text(names, told).length() > room) {
      told--;
    }
    return text(names, told);
  }

  private static String text(List<String> names, int told) {
    var left = names.size() - told;
    return String.join(", ", names.subList(0, told)) + (left == 0 ? "" : " +" + left);
  }

  private static String accessories(Assessment build, Assessment than) {
    var roles = new ArrayList<String>();
    for (var role : Role.values()) {
      if (!build.build().part(role).equals(than.build().part(role))) {
        roles.add(role.label());
      }
    }
    return roles.size() > MOST_ROLES
        ? "%s accessories".formatted(roles.size())
        : roles.isEmpty() ? names(build) : "another " + String.join(", ", roles);
  }
}
