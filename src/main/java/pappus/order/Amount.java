package pappus.order;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import pappus.quantity.Money;
import pappus.quantity.Require;

/** Amounts in the currency of the catalogue, as an order's file has them. */
final class Amount {
  private Amount() {}

  /** Refuses what is no price: below 0, above {@link Money#MOST}, or finer than cents. */
  static void require(String field, @Nullable BigDecimal amount) {
    Require.present(field, amount);
    if (amount == null) {
      return;
    }
    if (amount.signum() < 0 || amount.compareTo(Money.MOST) > 0) {
      Require.refuse(
          "%s must be from 0 to 1000000, but is %s.".formatted(field, amount.toPlainString()));
    } else if (amount.stripTrailingZeros().scale() > 2) {
      Require.refuse(
          "%s must have at most two decimals, but is %s.".formatted(field, amount.toPlainString()));
    }
  }

  /** Whole cents. */
  static long cents(BigDecimal amount) {
    return amount.movePointRight(2).longValueExact();
  }
}
