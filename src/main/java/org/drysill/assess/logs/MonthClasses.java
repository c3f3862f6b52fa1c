package org.drysill.assess.logs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.humidity.ClassIndication;
import org.drysill.physics.moisture.HumidityClass;
import org.drysill.reference.readings.ClassMeaning;

/** The humidity class of each month that a log covers well enough. */
final class MonthClasses {
  /** A log that covers no month of the calendar is taken by its last days [d]. */
  private static final int DAYS = 30;

  private final List<ClassMeaning> meanings;
  private final double error;
  private final double coverage;

  /**
   * Classes within an error.
   *
   * @param error of the vapour pressure excess, plus or minus [Pa]
   * @param coverage least share of a month with readings [1]
   */
  MonthClasses(List<ClassMeaning> meanings, double error, double coverage) {
    this.meanings = List.copyOf(meanings);
    this.error = error;
    this.coverage = coverage;
  }

  List<MonthClass> of(Calendar calendar, List<PeriodMeans> months) {
    List<MonthClass> classes = new ArrayList<>();
    months.stream()
        .filter(m -> m.coverage() >= coverage)
        .forEach(m -> of(m, true).ifPresent(classes::add));
    if (classes.isEmpty()) {
      Optional.of(calendar.last(DAYS))
          .filter(m -> m.coverage() >= coverage)
          .flatMap(m -> of(m, false))
          .ifPresent(classes::add);
    }
    return classes;
  }

  private Optional<MonthClass> of(PeriodMeans means, boolean calendar) {
    if (means.excessPa().isEmpty() || means.outdoorCelsius().isEmpty()) {
      return Optional.empty();
    }
    double excess = means.excessPa().getAsDouble();
    double outdoor = means.outdoorCelsius().getAsDouble();
    return HumidityClass.of(excess, outdoor)
        .map(likely -> meanings.get(likely.number() - 1))
        .map(
            meaning ->
                new MonthClass(
                    means,
                    calendar,
                    new ClassIndication(
                        number(excess - error, outdoor),
                        meaning.number(),
                        number(excess + error, outdoor),
                        meaning.meaning(),
                        meaning.source())));
  }

  private static int number(double excess, double outdoor) {
    return HumidityClass.of(excess, outdoor).orElseThrow().number();
  }
}
