package pappus.offer;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pappus.quantity.Money;
import pappus.quantity.Require;
import pappus.scenario.OwnLine;
import pappus.scenario.Spare;

/** What a shop says of itself and of how it sells; the same for all its offers. */
public record ShopSettings(
    @JsonPropertyDescription("Name of the shop.") String shop,

    @JsonPropertyDescription("Lines of its address; empty: none.")
    List<String> address,

    @JsonPropertyDescription("Lines on how to reach it; empty: none.")
    List<String> contact,

    @JsonPropertyDescription("Its logo, a png, jpeg or svg file beside the settings; absent: none.")
    @Nullable
    String logo,

    @JsonPropertyDescription(
        "Currency of its prices, three capital letters as in ISO 4217; that of the catalogue.")
    String currency,

    @JsonPropertyDescription("Tax on what it sells; absent: none is told.") @Nullable
    Tax tax,

    @JsonPropertyDescription(
        "Whether prices in the stock list and the catalogue hold the tax already.")
    boolean pricesIncludeTax,

    @JsonPropertyDescription("How many days an offer holds, 1 to 365.")
    int validDays,

    @JsonPropertyDescription(
        "What is sold beyond what flies; of what is not named here, what the scenario wants beside the build.")
    @Nullable
    List<Spare> spares,

    @JsonPropertyDescription(
        "What the shop adds to each build, such as building it; absent: nothing.")
    @Nullable
    List<OwnLine> extras,

    @JsonPropertyDescription(
        "What is not in the price; absent: radio, goggles, charger, soldering and postage.")
    @Nullable
    List<String> notIncluded,

    @JsonPropertyDescription("Its terms, a line each; absent: none.") @Nullable
    List<String> terms) {
  private static final List<String> USUALLY_NOT_INCLUDED =
      List.of("radio", "goggles", "charger", "soldering and building", "postage");

  public ShopSettings {
    Require.name("shop", shop);
    address = Require.list("address", address);
    contact = Require.list("contact", contact);
    new Money(BigDecimal.ZERO, currency);
    Require.inRange("validDays", validDays, 1, 365);
    spares = spares == null ? null : List.copyOf(spares);
    extras = extras == null ? null : List.copyOf(extras);
    notIncluded = notIncluded == null ? null : List.copyOf(notIncluded);
    terms = terms == null ? null : List.copyOf(terms);
    if (extras != null) {
      for (var extra : extras) {
        if (!extra.price().currency().equals(currency)) {
          Require.refuse("extras must be in the shop's currency, %s, but %s is in %s."
              .formatted(currency, extra.text(), extra.price().currency()));
        }
      }
    }
  }

  /** A tax in percent of the price without it. */
  public record Tax(
      @JsonPropertyDescription("What it is called.") String label,

      @JsonPropertyDescription("Percent, 0 to 100, at most three decimals.")
      BigDecimal percent) {
    public Tax {
      Require.name("label", label);
      Require.present("percent", percent);
      if (percent.signum() < 0
          || percent.compareTo(BigDecimal.valueOf(100)) > 0
          || percent.stripTrailingZeros().scale() > 3) {
        Require.refuse("percent must be from 0 to 100 with at most three decimals, but is %s."
            .formatted(percent.toPlainString()));
      }
    }
  }

  /** What is sold beyond what flies. */
  public List<Spare> sparesOrNone() {
    return spares == null ? List.of() : spares;
  }

  /** What the shop adds to each build. */
  public List<OwnLine> added() {
    return extras == null ? List.of() : extras;
  }

  /** What the price does not hold. */
  public List<String> leftOut() {
    return notIncluded == null ? USUALLY_NOT_INCLUDED : notIncluded;
  }

  /** Its terms. */
  public List<String> conditions() {
    return terms == null ? List.of() : terms;
  }
}
