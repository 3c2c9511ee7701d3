package pappus.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.assessment.Purpose;
import pappus.catalog.Catalog;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Role;
import pappus.scenario.FixedParts;

/**
 * What a search is to find: the parts it may use in each role, and who judges them.
 *
 * <p>Fixed, allowed and excluded parts and wishes by property apply here, before anything is searched. A role with one part
 * left is decided; one without any is left empty. Of parts that are the same in every number, the first by id stands
 * for all.
 *
 * <p>Why: src/site/markdown/decisions.md#every-role-is-a-variable-and-a-tidy-build-drops-what-is-brought-along
 */
public final class Question {
  private final Assessor assessor;
  private final Map<Role, List<Part>> options;
  private final Map<String, List<Part>> twins;

  private Question(
      Assessor assessor, Map<Role, List<Part>> options, Map<String, List<Part>> twins) {
    this.assessor = assessor;
    this.options = options;
    this.twins = twins;
  }

  /** The parts of a catalogue that a scenario leaves open. */
  public static Question of(Catalog catalog, Assessor assessor) {
    var options = new EnumMap<Role, List<Part>>(Role.class);
    var twins = new TreeMap<String, List<Part>>();
    var fixed = fixed(catalog, assessor);
    for (var role : Role.values()) {
      var each = Duplicates.of(role, options(role, catalog, assessor, fixed), assessor);
      options.put(role, List.copyOf(each.keySet()));
      each.forEach((part, others) -> {
        if (!others.isEmpty()) {
          twins.put(part.id(), List.copyOf(others));
        }
      });
    }
    return new Question(
        assessor, Collections.unmodifiableMap(options), Collections.unmodifiableMap(twins));
  }

  private static FixedParts fixed(Catalog catalog, Assessor assessor) {
    var fixed = FixedParts.of(assessor.scenario(), catalog);
    return assessor.aboard().map(quad -> fixed.with(quad.kept())).orElse(fixed);
  }

  private static List<Part> options(
      Role role, Catalog catalog, Assessor assessor, FixedParts fixed) {
    if (!fixed.haveRoles()) {
      // What every build must have may be in none.
      return List.of();
    }
    if (!fixed.in(role).isEmpty()) {
      return fixed.in(role);
    }
    if (assessor.aboard().filter(quad -> quad.keeps(role)).isPresent()) {
      return List.of();
    }
    var scenario = assessor.scenario();
    var lumped = scenario.lumped();
    if (lumped.contains(role)) {
      return List.of();
    }
    var fitting = new ArrayList<Part>();
    var soldOut = new ArrayList<Part>();
    for (var part : catalog.parts()) {
      if (catalog.roles(part).contains(role)
          && scenario.permits(role, part)
          && part.fills().stream().noneMatch(lumped::contains)
          && !fixed.areDisplacedBy(part)) {
        (assessor.purse().canHave(part, role.pieces()) ? fitting : soldOut).add(part);
      }
    }
    if (Role.EXTRAS.contains(role) && !scenario.wants(role)) {
      return List.of();
    }
    // Where nothing can be had, the limit names what is short; an empty role would say less.
    return fitting.isEmpty() ? soldOut : fitting;
  }

  public Assessor assessor() {
    return assessor;
  }

  /** The same parts ranked by something else. */
  public Question with(Purpose purpose) {
    return new Question(assessor.with(purpose), options, twins);
  }

  /** Whether another question is about the same parts. */
  public boolean hasPartsOf(Question other) {
    return options == other.options;
  }

  /** Parts that may fill a role, in the order of ids. */
  public List<Part> options(Role role) {
    return options.getOrDefault(role, List.of());
  }

  /** Parts that a part stands for, since they are the same in every number: they are no options of their own. */
  public List<Part> twins(Part part) {
    return twins.getOrDefault(part.id(), List.of());
  }

  /**
   * Passes an assessment on that is to be part of an answer.
   *
   * @throws IllegalStateException if it lacks a fixed part, or has one that is excluded, not allowed or not wished for: a bug of ours
   */
  public Assessment held(Assessment answer) {
    var scenario = assessor.scenario();
    var parts = answer.build().parts();
    var ids = parts.values().stream().map(Part::id).collect(Collectors.toSet());
    for (var id : scenario.choice().fixedIds()) {
      if (!ids.contains(id)) {
        throw new IllegalStateException("A build is to have " + id + ": " + answer.build());
      }
    }
    parts.forEach((role, part) -> {
      if (!assessor.permits(role, part)) {
        throw new IllegalStateException("A build is not to have %s as %s: %s"
            .formatted(part.id(), role.label(), answer.build()));
      }
    });
    return answer;
  }

  /** Whether the scenario lets a build have its parts, by their ids and by what they say; fixed ones may be missing. */
  public boolean permits(Build build) {
    return build.parts().entrySet().stream()
        .allMatch(entry -> assessor.permits(entry.getKey(), entry.getValue()));
  }

  /** Ways to fill the roles, counting those that cannot fit. */
  public double combinations() {
    var combinations = 1.0;
    for (var role : Role.values()) {
      combinations *= Math.max(1, options(role).size());
    }
    return combinations;
  }

  /** A build of one part a role, without what another part brings along. */
  public static Build tidy(Map<Role, Part> chosen) {
    return Build.of(chosen).tidy();
  }
}
