package org.drysill.options.money;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.options.Price;
import org.drysill.physics.Range;

/** What the money of a measure leaves out, in sentences. */
final class NotTold {
  private NotTold() {}

  static Optional<String> of(
      boolean leavesOutAWall, String currency, Optional<Price> price, Optional<Range> upkeep) {
    List<String> told = new ArrayList<>();
    missing(price, upkeep)
        .ifPresent(
            m ->
                told.add(
                    "Default prices are not in "
                        + currency
                        + " and none are converted: "
                        + m
                        + " cannot be told until the survey gives a quote."));
    if (leavesOutAWall) {
      told.add(
          "Nobody said how the walls are built, so the heat that the warmer wall saves is not counted: it costs less a year than shown.");
    }
    return told.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", told));
  }

  private static Optional<String> missing(Optional<Price> price, Optional<Range> upkeep) {
    List<String> missing = new ArrayList<>();
    if (price.isEmpty()) {
      missing.add("its price");
    }
    if (upkeep.isEmpty()) {
      missing.add("its upkeep");
    }
    return missing.isEmpty() ? Optional.empty() : Optional.of(String.join(" and ", missing));
  }
}
