package org.drysill.survey.check;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drysill.survey.Prices;
import org.drysill.survey.Survey;
import org.drysill.yaml.Quantity;

/**
 * All money of a survey is in its one currency; a code that is written beside a sum is that one.
 */
final class MoneyChecks {
  private static final Pattern CODE = Pattern.compile("\\b[A-Z]{3}\\b");

  private MoneyChecks() {}

  static void check(Survey survey, CheckList list) {
    Optional<String> currency = survey.prices().flatMap(Prices::currency);
    survey
        .prices()
        .ifPresent(
            p -> {
              same(p.electricity(), currency, "prices.electricity", list);
              same(p.heat(), currency, "prices.heat", list);
            });
    survey
        .options()
        .ifPresent(
            o -> {
              same(o.budget(), currency, "options.budget", list);
              o.prices()
                  .forEach(
                      (measure, price) ->
                          same(Optional.of(price), currency, "options.prices." + measure, list));
            });
  }

  private static void same(
      Optional<Quantity> sum, Optional<String> currency, String key, CheckList list) {
    Matcher code = CODE.matcher(sum.map(Quantity::written).orElse(""));
    if (code.find() && currency.filter(c -> !c.equals(code.group())).isPresent()) {
      list.add(
          SurveyCode.OTHER_CURRENCY,
          key,
          sum.map(Quantity::written).orElse(""),
          "a sum in " + currency.orElse("") + ", the currency of the survey");
    }
  }
}
