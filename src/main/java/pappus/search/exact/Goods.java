package pappus.search.exact;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
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

  private final Question question;
  private final Assessor assessor;
  private final Begun nothing;
  private final Map<Role, Map<String, Begun>> alone = new EnumMap<>(Role.class);
  private final Map<String, Map<Role, List<Branch>>> trees = new ConcurrentHashMap<>();
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
    for (var role : ORDER) {
      var options = question.options(role);
      var adds = new Branch.Adds(
          part -> grams(role, part),
          part -> variance(role, part),
          part -> assessor.leastWatts(part, battery),
          part -> cents(role, part));
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

  /** Whether some option of a role brings another role along. */
  boolean mayBring(Role role, Role along) {
    return question.options(role).stream().anyMatch(part -> part.fills().contains(along));
  }

  /** Rules that can be asked for the first time when a role is decided after others. */
  List<CompatibilityRule> newlyDecided(Role role, Set<Role> before) {
    return assessor.rules().stream()
        .filter(rule -> rule.reads().contains(role)
            && rule.reads().stream().allMatch(read -> read == role || before.contains(read)))
        .toList();
  }
}
