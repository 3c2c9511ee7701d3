package pappus.search.exact;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicReference;
import pappus.part.Role;

/** Every {@link Pairing} of a question, worked out when it is first needed. */
final class Pairings {
  private final Goods goods;
  private final Map<Role, Map<Role, AtomicReference<Pairing>>> known;

  Pairings(Goods goods) {
    this.goods = goods;
    var all = new EnumMap<Role, Map<Role, AtomicReference<Pairing>>>(Role.class);
    for (var one : Role.values()) {
      var others = new EnumMap<Role, AtomicReference<Pairing>>(Role.class);
      for (var other : Role.values()) {
        others.put(other, new AtomicReference<>());
      }
      all.put(one, others);
    }
    this.known = Collections.unmodifiableMap(all);
  }

  /** Parts of one role against those of another. */
  Pairing of(Role one, Role other) {
    var place = Objects.requireNonNull(Objects.requireNonNull(known.get(one)).get(other));
    var pairing = place.get();
    if (pairing == null) {
      pairing = new Pairing(goods.assessor(), one, goods.options(one), other, goods.options(other));
      place.set(pairing);
    }
    return pairing;
  }
}
