package pappus.order;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pappus.quantity.Require;

/** Several builds bought together; all amounts are in the currency of the catalogue. */
public record Order(
    @JsonPropertyDescription(
        "Short name, 1 to 64 small letters, digits and hyphens; results go to a folder of this name.")
    String name,

    @JsonPropertyDescription("What it is about, for people; absent: nothing is said of it.")
    @Nullable
    String note,

    @JsonPropertyDescription(
        "The most that all of it may cost, spares and postage included, 0 to 1000000.")
    BigDecimal budget,

    @JsonPropertyDescription(
        "Who is to fly what, 1 to 60 groups of learners; 200 learners at most.")
    List<Group> groups,

    @JsonPropertyDescription(
        "Where parts are bought, 4 shops at most; absent: as the catalogue and its shelf say.")
    @Nullable
    List<Store> shops,

    @JsonPropertyDescription("What is cheaper if more of it is bought; absent: nothing is.")
    @Nullable
    List<PriceStep> priceSteps,

    @JsonPropertyDescription(
        "What is on the shelf beside what the catalogue's shelf tells; absent: nothing.")
    @Nullable
    List<Leftover> leftovers,

    @JsonPropertyDescription(
        "What is bought beyond what flies, in the place of what scenarios buy beside a build; absent: no spares.")
    @Nullable
    List<CommonSpare> spares,

    @JsonPropertyDescription("What several builds are to have the same; absent: nothing.") @Nullable
    List<Sameness> same,

    @JsonPropertyDescription("What comes first; absent: worst.") @Nullable
    Aim aim,

    @JsonPropertyDescription(
        "Thousandths of the sum of shares that less money and fewer kinds of parts may cost, 0 to 200; absent: 5.")
    @Nullable
    Integer giveUp) {
  /** Name of its schema. */
  public static final String SCHEMA = "order";

  /** What the only shop is called of an order that names none, where a list of stock is given for it. */
  static final String ONLY_SHOP = "shop";

  private static final int MOST_GROUPS = 60;
  private static final int MOST_LEARNERS = 200;
  private static final int MOST_SHOPS = 4;
  private static final int USUAL_GIVE_UP = 5;

  public Order {
    word("name", name);
    Amount.require("budget", budget);
    groups = Require.notEmpty("groups", Require.list("groups", groups));
    Require.inRange("groups", groups.size(), 1, MOST_GROUPS);
    shops = shops == null ? null : Require.notEmpty("shops", Require.list("shops", shops));
    priceSteps = priceSteps == null ? null : Require.list("priceSteps", priceSteps);
    leftovers = leftovers == null ? null : Require.list("leftovers", leftovers);
    spares = spares == null ? null : Require.list("spares", spares);
    same = same == null ? null : Require.list("same", same);
    if (giveUp != null) {
      Require.inRange("giveUp", giveUp, 0, 200);
    }
    once("groups", groups.stream().map(Group::name).toList());
    if (shops != null) {
      Require.inRange("shops", shops.size(), 1, MOST_SHOPS);
      once("shops", shops.stream().map(Store::name).toList());
    }
    var learners = groups.stream().mapToInt(Group::pieces).sum();
    if (learners > MOST_LEARNERS) {
      Require.refuse("groups must have at most %s pieces in all, but have %s."
          .formatted(MOST_LEARNERS, learners));
    }
    if (aim == Aim.THRIFT && groups.stream().anyMatch(group -> group.leastShare() == null)) {
      Require.refuse(
          "groups must each have a leastShare where the aim is thrift, but one has none.");
    }
  }

  /** A word that may be a folder's, or what follows a # on the command line. */
  static void word(String field, @Nullable String word) {
    Require.text(field, word);
    if (word == null || !word.matches("[a-z][a-z0-9-]{0,63}")) {
      Require.refuse(
          "%s must be 1 to 64 small letters, digits and hyphens, a letter first, but is %s."
              .formatted(field, word));
    }
  }

  private static void once(String field, List<String> names) {
    var seen = new HashSet<String>();
    for (var name : names) {
      if (!seen.add(name)) {
        Require.refuse(
            "%s must each have a name of its own, but two are %s.".formatted(field, name));
      }
    }
  }

  /** What comes first. */
  public enum Aim {
    /** The worst share, then the sum of shares. */
    @JsonProperty("worst")
    WORST,
    /** The sum of shares. */
    @JsonProperty("total")
    TOTAL,
    /** Money, where each has its least share. */
    @JsonProperty("thrift")
    THRIFT
  }

  /** Learners who want the same. */
  public record Group(
      @JsonPropertyDescription(
          "What it is called, 1 to 64 small letters, digits and hyphens; its own among the groups.")
      String name,

      @JsonPropertyDescription(
          "What each of them wants: a scenario's file, beside the order. What it buys beside a build does not count here.")
      String scenario,

      @JsonPropertyDescription("How many they are, 1 to 200.")
      int pieces,

      @JsonPropertyDescription(
          "The most that each may cost, by the price of the pieces in it, without spares and postage, 0 to 1000000; absent: the scenario's, else no bound.")
      @Nullable
      BigDecimal budget,

      @JsonPropertyDescription(
          "Percent of the best flight that each is to have at least, 0 to 100; absent: no bound.")
      @Nullable
      Double leastShare) {
    public Group {
      word("name", name);
      Require.text("scenario", scenario);
      Require.inRange("pieces", pieces, 1, MOST_LEARNERS);
      if (budget != null) {
        Amount.require("budget", budget);
      }
      if (leastShare != null) {
        Require.inRange("leastShare", leastShare, 0, 100);
      }
    }

    /** In millionths of the best. */
    public long leastMillionths() {
      return leastShare == null ? 0 : Math.round(leastShare * 10_000);
    }
  }

  /** A shop. */
  public record Store(
      @JsonPropertyDescription(
          "What it is called, 1 to 64 small letters, digits and hyphens; its own among the shops.")
      String name,

      @JsonPropertyDescription(
          "What it has: a CSV file beside the order with columns id, stock in selling units, and price of one. Of a kind that any shop lists, what none lists cannot be had; of others there is as much as wanted at the catalogue's price.")
      String stock,

      @JsonPropertyDescription("What it asks for sending, 0 to 1000000; absent: nothing.") @Nullable
      BigDecimal postage,

      @JsonPropertyDescription(
          "From which sum on it asks nothing for sending, 0 to 1000000; absent: never.")
      @Nullable
      BigDecimal freeFrom) {
    public Store {
      word("name", name);
      Require.text("stock", stock);
      if (postage != null) {
        Amount.require("postage", postage);
      }
      if (freeFrom != null) {
        Amount.require("freeFrom", freeFrom);
        if (postage == null) {
          Require.refuse("freeFrom must be left out where there is no postage, but is there.");
        }
      }
    }
  }

  /** A price of a part for so many or more. */
  public record PriceStep(
      @JsonPropertyDescription("Id of the part.") String part,

      @JsonPropertyDescription("Selling units from which on it holds, 2 to 100000.")
      int fromUnits,

      @JsonPropertyDescription("Price of one selling unit then, 0 to 1000000.")
      BigDecimal price,

      @JsonPropertyDescription("The shop that sells so; absent: every one that has the part.")
      @Nullable
      String shop) {
    public PriceStep {
      Require.id("part", part);
      Require.inRange("fromUnits", fromUnits, 2, 100_000);
      Amount.require("price", price);
    }
  }

  /** Parts that are there. */
  public record Leftover(
      @JsonPropertyDescription("Id of the part.") String part,
      @JsonPropertyDescription("Pieces of it, 1 to 10000.") int pieces) {
    public Leftover {
      Require.id("part", part);
      Require.inRange("pieces", pieces, 1, 10_000);
    }
  }

  /**
   * This order where some of it came: that is on the shelf, and the money for it is spent.
   *
   * @param stocks names of shops of which the stock is another now
   */
  Order after(List<Leftover> came, long spentCents, List<String> stocks) {
    var left = new ArrayList<>(leftoversOrNone());
    left.addAll(came);
    var isOnly = shops == null && stocks.contains(ONLY_SHOP);
    return new Order(
        name,
        note,
        budget.subtract(BigDecimal.valueOf(spentCents, 2)).max(BigDecimal.ZERO),
        groups,
        isOnly ? List.of(new Store(ONLY_SHOP, ONLY_SHOP, null, null)) : shops,
        priceSteps,
        left,
        spares,
        same,
        aim,
        giveUp);
  }

  /** Learners in all. */
  public int learners() {
    return groups.stream().mapToInt(Group::pieces).sum();
  }

  /** Where parts are bought. */
  public List<Store> shopsOrNone() {
    return shops == null ? List.of() : shops;
  }

  /** What is cheaper if more of it is bought. */
  public List<PriceStep> stepsOrNone() {
    return priceSteps == null ? List.of() : priceSteps;
  }

  /** What is there. */
  public List<Leftover> leftoversOrNone() {
    return leftovers == null ? List.of() : leftovers;
  }

  /** What is bought beyond what flies. */
  public List<CommonSpare> sparesOrNone() {
    return spares == null ? List.of() : spares;
  }

  /** What is to be the same. */
  public List<Sameness> sameOrNone() {
    return same == null ? List.of() : same;
  }

  /** What comes first. */
  public Aim aimOrWorst() {
    return aim == null ? Aim.WORST : aim;
  }

  /** Thousandths of the sum of shares that thrift may cost. */
  public int giveUpOrUsual() {
    return giveUp == null ? USUAL_GIVE_UP : giveUp;
  }
}
