package org.drysill.assess;

import java.util.Locale;

/**
 * Amounts of money in running text, such as {@code £1,150}.
 *
 * @param currency the code of ISO 4217, such as {@code GBP}
 */
public record MoneyText(String currency) {
  private static final String JOIN = "\u00a0";

  /** The sign of the currency where it has a usual one, else its code. */
  public String sign() {
    return switch (currency) {
      case "GBP" -> "£";
      case "EUR" -> "€";
      case "USD", "CAD", "AUD", "NZD" -> "$";
      default -> currency;
    };
  }

  /** The sign or code before a number that is written already. */
  public String of(String number) {
    return sign().equals(currency) ? currency + JOIN + number : sign() + number;
  }

  /** An amount in whole units of its currency, at least 0. */
  public String whole(double amount) {
    return of(String.format(Locale.ROOT, "%,d", Math.round(amount)));
  }
}
