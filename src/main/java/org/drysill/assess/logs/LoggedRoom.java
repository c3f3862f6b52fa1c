package org.drysill.assess.logs;

import java.util.List;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;

/**
 * What the log of a room says of its air.
 *
 * @param room the room's id
 * @param roomName its name in sentences
 * @param source where the outdoor air comes from
 * @param outdoorSaid the same in words
 * @param days time with readings [d]
 * @param temperature mean air temperature [°C]
 * @param relativeHumidity mean relative humidity [ratio]
 * @param vapourContent mean vapour content [kg/m³]
 * @param excess mean vapour over the outdoor air of the same time [kg/m³]
 * @param excessPressure the same as pressure [Pa]
 * @param outdoorTemperature mean outdoor temperature of the same time [°C]
 * @param byDay means by day
 * @param byWeek means by week, Monday to Sunday
 * @param byMonth means by month
 * @param classes the humidity class of each month that is covered well enough
 * @param above time above each humidity that readings are held against
 * @param typicalDay means by hour of the day
 * @param criteria published limits of moving averages against the highest of the log
 * @param trace the log itself beside the outdoor air
 */
public record LoggedRoom(
    String room,
    String roomName,
    OutdoorSource source,
    String outdoorSaid,
    double days,
    Figure temperature,
    Figure relativeHumidity,
    Figure vapourContent,
    Figure excess,
    Figure excessPressure,
    Figure outdoorTemperature,
    List<PeriodMeans> byDay,
    List<PeriodMeans> byWeek,
    List<PeriodMeans> byMonth,
    List<MonthClass> classes,
    List<TimeAbove> above,
    List<HourOfDay> typicalDay,
    List<Finding> criteria,
    Trace trace) {
  /** Copies the lists. */
  public LoggedRoom {
    byDay = List.copyOf(byDay);
    byWeek = List.copyOf(byWeek);
    byMonth = List.copyOf(byMonth);
    classes = List.copyOf(classes);
    above = List.copyOf(above);
    typicalDay = List.copyOf(typicalDay);
    criteria = List.copyOf(criteria);
  }

  /** True where it holds a whole day and night, without which a mean is one of some hours. */
  public boolean holdsADay() {
    return days >= 1;
  }
}
