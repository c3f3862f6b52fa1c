package org.drysill.assess.humidity;

import java.util.Optional;
import java.util.function.Predicate;
import org.drysill.assess.Home;
import org.drysill.assess.OutdoorClimate;
import org.drysill.assess.readings.InstrumentErrors;
import org.drysill.assess.readings.NearestReading;
import org.drysill.physics.Range;
import org.drysill.physics.air.HumidityReference;
import org.drysill.physics.air.Iso13788Vapour;
import org.drysill.physics.air.MoistAir;
import org.drysill.reference.readings.OutdoorRules;
import org.drysill.reference.readings.Pairing;
import org.drysill.reference.readings.ReadingRules;
import org.drysill.survey.OutdoorReading;
import org.drysill.yaml.Moment;

/** Finds the outdoor air of a moment: the nearest reading, else the month of the climate. */
final class OutdoorAirs {
  private final Home home;
  private final OutdoorRules rules;
  private final Pairing pairing;
  private final InstrumentErrors errors;

  OutdoorAirs(Home home, ReadingRules rules, InstrumentErrors errors) {
    this.home = home;
    this.rules = rules.outdoor();
    this.pairing = rules.pairing();
    this.errors = errors;
  }

  /**
   * The outdoor air of a moment.
   *
   * @param id start of the ids of its figures
   * @param at when; the day of the visit where it is not written
   */
  Found at(String id, Optional<Moment> at) {
    return nearest(at, reading -> reading.humidity().isPresent())
        .map(reading -> read(id, reading))
        .or(() -> nearest(at, reading -> true).map(reading -> half(id, reading, at)))
        .orElseGet(() -> month(id, at));
  }

  /**
   * Outdoor air and the error of its vapour pressure.
   *
   * @param air the air
   * @param pressureError plus or minus [Pa]
   */
  record Found(OutdoorAir air, double pressureError) {}

  private Found read(String id, OutdoorReading reading) {
    MeasuredAir air =
        new MeasuredAir(
            errors.temperature(reading.temperature(), reading.instrument()),
            errors.humidity(reading.humidity().orElseThrow(), reading.instrument()));
    return new Found(
        outdoor(
            OutdoorAir.Source.READING,
            "outdoor reading" + Moments.said(reading.at()),
            reading.at(),
            new AirFigures(id, "the outdoor air", air)),
        air.vapourPressureError());
  }

  private Found half(String id, OutdoorReading reading, Optional<Moment> at) {
    Range temperature = errors.temperature(reading.temperature(), reading.instrument());
    OutdoorClimate.Month month = monthOf(at);
    return assumed(
        id,
        temperature,
        month,
        OutdoorAir.Source.READING_WITHOUT_HUMIDITY,
        "outdoor temperature read"
            + Moments.said(reading.at())
            + ", humidity not; its vapour is the mean of the month in the climate "
            + home.climate().name(),
        reading.at());
  }

  private Found month(String id, Optional<Moment> at) {
    OutdoorClimate.Month month = monthOf(at);
    return assumed(
        id,
        Range.around(month.temperature(), rules.dayTemperatureSpread().value()),
        month,
        OutdoorAir.Source.CLIMATE_MONTH,
        "no outdoor reading near in time; the mean of the month in the climate "
            + home.climate().name(),
        Optional.empty());
  }

  private Found assumed(
      String id,
      Range temperature,
      OutdoorClimate.Month month,
      OutdoorAir.Source source,
      String said,
      Optional<Moment> at) {
    double mean =
        MoistAir.vapourPressurePa(
            month.temperature(), month.relativeHumidity().likely(), HumidityReference.OVER_WATER);
    double spread = rules.dayVapourSpread().value();
    Range humidity =
        new Range(
            humidity(temperature.likely(), mean * (1 - spread)),
            humidity(temperature.likely(), mean),
            humidity(temperature.likely(), mean * (1 + spread)));
    return new Found(
        outdoor(source, said, at, AirFigures.assumed(id, temperature, humidity)), mean * spread);
  }

  private static double humidity(double celsius, double pressure) {
    return Math.min(1, pressure / Iso13788Vapour.saturationPressureOverWaterPa(celsius));
  }

  private static OutdoorAir outdoor(
      OutdoorAir.Source source, String said, Optional<Moment> at, AirFigures figures) {
    return new OutdoorAir(
        source,
        said,
        at,
        figures.temperature(),
        figures.humidity(),
        figures.vapourPressure(),
        figures.vapourContent());
  }

  private OutdoorClimate.Month monthOf(Optional<Moment> at) {
    int number = at.map(Moment::date).orElse(home.survey().visit().date()).getMonthValue();
    return home.climate().months().get(number - 1);
  }

  private Optional<OutdoorReading> nearest(
      Optional<Moment> at, Predicate<OutdoorReading> condition) {
    return NearestReading.within(
        at,
        home.survey().outdoorReadings().stream().filter(condition).toList(),
        OutdoorReading::at,
        pairing.withinHours());
  }
}
