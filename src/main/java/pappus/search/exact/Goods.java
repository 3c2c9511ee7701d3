package pappus.search.exact;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import pappus.assessment.Assessor;
import pappus.assessment.PartialBuild;
import pappus.assessment.flight.Ratings;
import pappus.compatibility.CompatibilityRule;
import pappus.part.Battery;
import pappus.part.Board;
import pappus.part.Build;
import pappus.part.Frame;
import pappus.part.Lead;
import pappus.part.Part;
import pappus.part.Role;
import pappus.physics.flight.Aircraft;
import pappus.search.Question;

/** The accessories of a question: what each adds, which go together, and which rule can be asked when. */
final class Goods {
  /** In this order accessories are decided. */
  static final List<Role> ORDER = Role.ACCESSORIES;

  /** From this place in the order on, the way from the pack to the motors is known. */
  static final int WIRED = decided(Role.Turn.WIRING);

  /** From this place in the order on, no more consumers of power follow. */
  static final int CONSUMERS = decided(Role.Turn.DRIVEN);

  /** Boards of which the ripples over that of the law differ by less are bounded together. */
  static final double LOSSES = 0.01;

  private final Question question;
  private final Assessor assessor;
  private final Map<Role, List<Part>> options = new EnumMap<>(Role.class);
  private final Pairings pairings;
  private final Mountings mountings;
  private final Map<Object, Integer> mountingSorts = new ConcurrentHashMap<>();
  private final AtomicInteger mountingSortCount = new AtomicInteger();
  private final PartialBuild nothing;
  private final Map<Role, Map<String, PartialBuild>> alone = new EnumMap<>(Role.class);
  private final Map<String, String> kinds = new ConcurrentHashMap<>();
  private final Map<Set<Role>, List<List<CompatibilityRule>>> rulesByStage =
      new ConcurrentHashMap<>();
  private final List<OptionalDouble> losses;
  private final Map<String, Double> mostWatts = new ConcurrentHashMap<>();

  Goods(Question question) {
    this.question = question;
    this.assessor = question.assessor();
    this.pairings = new Pairings(this);
    for (var role : Role.values()) {
      options.put(
          role,
          question.options(role).stream()
              .filter(part -> assessor.ruleBook().mayStillFit(Build.empty().with(role, part)))
              .toList());
    }
    this.mountings = new Mountings(assessor);
    this.nothing = assessor.prospects().begun(Build.empty());
    for (var role : Role.values()) {
      var known = new HashMap<String, PartialBuild>();
      for (var part : options(role)) {
        known.put(part.id(), assessor.prospects().begun(Build.empty().with(role, part)));
      }
      alone.put(role, known);
    }
    this.losses = options(Role.BOARD).isEmpty() ? List.of(OptionalDouble.empty()) : sortsOfLoss();
  }

  private List<OptionalDouble> sortsOfLoss() {
    return options(Role.BOARD).stream()
        .map(this::ownLoss)
        .map(loss -> loss.isEmpty()
            ? loss
            : OptionalDouble.of(LOSSES * Math.floor(loss.getAsDouble() / LOSSES)))
        .distinct()
        .sorted(Comparator.comparingDouble(loss -> loss.orElse(-1)))
        .toList();
  }

  private static int decided(Role.Turn turn) {
    return (int) ORDER.stream().filter(role -> role.turn().compareTo(turn) <= 0).count();
  }

  Question question() {
    return question;
  }

  /** Parts that may fill a role and are not ruled out by themselves, in the order of ids. */
  List<Part> options(Role role) {
    return options.getOrDefault(role, List.of());
  }

  /** Whether there are parts for all that flies. */
  boolean areComplete() {
    var lumped = assessor.scenario().lumped();
    return Role.FLYING.stream()
        .noneMatch(role -> options(role).isEmpty() && !lumped.contains(role));
  }

  Assessor assessor() {
    return assessor;
  }

  Pairings pairings() {
    return pairings;
  }

  /** What a build without parts weighs. */
  PartialBuild nothing() {
    return nothing;
  }

  /** What a part in a role adds by itself to any build with a battery. */
  Adds own(Role role, Part part, Battery battery) {
    var own = own(role, part);
    return own.drawing(assessor.prospects().leastWatts(part, battery));
  }

  /** What a part in a role adds by itself to any build, but for its draw. */
  Adds own(Role role, Part part) {
    var begun = Objects.requireNonNull(alone.getOrDefault(role, Map.of()).get(part.id()));
    return new Adds(
        begun.grams() - nothing.grams(),
        Math.max(0, begun.variance() - nothing.variance()),
        0,
        Math.max(0, begun.cents() - nothing.cents()),
        begun.pieces(),
        part instanceof Lead lead
            ? Ratings.ohm(lead)
            : part instanceof Board board ? Ratings.ohm(board) : 0);
  }

  /** What parts draw at the battery at most that would draw so much on the pack, or behind a regulator. */
  static double atMost(double watts) {
    return watts / Aircraft.DEFAULT_REGULATOR_EFFICIENCY;
  }

  /**
   * What a build with a battery draws beside its motors at most, whatever is taken from after a stage on; at the stage
   * itself nothing is counted.
   */
  double mostWatts(Build build, int stage) {
    var battery = build.battery().orElseThrow();
    var watts = nothing.watts();
    for (var part : build.parts().values()) {
      watts += atMost(assessor.prospects().leastWattsWithMostVideo(part, battery));
    }
    for (var role : ORDER.subList(stage + 1, ORDER.size())) {
      if (!isLeftOut(build, role)) {
        watts += atMost(mostWatts(role, battery));
      }
    }
    return watts;
  }

