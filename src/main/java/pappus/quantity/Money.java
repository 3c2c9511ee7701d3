package pappus.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Pattern;

/**
 * A price.
 *
 * @param amount from 0 to 1 000 000, at most two decimals
 * @param currency three capital letters as in ISO 4217
 */
public record Money(BigDecimal amount, String currency) {
  private static final Pattern CODE = Pattern.compile("[A-Z]{3}");

  /** The largest amount, as units of some currencies are small. */
  public static final BigDecimal MOST = BigDecimal.valueOf(1_000_000);

  public Money {
    Require.present("amount", amount);
    Require.text("currency", currency);
    if (!CODE.matcher(currency).matches()) {
      Require.refuse(
          "currency must be three capital letters as in ISO 4217, but is %s.".formatted(currency));
    }
    if (amount.signum() < 0 || amount.compareTo(MOST) > 0) {
      Require.refuse(
          "amount must be from 0 to 1000000, but is %s.".formatted(amount.toPlainString()));
    }
    if (amount.stripTrailingZeros().scale() > 2) {
      Require.refuse(
          "amount must have at most two decimals, but is %s.".formatted(amount.toPlainString()));
    }
    amount = amount.setScale(2, RoundingMode.UNNECESSARY);
  }

  /** A sum of whole cents. */
  public static Money ofCents(long cents, String currency) {
    return new Money(BigDecimal.valueOf(cents, 2), currency);
  }

  /** A sum of whole cents as an amount, which may be more than any one price is. */
  public static BigDecimal sum(long cents) {
    return BigDecimal.valueOf(cents, 2);
  }

  /** The amount in whole cents, which is what searches count in. */
  public long cents() {
    return amount.unscaledValue().longValueExact();
  }
}
