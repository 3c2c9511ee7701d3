package pappus.order;

import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Role;

/**
 * An order as it was told, some of which came.
 *
 * @param bags who was to get what, by group
 * @param bought what was to be paid for parts, and what was paid for those that came before
 * @param postageCents of all shops
 */
public record Earlier(List<Bag> bags, List<Bought> bought, long postageCents) {
  /** Who has these as they were ordered keeps the aircraft; antennas, leads and what is screwed on may be others. */
  public static final Set<Role> MAIN = Collections.unmodifiableSet(EnumSet.of(
      Role.FRAME,
      Role.MOTOR,
      Role.PROPELLER,
      Role.BATTERY,
      Role.BOARD,
      Role.TRANSMITTER,
      Role.CAMERA,
      Role.RECEIVER));

  public Earlier {
    bags = List.copyOf(bags);
    bought = List.copyOf(bought);
  }

  /**
   * Learners of a group who were to get the same build.
   *
   * @param name what the build was called
   * @param roles ids of its parts by role
   */
  public record Bag(String group, String name, int learners, Map<String, String> roles) {
    public Bag {
      roles = Map.copyOf(roles);
    }
  }

  /**
   * What was paid for pieces of a part.
   *
   * @param cents for all of them
   */
  public record Bought(String part, int pieces, long cents) {}

  /** Whether all main parts of two builds are the same. */
  public static boolean isKept(Build one, Build other) {
    return MAIN.stream()
        .allMatch(role -> one.part(role).map(Part::id).equals(other.part(role).map(Part::id)));
  }

  /** What came, at the price it was ordered for; what was not ordered cost nothing. */
  List<Bought> paid(List<Order.Leftover> came) {
    var pieces = new HashMap<String, Integer>();
    var cents = new HashMap<String, Long>();
    for (var one : bought) {
      pieces.merge(one.part, one.pieces, Integer::sum);
      cents.merge(one.part, one.cents, Long::sum);
    }
    var sums = new TreeMap<String, Integer>();
    came.forEach(one -> sums.merge(one.part(), one.pieces(), Integer::sum));
    return sums.entrySet().stream()
        .map(one -> {
          var ordered = pieces.getOrDefault(one.getKey(), 0);
          var paid = Math.min(ordered, one.getValue());
          var all = cents.getOrDefault(one.getKey(), 0L);
          return new Bought(
              one.getKey(), one.getValue(), paid == 0 ? 0 : (all * paid + ordered - 1) / ordered);
        })
        .toList();
  }
}
