package org.drysill.options.rank;

import java.util.Optional;
import org.drysill.assess.Home;
import org.drysill.assess.MoneyText;
import org.drysill.physics.Range;
import org.drysill.survey.OptionWishes;

/**
 * The money at hand.
 *
 * @param money what the survey states [currency]; empty where it states nothing
 * @param currency the survey's currency
 */
public record Purse(Optional<Range> money, String currency) {
  /** That of a survey. */
  public static Purse of(Home home) {
    return new Purse(
        home.survey().options().flatMap(OptionWishes::budget).map(b -> b.range()),
        home.money().currency());
  }

  /** True for what is likely dearer, bought alone, than all the money at hand. */
  public boolean isBeyond(Entry entry) {
    return money.filter(m -> entry.costed().firstCost().orElse(0.0) > m.high()).isPresent();
  }

  /** An amount [currency] in words, such as {@code £450}. */
  public String words(double amount) {
    return new MoneyText(currency).whole(amount);
  }
}
