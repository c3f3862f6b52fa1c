package org.drysill.assess.ventilation.provided;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.drysill.assess.OutdoorClimate;
import org.drysill.assess.OutdoorClimate.Month;
import org.drysill.reference.ventilation.VentilationDefaults;

/**
 * The months over which the air of the cold season is averaged: those below a stated outdoor
 * temperature, the coldest three where fewer are.
 *
 * @param months the months
 */
record ColdSeason(List<Month> months) {
  private static final int LEAST = 3;

  /** Copies the list. */
  ColdSeason {
    months = List.copyOf(months);
  }

  static ColdSeason of(OutdoorClimate climate, VentilationDefaults defaults) {
    double limit = defaults.coldSeason().value().value();
    List<Month> cold = climate.months().stream().filter(m -> m.temperature() < limit).toList();
    return new ColdSeason(
        cold.size() >= LEAST
            ? cold
            : climate.months().stream()
                .sorted(Comparator.comparingDouble(Month::temperature))
                .limit(LEAST)
                .toList());
  }

  /** Mean outdoor temperature [°C]. */
  double outdoor() {
    return mean(Month::temperature);
  }

  /** The mean over the days of the season. */
  double mean(ToDoubleFunction<Month> value) {
    double days = months.stream().mapToInt(Month::days).sum();
    return months.stream().mapToDouble(m -> m.days() * value.applyAsDouble(m)).sum() / days;
  }
}
