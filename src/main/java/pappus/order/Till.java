package pappus.order;

import java.util.ArrayList;
import java.util.List;

/**
 * What parts bought together cost: the cheapest lots first, and of all sets of shops to do without the one that costs least
 * with its postage.
 */
public final class Till {
  private final List<Ware> wares;
  private final List<Postage> postages;

  /**
   * What a shop asks for sending.
   *
   * @param cents at most
   * @param freeFrom cents from which on it is nothing
   */
  public record Postage(String shop, long cents, long freeFrom) {
    long of(long sum) {
      return sum == 0 || sum >= freeFrom ? 0 : cents;
    }
  }

  /**
   * A bill.
   *
   * @param buys by ware, then by price
   * @param postage by shop, cents
   * @param cents all of it
   */
  public record Bill(List<Lot.Buy> buys, List<Long> postage, long cents) {
    public Bill {
      buys = List.copyOf(buys);
      postage = List.copyOf(postage);
    }

    /** Sum of postage, cents. */
    public long postageCents() {
      return postage.stream().mapToLong(cents -> cents).sum();
    }
  }

  Till(List<Ware> wares, List<Postage> postages) {
    this.wares = List.copyOf(wares);
    this.postages = List.copyOf(postages);
  }

  /** Names of the shops, in the order of the order. */
  public List<String> shops() {
    return postages.stream().map(Postage::shop).toList();
  }

  /** Whether what one ware costs never depends on what is bought of others but for one shop's postage. */
  public boolean isSeparable() {
    return postages.size() <= 1;
  }

  /**
   * What so many units of one ware cost, without postage; what is not in stock costs as much as the dearest lot, so that
   * it is never a gain to have too little.
   */
  public long cents(Ware ware, int units) {
    if (units == 0) {
      return 0;
    }
    var cents = 0L;
    var left = units;
    for (var lot : ware.lots()) {
      var taken = Math.min(left, lot.units());
      cents += lot.buy(taken).cents();
      left -= taken;
      if (left == 0) {
        return cents;
      }
    }
    return cents
        + left
            * (ware.lots().isEmpty()
                ? 0
                : ware.lots().get(ware.lots().size() - 1).cents());
  }

  /** With postage, where wares are separable. */
  public long withPostage(long sum, long elsewhere) {
    return postages.isEmpty() ? sum : sum + postages.get(0).of(sum - elsewhere);
  }

  /** What is paid in all for so many units of each ware. */
  public long cents(int[] units) {
    if (postages.isEmpty()) {
      var sum = 0L;
      for (var ware : wares) {
        sum += cents(ware, units[ware.index()]);
      }
      return sum;
    }
    var best = Long.MAX_VALUE;
    for (var without = 0; without < 1 << postages.size(); without++) {
      best = Math.min(best, cents(units, without));
    }
    return best;
  }

  /** The bill for so many units of each ware, all in stock. */
  public Bill bill(int[] units) {
    var least = 0;
    for (var without = 1; without < 1 << postages.size(); without++) {
      if (cents(units, without) < cents(units, least)) {
        least = without;
      }
    }
    var buys = new ArrayList<Lot.Buy>();
    var sums = new long[postages.size()];
    var all = 0L;
    for (var ware : wares) {
      for (var buy : buys(ware, units[ware.index()], least)) {
        buys.add(buy);
        all += buy.cents();
        if (buy.lot().shop() >= 0) {
          sums[buy.lot().shop()] += buy.cents();
        }
      }
    }
    var postage = new ArrayList<Long>();
    for (var shop = 0; shop < sums.length; shop++) {
      postage.add(postages.get(shop).of(sums[shop]));
    }
    return new Bill(
        buys, postage, all + postage.stream().mapToLong(cents -> cents).sum());
  }

  private static List<Lot.Buy> buys(Ware ware, int units, int without) {
    var buys = new ArrayList<Lot.Buy>();
    var left = units;
    // What the other shops lack is bought of those to do without.
    for (var isMissed : List.of(false, true)) {
      for (var lot : ware.lots()) {
        var misses = lot.shop() >= 0 && (without >> lot.shop() & 1) == 1;
        var taken = misses == isMissed ? Math.min(left, lot.units()) : 0;
        if (taken > 0) {
          buys.add(lot.buy(taken));
          left -= taken;
        }
      }
    }
    return buys;
  }

  private long cents(int[] units, int without) {
    var sums = new long[postages.size()];
    var all = 0L;
    for (var ware : wares) {
      var wanted = units[ware.index()];
      if (wanted == 0) {
        continue;
      }
      var got = 0;
      for (var buy : buys(ware, wanted, without)) {
        all += buy.cents();
        got += buy.units();
        if (buy.lot().shop() >= 0) {
          sums[buy.lot().shop()] += buy.cents();
        }
      }
      if (got < wanted && !ware.lots().isEmpty()) {
        all += (wanted - got) * ware.lots().get(ware.lots().size() - 1).cents();
      }
    }
    for (var shop = 0; shop < sums.length; shop++) {
      all += postages.get(shop).of(sums[shop]);
    }
    return all;
  }
}
