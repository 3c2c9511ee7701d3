package pappus.search.exact;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import pappus.part.Board;
import pappus.part.Part;
import pappus.part.Role;

/**
 * Accessories of each role in equivalence classes: what a part goes with, what it leaves to be filled and what mounting
 * it takes is the same for all parts of a class, so that only numbers tell them apart.
 */
final class KitClasses {
  private final Map<Role, List<Part>> samples = new EnumMap<>(Role.class);
  private final Map<Role, int[]> classOf = new EnumMap<>(Role.class);

  KitClasses(Goods goods) {
    for (var role : Goods.ORDER) {
      var options = goods.options(role);
      var numbers = new HashMap<Object, Integer>();
      var firsts = new ArrayList<Part>();
      var of = new int[options.size()];
      for (var option = 0; option < of.length; option++) {
        var part = options.get(option);
        of[option] = numbers.computeIfAbsent(signature(goods, role, part), fresh -> {
          firsts.add(part);
          return firsts.size() - 1;
        });
      }
      samples.put(role, firsts);
      classOf.put(role, of);
    }
  }

  private static Object signature(Goods goods, Role role, Part part) {
    var signature = new ArrayList<Object>();
    for (var before : Role.values()) {
      if (before == Role.BATTERY || before == Role.FRAME || before.followers().contains(role)) {
        signature.add(goods.pairings().of(before, role).otherSort(part));
      }
    }
    signature.add(goods.isMounted(role) ? goods.mountingSort(part) : -1);
    signature.add(part.fills());
    if (part instanceof Board board) {
      signature.add(Optional.ofNullable(board.plug()));
      signature.add(goods.lossSort(board));
    }
    for (var follower : role.followers()) {
      if (!goods.options(follower).isEmpty()) {
        signature.add(goods.pairings().of(role, follower).sort(part));
        signature.add(goods.pieces(role, part, follower));
      }
    }
    return signature;
  }

  /** One part of each class of a role. */
  List<Part> samples(Role role) {
    return Objects.requireNonNull(samples.get(role));
  }

  /** Row: option of the role. Its class. */
  int[] classOf(Role role) {
    return Objects.requireNonNull(classOf.get(role));
  }
}
