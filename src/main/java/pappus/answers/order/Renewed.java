package pappus.answers.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pappus.order.Ware;
import pappus.order.plan.Revision;
import pappus.part.Part;
import pappus.part.Role;

/**
 * What a revision means for one learner.
 *
 * @param number of the learner in the group, from 1
 * @param changes parts that are others than were ordered
 * @param buys what has to be bought for this learner's bag
 */
record Renewed(Revision.Kept kept, int number, List<Change> changes, List<Anew> buys) {
  /** A part in the place of another; absent where there was or is none. */
  record Change(Role role, Optional<Part> from, Optional<Part> to) {}

  /**
   * Pieces of a part to buy.
   *
   * @param cents in proportion to the price of a unit
   */
  record Anew(Part part, int pieces, long cents) {}

  /**
   * Everybody, in the order of the earlier bags. What is on the shelf goes to those who keep their builds first, and what it
   * does not suffice for is bought.
   */
  static List<Renewed> of(Revision revision) {
    var learners = revision.learners();
    var left = new LinkedHashMap<Ware, Integer>();
    var buys = new LinkedHashMap<Integer, List<Anew>>();
    IntStream.range(0, learners.size())
        .boxed()
        .sorted(Comparator.comparing(i -> !learners.get(i).keepsMain()))
        .forEach(i -> buys.put(i, buys(learners.get(i), left)));
    var numbers = new LinkedHashMap<Integer, Integer>();
    var renewed = new ArrayList<Renewed>();
    for (var i = 0; i < learners.size(); i++) {
      var kept = learners.get(i);
      renewed.add(new Renewed(
          kept,
          numbers.merge(kept.bag().group(), 1, Integer::sum),
          changes(kept),
          buys.getOrDefault(i, List.of())));
    }
    return renewed;
  }

  private static List<Anew> buys(Revision.Kept kept, Map<Ware, Integer> left) {
    var buys = new ArrayList<Anew>();
    for (var need : kept.column().needs()) {
      var ware = need.ware();
      var there = left.getOrDefault(ware, ware.leftover());
      var taken = Math.min(there, need.pieces());
      left.put(ware, there - taken);
      if (taken < need.pieces()) {
        var more = need.pieces() - taken;
        buys.add(new Anew(ware.part(), more, ware.shareOfUnit(more)));
      }
    }
    return buys;
  }

  private static List<Change> changes(Revision.Kept kept) {
    var before = kept.bag().build();
    var now = kept.column().build();
    return Stream.of(Role.values())
        .map(role -> new Change(role, before.part(role), now.part(role)))
        .filter(change -> !change.from.map(Part::id).equals(change.to.map(Part::id)))
        .toList();
  }

  /** Whether two learners are told the same. */
  boolean isLike(Renewed other) {
    return kept.bag().equals(other.kept.bag())
        && changes.equals(other.changes)
        && buys.equals(other.buys);
  }
}
