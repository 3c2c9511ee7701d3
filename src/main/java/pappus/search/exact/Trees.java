package pappus.search.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import pappus.part.Build;
import pappus.part.Lead;
import pappus.part.Part;
import pappus.part.Role;

/** Accessories as trees, of what goes with parts decided. Safe for several threads. */
final class Trees {
  private final Goods goods;
  private final KitRelaxations kits;
  private final Map<String, Map<String, Optional<Adds>>> least = new ConcurrentHashMap<>();
  private final Map<String, List<Branch>> trees = new ConcurrentHashMap<>();

  Trees(Goods goods, KitRelaxations kits) {
    this.goods = goods;
    this.kits = kits;
  }

  /**
   * Trees of what can fill a role of a build with a battery, of all that goes with each part decided; boards with a
   * known ripple of their own apart from the others, leads by their gauge. Empty if nothing does.
   */
  List<Branch> of(Role role, Build build) {
    var with = goods.with(build);
    var pairs = new ArrayList<Map.Entry<Pairing, Part>>();
    var key = new StringBuilder(with.kind()).append(role).append(build.count(role));
    build.parts().forEach((decided, part) -> {
      var pairing = goods.pairings().of(decided, role);
      if (decided != Role.BATTERY && decided != Role.FRAME && !pairing.isOpen()) {
        pairs.add(Map.entry(pairing, part));
        key.append(' ').append(decided).append(pairing.sort(part));
      }
    });
    var beside = role == Role.TRANSMITTER && build.board().isPresent();
    if (beside) {
      key.append(" beside ").append(goods.mountingSort(build.board().get()));
    }
    return trees.computeIfAbsent(key.toString(), fresh -> {
      var leaves = new ArrayList<Branch.Leaf>();
      for (var part : goods.options(role)) {
        if (pairs.stream().allMatch(entry -> entry.getKey().fit(entry.getValue(), part))) {
          var mounting = beside ? goods.mountingGrams(with, build.board().get(), part) : 0;
          least(role, part, with)
              .ifPresent(adds -> leaves.add(new Branch.Leaf(
                  part,
                  adds.times(build.count(role)).heavier(mounting),
                  goods.ownLoss(part),
                  build.count(role)
                      * goods
                          .assessor()
                          .prospects()
                          .leastWattsWithMostVideo(part, with.battery()))));
        }
      }
      return leaves.stream()
          .collect(Collectors.groupingBy(Trees::group, TreeMap::new, Collectors.toList()))
          .values()
          .stream()
          .map(Branch::of)
          .toList();
    });
  }

  /** Boards with a ripple of their own are looked at apart, and leads that carry as much together. */
  private static int group(Branch.Leaf leaf) {
    return leaf.part() instanceof Lead lead ? lead.gauge() : leaf.loss().isEmpty() ? 0 : 1;
  }

  /**
   * What a part adds at least, with the least of each role that it leaves to be filled, of those that it might have
   * brought along; empty if none of those goes with it.
   */
  private Optional<Adds> least(Role role, Part part, With with) {
    var known = least.computeIfAbsent(with.kind() + role, asked -> new ConcurrentHashMap<>());
    var there = known.get(part.id());
    if (there != null) {
      return there;
    }
    var adds = goods.goesWith(with, role, part)
        ? kits.following(with, role, part)
            .map(following -> goods
                .own(role, part, with.battery())
                .heavier(goods.mountingGrams(with, role, part))
                .plus(following))
        : Optional.<Adds>empty();
    known.put(part.id(), adds);
    return adds;
  }
}
