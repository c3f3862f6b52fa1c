package org.drysill.assess.surfaces.months;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.OutdoorClimate;
import org.drysill.reference.surfaces.SurfaceDefaults;

/** Carries a temperature factor through the year. */
public final class MonthTables {
  private MonthTables() {}

  /**
   * The year of a surface.
   *
   * @param place the id of the place
   * @param factor its temperature factor
   * @param setpoint indoor temperature while it is heated [°C]
   * @param climate outdoors by month
   * @param excess vapour pressure excess indoors
   * @param criterion what it must keep to
   * @param defaults what is taken for granted
   */
  public static MonthTable of(
      String place,
      Figure factor,
      Figure setpoint,
      OutdoorClimate climate,
      VapourExcess excess,
      Criterion criterion,
      SurfaceDefaults defaults) {
    double least = defaults.leastDifferenceForRequiredFactor().likely();
    List<MonthRow> rows =
        climate.months().stream()
            .map(
                m ->
                    MonthRows.of(
                        m.number(),
                        MonthAir.of(
                            m, setpoint.likely(), excess.at(), criterion.coldNights(), defaults),
                        factor.value(),
                        criterion,
                        least))
            .toList();
    MonthFigures figures =
        new MonthFigures(place, factor, setpoint, climate, excess.origin(), criterion);
    Optional<MonthRow> critical = critical(rows);
    return new MonthTable(
        rows,
        critical.map(MonthRow::month),
        critical.map(figures::required),
        figures.surfaceHumidity(moistest(rows)),
        figures.dryHumidity(driest(rows)));
  }

  private static Optional<MonthRow> critical(List<MonthRow> rows) {
    return rows.stream()
        .filter(r -> r.requiredFactor().isPresent())
        .max(Comparator.comparingDouble(r -> r.requiredFactor().orElseThrow().likely()));
  }

  private static MonthRow moistest(List<MonthRow> rows) {
    return rows.stream()
        .max(Comparator.comparingDouble(r -> r.surfaceHumidity().likely()))
        .orElseThrow();
  }

  private static MonthRow driest(List<MonthRow> rows) {
    return rows.stream()
        .min(Comparator.comparingDouble(r -> r.highestIndoorHumidity().likely()))
        .orElseThrow();
  }
}
