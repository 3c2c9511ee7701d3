package pappus.document;

import java.util.Locale;
import pappus.quantity.Money;

/** Numbers as a person reads them: minutes to a half, grams to one, whole euros. */
public final class Spoken {
  private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";

  private Spoken() {}

  /** Minutes to the half. */
  public static String minutes(double seconds) {
    return String.format(Locale.ROOT, "%.1f", Math.rint(seconds / 30) / 2);
  }

  /** Minutes to the half, rounded down, for what somebody relies on. */
  public static String atMostMinutes(double seconds) {
    return String.format(Locale.ROOT, "%.1f", Math.floor(seconds / 30) / 2);
  }

  /** A number with so many decimals. */
  public static String number(double value, int decimals) {
    var text = String.format(Locale.ROOT, "%." + decimals + "f", value);
    return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
  }

  /** A whole number however large: in full below a million, else a figure times a power of ten. */
  public static String large(double value) {
    if (value < 1e6) {
      return String.format(Locale.ROOT, "%,.0f", value);
    }
    var parts = String.format(Locale.ROOT, "%.1e", value).split("e\\+0*", 2);
    var power = new StringBuilder();
    parts[1].chars().forEach(digit -> power.append(RAISED.charAt(digit - '0')));
    return parts[0] + " × 10" + power;
  }

  /** With a capital, as the first of a sentence. */
  public static String sentence(String text) {
    return Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }

  /** Whole units of a currency. */
  public static String price(long cents, String currency) {
    return currency + " " + Math.round(cents / 100.0);
  }

  /** More or less of a price, in whole units of a currency, with its sign. */
  public static String priceChange(long cents, String currency) {
    var units = Math.round(cents / 100.0);
    return units == 0 ? "0" : (units > 0 ? "+" : "-") + currency + " " + Math.abs(units);
  }

  /** More or less of something, with its sign. */
  public static String change(double value, int decimals) {
    var text = number(value, decimals);
    return text.matches("0(\\.0*)?") ? "0" : value > 0 ? "+" + text : text;
  }

  /** A budget as written. */
  public static String price(Money money) {
    return money.currency() + " " + money.amount().stripTrailingZeros().toPlainString();
  }
}
