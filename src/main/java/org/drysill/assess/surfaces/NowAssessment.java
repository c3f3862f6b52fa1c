package org.drysill.assess.surfaces;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.humidity.MeasuredAir;
import org.drysill.assess.readings.InstrumentErrors;
import org.drysill.assess.readings.NearestReading;
import org.drysill.assess.surfaces.factor.ReadingFactor;
import org.drysill.assess.surfaces.factor.TemperatureFactor;
import org.drysill.physics.Range;
import org.drysill.reference.surfaces.SurfaceTables;
import org.drysill.survey.OutdoorReading;
import org.drysill.survey.RoomReading;
import org.drysill.yaml.Moment;

/** A surface at the visit: its temperature against the dew point of the room's air. */
final class NowAssessment {
  private final InstrumentErrors errors;
  private final List<OutdoorReading> outdoors;
  private final double hours;
  private final double coldestWeather;

  NowAssessment(Home home, SurfaceTables tables, InstrumentErrors errors) {
    this.errors = errors;
    this.outdoors = home.survey().outdoorReadings();
    this.hours = tables.readings().pairing().withinHours();
    this.coldestWeather = tables.defaults().coldestWeather().likely();
  }

  /**
   * The surface as it was.
   *
   * @param factor its temperature factor
   * @param read what was read on it, whether or not a factor came of it
   */
  Optional<SurfaceNow> of(
      String place, RoomFacts room, TemperatureFactor factor, List<ReadingFactor> read) {
    Optional<ReadingFactor> coldest = coldest(read);
    return humidReading(room, coldest.flatMap(ReadingFactor::at))
        .flatMap(r -> of(place, r, factor, coldest));
  }

  private Optional<SurfaceNow> of(
      String place, RoomReading reading, TemperatureFactor factor, Optional<ReadingFactor> read) {
    Range air = errors.temperature(reading.temperature(), reading.instrument());
    Range humidity = errors.humidity(reading.humidity().orElseThrow(), reading.instrument());
    NowFigures figures = new NowFigures(place, new MeasuredAir(air, humidity));
    Optional<Range> outdoor = outdoor(reading.at());
    return read.map(r -> figures.asRead(r.surface()))
        .or(() -> outdoor.map(o -> figures.fromFactor(factor.figure(), o)))
        .map(s -> figures.now(s, factor.figure(), coldestWeather));
  }

  private Optional<RoomReading> humidReading(RoomFacts room, Optional<Moment> at) {
    List<RoomReading> humid =
        room.room().readings().stream().filter(r -> r.humidity().isPresent()).toList();
    return NearestReading.within(at, humid, RoomReading::at, hours);
  }

  private Optional<Range> outdoor(Optional<Moment> at) {
    return NearestReading.within(at, outdoors, OutdoorReading::at, hours)
        .map(o -> errors.temperature(o.temperature(), o.instrument()));
  }

  private static Optional<ReadingFactor> coldest(List<ReadingFactor> read) {
    return read.stream().min(Comparator.comparingDouble(r -> r.surface().likely()));
  }
}
