package org.drysill.assess.surfaces.months;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;

/**
 * A surface through the year.
 *
 * @param rows twelve months, January first
 * @param criticalMonth the month that needs the highest temperature factor, 1 for January; empty
 *     where no month needs one
 * @param requiredFactor the factor that the critical month needs
 * @param highestSurfaceHumidity the humidity at the surface in its moistest month
 * @param lowestDryHumidity the highest indoor humidity that keeps the surface below its limit in
 *     the coldest month: the least of the twelve
 */
public record MonthTable(
    List<MonthRow> rows,
    Optional<Integer> criticalMonth,
    Optional<Figure> requiredFactor,
    Figure highestSurfaceHumidity,
    Figure lowestDryHumidity) {
  /** Copies the list. */
  public MonthTable {
    rows = List.copyOf(rows);
  }

  /** The months at risk at the likely values, 1 for January. */
  public List<Integer> monthsAtRisk() {
    return rows.stream().filter(r -> r.risk() != Risk.NONE).map(MonthRow::month).toList();
  }

  /** The months at risk at the unfavourable ends of all ranges, 1 for January. */
  public List<Integer> monthsPossiblyAtRisk() {
    return rows.stream().filter(r -> r.worst() != Risk.NONE).map(MonthRow::month).toList();
  }

  /** The gravest risk of the year at the likely values. */
  public Risk gravest() {
    return rows.stream().map(MonthRow::risk).max(Risk::compareTo).orElse(Risk.NONE);
  }
}
