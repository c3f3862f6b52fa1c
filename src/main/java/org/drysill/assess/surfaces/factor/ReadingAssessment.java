package org.drysill.assess.surfaces.factor;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Home;
import org.drysill.assess.readings.InstrumentErrors;
import org.drysill.assess.readings.NearestReading;
import org.drysill.physics.Range;
import org.drysill.physics.TemperatureRatio;
import org.drysill.reference.surfaces.SurfaceDefaults;
import org.drysill.reference.surfaces.SurfaceTables;
import org.drysill.survey.OutdoorReading;
import org.drysill.survey.Room;
import org.drysill.survey.RoomReading;
import org.drysill.survey.SurfaceReading;

/** Turns surface readings into temperature factors, with the error of the instruments. */
final class ReadingAssessment {
  private final InstrumentErrors errors;
  private final List<OutdoorReading> outdoors;
  private final SurfaceDefaults defaults;
  private final double hours;

  ReadingAssessment(Home home, SurfaceTables tables, InstrumentErrors errors) {
    this.errors = errors;
    this.outdoors = home.survey().outdoorReadings();
    this.defaults = tables.defaults();
    this.hours = tables.readings().pairing().withinHours();
  }

  ReadingFactor of(Room room, SurfaceReading reading) {
    Range surface = errors.surface(reading.surface(), reading.instrument());
    Optional<Range> air = air(room, reading);
    Optional<Range> outdoor = outdoor(reading);
    if (air.isEmpty()) {
      return refused(reading, surface, air, outdoor, "no air temperature was read beside it");
    }
    if (outdoor.isEmpty()) {
      return refused(reading, surface, air, outdoor, "no outdoor temperature was read with it");
    }
    return judged(reading, surface, air.get(), outdoor.get());
  }

  private ReadingFactor judged(SurfaceReading reading, Range surface, Range air, Range outdoor) {
    double difference = air.likely() - outdoor.likely();
    Optional<String> objection = objection(surface, air, outdoor, difference);
    if (objection.isPresent()) {
      return refused(reading, surface, Optional.of(air), Optional.of(outdoor), objection.get());
    }
    boolean weak = difference < defaults.weakBelow().likely();
    return new ReadingFactor(
        reading.at(),
        reading.atPoint(),
        surface,
        Optional.of(air),
        Optional.of(outdoor),
        weak ? ReadingQuality.WEAK : ReadingQuality.NORMAL,
        Optional.of(factor(surface, air, outdoor)),
        weak
            ? "weak: indoors was only %s K warmer than outdoors, %s K would be better"
                .formatted(
                    ReadingWords.tenth(difference),
                    ReadingWords.plain(defaults.weakBelow().likely()))
            : "indoors was %s K warmer than outdoors".formatted(ReadingWords.tenth(difference)));
  }

  private Optional<String> objection(Range surface, Range air, Range outdoor, double difference) {
    if (difference < 0) {
      return Optional.of(
          "outdoors was %s K warmer than indoors; a factor is read in cold weather"
              .formatted(ReadingWords.tenth(-difference)));
    }
    if (difference < defaults.refusedBelow().likely()) {
      return Optional.of(
          "indoors was only %s K warmer than outdoors; below %s K the errors of the thermometers"
                  .formatted(
                      ReadingWords.tenth(difference),
                      ReadingWords.plain(defaults.refusedBelow().likely()))
              + " outweigh what is looked for");
    }
    if (surface.likely() > air.likely()) {
      return Optional.of("the surface was warmer than the room: sun or a heater warms it");
    }
    return surface.likely() < outdoor.likely()
        ? Optional.of("the surface was colder than outdoors: it is wet, or one reading is wrong")
        : Optional.empty();
  }

  private static Range factor(Range surface, Range air, Range outdoor) {
    double likely = TemperatureRatio.of(surface.likely(), air.likely(), outdoor.likely());
    double error =
        TemperatureRatio.uncertainty(
            likely,
            air.likely() - outdoor.likely(),
            halfWidth(surface),
            halfWidth(air),
            halfWidth(outdoor));
    return new Range(Math.max(0, likely - error), likely, Math.min(1, likely + error));
  }

  private static double halfWidth(Range range) {
    return (range.high() - range.low()) / 2;
  }

  private Optional<Range> air(Room room, SurfaceReading reading) {
    return reading
        .air()
        .map(a -> errors.temperature(a, reading.instrument()))
        .or(
            () ->
                NearestReading.within(reading.at(), room.readings(), RoomReading::at, hours)
                    .map(r -> errors.temperature(r.temperature(), r.instrument())));
  }

  private Optional<Range> outdoor(SurfaceReading reading) {
    return reading
        .outdoor()
        .map(o -> errors.temperature(o, reading.instrument()))
        .or(
            () ->
                NearestReading.within(reading.at(), outdoors, OutdoorReading::at, hours)
                    .map(o -> errors.temperature(o.temperature(), o.instrument())));
  }

  private static ReadingFactor refused(
      SurfaceReading reading,
      Range surface,
      Optional<Range> air,
      Optional<Range> outdoor,
      String why) {
    return new ReadingFactor(
        reading.at(),
        reading.atPoint(),
        surface,
        air,
        outdoor,
        ReadingQuality.REFUSED,
        Optional.empty(),
        "refused: " + why);
  }
}
