package pappus.offer;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pappus.part.Role;
import pappus.quantity.Money;
import pappus.quantity.Require;

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

    @JsonPropertyDescription("What is sold beyond what flies; absent: no spares.") @Nullable
    List<Spare> spares,

    @JsonPropertyDescription(
        "What the shop adds to each build, such as building it; absent: nothing.")
    @Nullable
    List<Extra> extras,

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

  /** Selling units sold beyond what flies. */
  public record Spare(
      @JsonPropertyDescription("What of, such as propeller.")
      Role role,

      @JsonPropertyDescription("Selling units more, 1 to 20.")
      int units) {
    public Spare {
      Require.present("role", role);
      Require.inRange("units", units, 1, 20);
    }
  }

  /** Something the shop adds. */
  public record Extra(
      @JsonPropertyDescription("What it is.") String text,

      @JsonPropertyDescription("What it costs, with or without tax as all prices.")
      Money price) {
    public Extra {
      Require.text("text", text);
      Require.present("price", price);
    }
  }

  /** Selling units of a role beyond what flies. */
  public int spareUnits(Role role) {
    return spares == null
        ? 0
        : spares.stream()
            .filter(spare -> spare.role() == role)
            .mapToInt(Spare::units)
            .sum();
  }

  /** What the shop adds to each build. */
  public List<Extra> added() {
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
