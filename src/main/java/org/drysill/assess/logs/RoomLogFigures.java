package org.drysill.assess.logs;

import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.assess.humidity.MeasuredAir;
import org.drysill.physics.Range;
import org.drysill.physics.moisture.VapourBalance;

/** The mean air of a room's log, with workings. */
final class RoomLogFigures {
  private final String id;
  private final String where;
  private final Trace trace;
  private final Outdoors.Beside beside;
  private final MeasuredAir air;
  private final double outdoorError;

  /**
   * The figures of a room.
   *
   * @param air the mean air with the errors of its instrument
   * @param outdoorError error of the outdoor vapour pressure [Pa]
   */
  RoomLogFigures(RoomFacts room, Outdoors.Beside beside, MeasuredAir air, double outdoorError) {
    this.id = "log." + room.id();
    this.where = "the air in the " + room.name() + ", over the log";
    this.trace = beside.trace();
    this.beside = beside;
    this.air = air;
    this.outdoorError = outdoorError;
  }

  Figure temperature() {
    return mean("temperature", "Mean temperature of ", air.temperature(), Unit.CELSIUS, "T");
  }

  Figure humidity() {
    return mean(
        "relative_humidity",
        "Mean relative humidity of ",
        air.humidity(),
        Unit.RELATIVE_HUMIDITY,
        "φ");
  }

  /** Of every reading its own content, then the mean: that of the means would be another. */
  Figure content() {
    double likely = all(trace::contentKgM3);
    double error = VapourBalance.contentExcessKgM3(air.vapourPressureError(), inside(), inside());
    return mean(
        "vapour_content",
        "Mean vapour content of ",
        Range.around(likely, error),
        Unit.VAPOUR_CONTENT,
        "v");
  }

  Figure outdoorTemperature() {
    return new Figure(
        id + ".outdoor_temperature",
        "Mean outdoor temperature beside " + where,
        Range.exactly(outside()),
        Unit.CELSIUS,
        basis(),
        () -> working("Te = Σ Te t / Σ t", List.of(), Optional.of("From " + beside.said() + ".")));
  }

  Figure excess() {
    double likely = paired(trace::excessKgM3);
    double error = VapourBalance.contentExcessKgM3(error(), inside(), outside());
    return over(
        "vapour_excess",
        "Mean vapour excess of " + where,
        Range.around(likely, error),
        Unit.VAPOUR_CONTENT,
        "Δv = Σ (vi − ve) t / Σ t");
  }

  Figure excessPressure() {
    return over(
        "vapour_pressure_excess",
        "Mean vapour pressure excess of " + where,
        Range.around(paired(trace::excessPa), error()),
        Unit.PASCAL,
        "Δp = Σ (pi − pe) t / Σ t");
  }

  /** Plus or minus [Pa]: both hygrometers' errors as root of the sum of squares. */
  double error() {
    return Math.hypot(air.vapourPressureError(), outdoorError);
  }

  private Figure mean(String suffix, String name, Range value, Unit unit, String symbol) {
    return new Figure(
        id + "." + suffix,
        name + where,
        value,
        unit,
        Basis.MEASURED,
        () ->
            working(
                symbol + " = Σ " + symbol + " t / Σ t over the log",
                List.of(),
                Optional.of(
                    "t: time for which a reading holds. Bounds: accuracy of the instrument, which"
                        + " no number of readings makes smaller.")));
  }

  private Figure over(String suffix, String name, Range value, Unit unit, String formula) {
    return new Figure(
        id + "." + suffix,
        name + " over outdoors",
        value,
        unit,
        basis(),
        () ->
            working(
                formula,
                List.of(
                    Input.of("T", temperature()),
                    Input.of("φ", humidity()),
                    Input.of("Te", outdoorTemperature())),
                Optional.of(
                    "Step by step against "
                        + beside.said()
                        + "; bounds: the errors of both hygrometers at these means, as root of the"
                        + " sum of squares.")));
  }

  private static Working working(String formula, List<Input> inputs, Optional<String> note) {
    return new Working(formula, inputs, List.of(Sources.EXCESS), note);
  }

  private Basis basis() {
    return beside.source().simultaneous() ? Basis.CALCULATED : Basis.ASSUMED;
  }

  private double inside() {
    return air.temperature().likely();
  }

  private double outside() {
    return paired(trace::outdoorCelsius);
  }

  private double all(IntToDoubleFunction quantity) {
    return Sums.over(0, trace.size(), quantity, trace::seconds).mean();
  }

  private double paired(IntToDoubleFunction quantity) {
    return Sums.over(
            0,
            trace.size(),
            i -> trace.isPaired(i) ? quantity.applyAsDouble(i) : Double.NaN,
            trace::seconds)
        .mean();
  }
}
