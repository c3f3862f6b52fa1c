package org.drysill.survey;

import java.util.List;
import java.util.Optional;
import org.drysill.survey.share.LeftOut;
import org.drysill.survey.share.Renamed;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * A fan, hood, stack or ventilation unit.
 *
 * @param id short name
 * @param name name in the report
 * @param kind what it is
 * @param declaredFlow flow that its maker declares
 * @param measuredFlow flow measured at it while it ran
 * @param boostFlow flow measured at its boost setting
 * @param fanCurve flows and pressures that its maker declares, by rising flow
 * @param halfCycle time from one turn of its direction to the next
 * @param switchingPause time that it stands still at each turn
 * @param airSource from where a unit that blows air in takes it
 * @param power electric power while it runs
 * @param run when it runs
 * @param hoursPerDay hours a day that it runs
 * @param pairedWith the id of the unit that alternates with it
 * @param declaredHeatRecovery heat recovery that its maker declares
 * @param duct the duct between it and the outside
 * @param heatRecoveryTests temperatures taken at it
 * @param filter its filter
 * @param photos photographs
 * @param notes what else was seen
 */
public record Fan(
    @Renamed(Renamed.As.ID) @Key(about = "Short name", example = "kitchen-hr", id = true) String id,
    @Renamed(Renamed.As.NAME) @Key(about = "Name in the report", example = "Kitchen unit")
        Optional<String> name,
    @Key(about = "What it is", example = "alternating heat recovery") FanKind kind,
    @Key(
            about = "Flow that its maker declares",
            dimension = Dimension.AIRFLOW,
            unit = "l/s",
            min = 0,
            max = 2000,
            high = 300,
            example = "54 m3/h")
        Optional<Quantity> declaredFlow,
    @Key(about = "Flow measured at it while it ran", example = "11 l/s")
        Optional<MeasuredFlow> measuredFlow,
    @Key(about = "Flow measured at its boost setting", example = "22 l/s")
        Optional<MeasuredFlow> boostFlow,
    @Key(
            about = "Flows and pressures that its maker declares, two at least, by rising flow",
            example = "[{flow: 0 l/s, pressure: 45 Pa}, {flow: 26 l/s, pressure: 0 Pa}]")
        List<CurvePoint> fanCurve,
    @Key(
            about = "Time from one turn of its direction to the next, of an alternating unit",
            dimension = Dimension.DURATION,
            unit = "s",
            min = 1,
            max = 3600,
            low = 20,
            high = 300,
            example = "70 s")
        Optional<Quantity> halfCycle,
    @Key(
            about = "Time that it stands still at each turn, within the half cycle",
            dimension = Dimension.DURATION,
            unit = "s",
            min = 0,
            max = 3600,
            high = 30,
            example = "4 s")
        Optional<Quantity> switchingPause,
    @Key(about = "From where a unit that blows air in takes it", example = "loft")
        Optional<AirSource> airSource,
    @Key(
            about = "Electric power while it runs",
            dimension = Dimension.POWER,
            unit = "W",
            min = 0,
            max = 5000,
            high = 300,
            example = "3.5 W")
        Optional<Quantity> power,
    @Key(about = "When it runs", example = "continuous") Optional<RunMode> run,
    @Key(
            about = "Hours a day that it runs",
            dimension = Dimension.HOURS_PER_DAY,
            unit = "h",
            min = 0,
            max = 24,
            example = "2 h")
        Optional<Quantity> hoursPerDay,
    @Renamed(Renamed.As.ID)
        @Key(about = "The id of the unit that alternates with it", example = "living-hr")
        Optional<String> pairedWith,
    @Key(
            about = "Heat recovery that its maker declares",
            dimension = Dimension.PERCENT,
            unit = "%",
            min = 0,
            max = 100,
            low = 30,
            high = 97,
            example = "85 %")
        Optional<Quantity> declaredHeatRecovery,
    @Key(about = "The duct between it and the outside") Optional<Duct> duct,
    @Key(about = "Temperatures taken at it") List<HeatRecoveryTest> heatRecoveryTests,
    @Key(about = "Its filter") Optional<Filter> filter,
    @LeftOut @Key(about = "Photographs", example = "photos/fan.jpg") List<Photo> photos,
    @LeftOut @Key(about = "What else was seen", example = "Switched off at the isolator")
        Optional<String> notes) {
  /** Copies the lists. */
  public Fan {
    fanCurve = List.copyOf(fanCurve);
    heatRecoveryTests = List.copyOf(heatRecoveryTests);
    photos = List.copyOf(photos);
  }
}