  /** The most that any option of a role draws on the pack, or behind a regulator. */
  private double mostWatts(Role role, Battery battery) {
    return mostWatts.computeIfAbsent(
        role + kind(battery),
        fresh -> options(role).stream()
            .mapToDouble(part -> assessor.prospects().leastWattsWithMostVideo(part, battery))
            .max()
            .orElse(0));
  }

  /** What rules and draws can tell of a battery: batteries with equal kinds take the same accessories. */
  String kind(Battery battery) {
    return kinds.computeIfAbsent(battery.id(), fresh -> {
      var kind = new StringBuilder();
      kind.append(battery.cellsInSeries()).append(battery.chemistry()).append(battery.connector());
      return kind.append(sorts(Role.BATTERY, battery)).toString();
    });
  }

  /** What rules and mounting can tell of a frame. */
  String kind(Frame frame) {
    return kinds.computeIfAbsent(
        frame.id(),
        fresh -> mountingSorts.computeIfAbsent(
                Mountings.sort(frame), sort -> mountingSortCount.getAndIncrement())
            + sorts(Role.FRAME, frame));
  }

  /** Sorts of a main part against each accessory. */
  private String sorts(Role main, Part part) {
    var sorts = new StringBuilder();
    for (var role : ORDER) {
      var pairing = pairings.of(main, role);
      if (!pairing.isOpen()) {
        sorts.append(' ').append(pairing.sort(part));
      }
    }
    return sorts.toString();
  }

  /** What accessories of any frame have to go with. */
  With with(Battery battery) {
    return new With(battery, null, kind(battery));
  }

  /** What accessories of a build with a battery have to go with. */
  With with(Build build) {
    var battery = build.battery().orElseThrow();
    var frame = build.frame();
    return frame.isEmpty() ? with(battery) : with(battery, frame.get());
  }

  /** What accessories have to go with on a frame. */
  With with(Battery battery, Frame frame) {
    return new With(battery, frame, kind(battery) + " on " + kind(frame));
  }

  /** What accessories have to go with on some frames. */
  With with(Battery battery, Frames.Group group) {
    return group.only() == null ? with(battery) : with(battery, group.only());
  }

  /** Whether a part of a role goes with battery and frame, by all that rules can tell from two parts. */
  boolean goesWith(With with, Role role, Part part) {
    return fits(Role.BATTERY, with.battery(), role, part)
        && (with.frame() == null || fits(Role.FRAME, with.frame(), role, part));
  }

  private boolean fits(Role one, Part part, Role other, Part with) {
    var pairing = pairings.of(one, other);
    return pairing.isOpen() || pairing.fit(part, with);
  }

  /** Mass that a part asks for on a frame that is decided, g. */
  double mountingGrams(With with, Role role, Part part) {
    return with.frame() == null ? 0 : mountings.grams(with.frame(), role, part);
  }

  /** Mass that a transmitter beside a board asks for on a frame that is decided, g. */
  double mountingGrams(With with, Part board, Part transmitter) {
    return with.frame() == null ? 0 : mountings.grams(with.frame(), (Board) board, transmitter);
  }

  /** Whether frames ask for mounting of parts of a role. */
  boolean isMounted(Role role) {
    return role == Role.BOARD || role == Role.TRANSMITTER || role == Role.CAMERA;
  }

  /** Parts of equal sorts ask for the same mass on any frame. */
  int mountingSort(Part part) {
    return mountingSorts.computeIfAbsent(
        Mountings.sort(part), fresh -> mountingSortCount.getAndIncrement());
  }

  /** How many of a follower a part asks for. */
  int pieces(Role role, Part part, Role follower) {
    return Build.empty()
        .with(role, part)
        .with(follower, question.options(follower).get(0))
        .count(follower);
  }

  /** Roles that have to be filled because of a part and are not, each once. */
  List<Role> following(Role role, Part part, Battery battery) {
    var alone = Build.empty().with(Role.BATTERY, battery).with(role, part);
    // Followers of a follower count with it, unless the part is that follower too.
    return role.followers().stream()
        .filter(follower -> !isLeftOut(alone, follower)
            && role.followers().stream()
                .noneMatch(between ->
                    between.followers().contains(follower) && !part.fills().contains(between)))
        .toList();
  }

  /** Whether a tidy build has no part of its own in a role. */
  boolean isLeftOut(Build build, Role role) {
    return question.options(role).isEmpty() || build.bringsAlong(role);
  }

  /** Ripple of a board over that of the law, if something is known of it; empty for other parts. */
  OptionalDouble ownLoss(Part part) {
    return part instanceof Board board
        ? assessor.prospects().rippleShare(board)
        : OptionalDouble.empty();
  }

  /** Least ripple of each sort of boards over that of the law; empty for those by the law. */
  List<OptionalDouble> losses() {
    return losses;
  }

  /** The sort of a board by its ripple. */
  int lossSort(Part board) {
    var loss = ownLoss(board);
    var sort = losses.size() - 1;
    while (sort > 0 && loss.orElse(-1) < losses.get(sort).orElse(-1)) {
      sort--;
    }
    return sort;
  }

  /** Rules that can be asked for the first time at each stage, if some roles are decided before all of them. */
  List<List<CompatibilityRule>> rulesByStage(Set<Role> before) {
    return rulesByStage.computeIfAbsent(Set.copyOf(before), start -> {
      var decided = EnumSet.noneOf(Role.class);
      decided.addAll(start);
      var stages = new ArrayList<List<CompatibilityRule>>();
      for (var role : ORDER) {
        decided.add(role);
        stages.add(assessor.ruleBook().all().stream()
            .filter(rule -> rule.reads().contains(role) && decided.containsAll(rule.reads()))
            .toList());
      }
      return List.copyOf(stages);
    });
  }
}
