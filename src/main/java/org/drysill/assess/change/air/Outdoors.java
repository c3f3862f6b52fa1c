package org.drysill.assess.change.air;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Range;
import org.drysill.physics.air.HumidityReference;
import org.drysill.physics.air.MoistAir;
import org.drysill.survey.OutdoorReading;

/**
 * The mean outdoor air of a visit.
 *
 * @param temperature [°C]
 * @param pressure vapour pressure [Pa]; empty where no humidity was read
 * @param from over what the mean is taken, in words
 */
record Outdoors(Range temperature, Optional<Range> pressure, String from) {
  /** The mean of the outdoor readings of a visit; empty where there are none. */
  static Optional<Outdoors> read(Home home) {
    List<OutdoorReading> readings = home.survey().outdoorReadings();
    if (readings.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Outdoors(
            mean(readings, r -> r.temperature().range()),
            pressure(readings.stream().filter(r -> r.humidity().isPresent()).toList()),
            "mean of the outdoor readings"));
  }

  /** The outdoor air that was logged with a room. */
  static Outdoors of(AirState air) {
    return new Outdoors(
        air.outdoorTemperature(),
        Optional.of(air.outdoorPressure()),
        "mean of the outdoor air of " + air.spell().said());
  }

  Figure temperature(String when) {
    return figure("temperature_" + when, "temperature " + when, temperature, Unit.CELSIUS);
  }

  Optional<Figure> pressure(String when) {
    return pressure.map(
        p -> figure("vapour_pressure_" + when, "vapour pressure " + when, p, Unit.PASCAL));
  }

  private Figure figure(String id, String name, Range value, Unit unit) {
    return new Figure(
        "change.outdoor." + id,
        "Mean outdoor " + name,
        value,
        unit,
        Basis.MEASURED,
        () -> new Working(from, inputs(), List.of(), Optional.empty()));
  }

  private List<Input> inputs() {
    List<Input> inputs = new ArrayList<>();
    inputs.add(Input.of("Te", "Outdoor temperature", temperature, Unit.CELSIUS, Basis.MEASURED));
    pressure.ifPresent(
        p -> inputs.add(Input.of("pe", "Outdoor vapour", p, Unit.PASCAL, Basis.MEASURED)));
    return inputs;
  }

  private static Optional<Range> pressure(List<OutdoorReading> humid) {
    return humid.isEmpty() ? Optional.empty() : Optional.of(mean(humid, Outdoors::vapour));
  }

  private static Range vapour(OutdoorReading reading) {
    double celsius = reading.temperature().value();
    return Range.exactly(
        MoistAir.vapourPressurePa(
            celsius, reading.humidity().orElseThrow().value(), HumidityReference.OVER_WATER));
  }

  private static Range mean(List<OutdoorReading> readings, Function<OutdoorReading, Range> what) {
    return readings.stream()
        .map(what)
        .reduce(Range.exactly(0), Range::plus)
        .times(1.0 / readings.size());
  }
}
