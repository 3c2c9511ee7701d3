package pappus.search.exact;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import pappus.assessment.Assessor;
import pappus.assessment.Begun;
import pappus.catalog.Battery;
import pappus.catalog.Board;
import pappus.catalog.Build;
import pappus.catalog.Part;
import pappus.catalog.Role;
import pappus.compatibility.CompatibilityRule;
import pappus.search.Question;

/** The accessories of a question as trees, and which rule can be asked once which role is decided. */
final class Goods {
  /** In this order accessories are decided: what draws power first, what brings others along before those. */
  static final List<Role> ORDER = List.of(
      Role.BOARD,
      Role.TRANSMITTER,
      Role.CAMERA,
      Role.RECEIVER,
      Role.GPS,
      Role.PAYLOAD_CAMERA,
      Role.BUZZER,
      Role.VIDEO_ANTENNA,
      Role.RADIO_ANTENNA,
      Role.LEAD,
      Role.CAPACITOR);

  /** From this place in the order on, no more consumers of power follow. */
  static final int CONSUMERS = 7;

  static final Set<Role> MAIN = Set.of(Role.FRAME, Role.MOTOR, Role.PROPELLER, Role.BATTERY);

  private static final Set<Role> BOARD_FOLLOWERS = Set.of(
      Role.TRANSMITTER,
      Role.CAMERA,
      Role.VIDEO_ANTENNA,
      Role.RECEIVER,
      Role.RADIO_ANTENNA,
      Role.BUZZER);

  private final Question question;
  private final Assessor assessor;
  private final Begun nothing;
  private final Map<Role, Map<String, Begun>> alone = new EnumMap<>(Role.class);
  private final Map<String, Map<Role, List<Branch>>> trees = new ConcurrentHashMap<>();
  private final Map<Set<Role>, List<List<CompatibilityRule>>> rulesByStage =
      new ConcurrentHashMap<>();
  private final OptionalDouble leastOwnLoss;

  Goods(Question question) {
    this.question = question;
    this.assessor = question.assessor();
    this.nothing = assessor.begun(Build.empty());
    for (var role : Role.values()) {
      var known = new HashMap<String, Begun>();
      for (var part : question.options(role)) {
        known.put(part.id(), assessor.begun(Build.empty().with(role, part)));
      }
      alone.put(role, known);
    }
    this.leastOwnLoss = question.options(Role.BOARD).stream()
        .map(board -> assessor.ownLoss((Board) board))
        .filter(OptionalDouble::isPresent)
        .mapToDouble(OptionalDouble::getAsDouble)
        .min();
  }

  Question question() {
    return question;
  }

  Assessor assessor() {
    return assessor;
  }

  /** What a build without parts weighs. */
  Begun nothing() {
    return nothing;
  }

  /** Mass that a part in a role adds to any build at least, g. */
  double grams(Role role, Part part) {
    return alone(role, part).grams() - nothing.grams();
  }

  private double variance(Role role, Part part) {
    return Math.max(0, alone(role, part).variance() - nothing.variance());
  }

  private long cents(Role role, Part part) {
    return Math.max(0, alone(role, part).cents() - nothing.cents());
  }

  private Begun alone(Role role, Part part) {
    return Objects.requireNonNull(alone.getOrDefault(role, Map.of()).get(part.id()));
  }

  /** Trees of a role's parts: boards with a part-load loss of their own apart from the others. */
  List<Branch> trees(Role role, Battery battery) {
    // What a consumer draws at least depends on whether it may hang on the pack.
    var key = battery.cellsInSeries() + " " + battery.chemistry();
    return trees.computeIfAbsent(key, asked -> trees(battery)).getOrDefault(role, List.of());
  }

  private Map<Role, List<Branch>> trees(Battery battery) {
    var all = new EnumMap<Role, List<Branch>>(Role.class);
    // Followers first: what follows of need counts with its bringer.
    for (var place = ORDER.size() - 1; place >= 0; place--) {
      var role = ORDER.get(place);
      var options = question.options(role);
      var own = own(role, battery);
      var adds = new Branch.Adds(
          part -> own.grams().applyAsDouble(part)
              + following(role, part, all).mapToDouble(Branch::grams).sum(),
          part -> own.variance().applyAsDouble(part)
              + following(role, part, all).mapToDouble(Branch::variance).sum(),
          part -> own.watts().applyAsDouble(part)
              + following(role, part, all).mapToDouble(Branch::watts).sum(),
          part -> own.cents().applyAsLong(part)
              + following(role, part, all).mapToLong(Branch::cents).sum());
      var groups = role == Role.BOARD
          ? List.of(
              options.stream().filter(board -> !hasOwnLoss(board)).toList(),
              options.stream().filter(this::hasOwnLoss).toList())
          : List.of(options);
      all.put(
          role,
          groups.stream()
              .filter(group -> !group.isEmpty())
              .map(group -> Branch.of(group, adds))
              .toList());
    }
    return all;
  }

  /** What a part of a role adds by itself to a build with a battery, whatever else is chosen. */
  Branch.Adds own(Role role, Battery battery) {
    return new Branch.Adds(
        part -> grams(role, part),
        part -> variance(role, part),
        part -> assessor.leastWatts(part, battery),
        part -> cents(role, part));
  }

  /** The least of each role that a part leaves to be filled, of those that it might have brought along. */
  private static Stream<Branch> following(Role role, Part part, Map<Role, List<Branch>> trees) {
    return followers(role).stream()
        .filter(follower -> !part.fills().contains(follower))
        // Followers of a follower count with it, unless the part is that follower too.
        .filter(follower -> followers(role).stream()
            .noneMatch(between ->
                followers(between).contains(follower) && !part.fills().contains(between)))
        .flatMap(follower -> trees.getOrDefault(follower, List.of()).stream().limit(1));
  }

  /** Roles that parts of a role may bring along, directly or by what they bring. */
  static Set<Role> followers(Role role) {
    return switch (role) {
      case BOARD -> BOARD_FOLLOWERS;
      case TRANSMITTER -> Set.of(Role.CAMERA, Role.VIDEO_ANTENNA);
      case RECEIVER -> Set.of(Role.RADIO_ANTENNA);
      default -> Set.of();
    };
  }

  private boolean hasOwnLoss(Part board) {
    return assessor.ownLoss((Board) board).isPresent();
  }

  /** Least loss of the boards of a branch, all with or all without one of their own. */
  OptionalDouble leastLoss(Branch boards) {
    var one = boards;
    while (one.low() != null) {
      one = one.low();
    }
    return hasOwnLoss(Objects.requireNonNull(one.part())) ? leastOwnLoss : OptionalDouble.empty();
  }

  /** Rules that can be asked for the first time at each stage, if some roles are decided before all of them. */
  List<List<CompatibilityRule>> rulesByStage(Set<Role> before) {
    return rulesByStage.computeIfAbsent(Set.copyOf(before), start -> {
      var decided = EnumSet.noneOf(Role.class);
      decided.addAll(start);
      var stages = new ArrayList<List<CompatibilityRule>>();
      for (var role : ORDER) {
        decided.add(role);
        stages.add(assessor.rules().stream()
            .filter(rule -> rule.reads().contains(role) && decided.containsAll(rule.reads()))
            .toList());
      }
      return List.copyOf(stages);
    });
  }
}
