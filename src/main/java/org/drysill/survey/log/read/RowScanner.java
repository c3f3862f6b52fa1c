package org.drysill.survey.log.read;

import org.drysill.survey.TemperatureUnit;
import org.drysill.survey.log.LogFlaw;
import org.drysill.survey.log.LogLimits;
import org.drysill.survey.log.LogQuantity;

/**
 * Turns the fields of rows on the air of a room into numbers; what it reads goes into the window.
 */
final class RowScanner extends TimedRows {
  private final int temperatureColumn;
  private final int humidityColumn;
  private final int co2Column;
  private final DecimalText decimal;
  private final TemperatureUnit unit;
  private final double humidityFactor;
  private final LogLimits limits;
  private final Notes notes;
  private final SortWindow window;
  private double temperature;
  private double humidity;
  private double co2;

  RowScanner(Layout layout, LogLimits limits, Notes notes, SortWindow window) {
    super(layout, layout.columns().least(), limits, notes);
    this.temperatureColumn = layout.columns().temperature();
    this.humidityColumn = layout.columns().humidity();
    this.co2Column = layout.columns().co2();
    this.decimal = new DecimalText(layout.told().decimalMark());
    this.unit = layout.told().temperatureUnit();
    this.humidityFactor = layout.told().humidityAsFraction() ? 1 : 0.01;
    this.limits = limits;
    this.notes = notes;
    this.window = window;
  }

  @Override
  void clear() {
    temperature = Double.NaN;
    humidity = Double.NaN;
    co2 = Double.NaN;
  }

  @Override
  void field(int index, char[] text, int from, int end) {
    if (index == temperatureColumn) {
      temperature = decimal.read(text, from, end);
    } else if (index == humidityColumn) {
      humidity = decimal.read(text, from, end);
    } else if (index == co2Column) {
      co2 = decimal.read(text, from, end);
    }
  }

  @Override
  void keep(long moment, long line) {
    double celsius = celsius(line);
    double ratio = humidity(line);
    double ppm = ppm(line);
    if (Double.isNaN(celsius) && Double.isNaN(ratio) && Double.isNaN(ppm)) {
      notes.add(LogFlaw.NO_VALUE, line);
    }
    window.add(moment, celsius, ratio, ppm, line);
  }

  private double celsius(long line) {
    double value = unit.celsius(number(temperature, LogQuantity.TEMPERATURE, line));
    boolean possible = value >= limits.lowestCelsius() && value <= limits.highestCelsius();
    return believed(value, possible, LogQuantity.TEMPERATURE, line);
  }

  private double ppm(long line) {
    double value = number(co2, LogQuantity.CO2, line);
    boolean possible = value >= limits.lowestPpm() && value <= limits.highestPpm();
    return believed(value, possible, LogQuantity.CO2, line);
  }

  private double humidity(long line) {
    double ratio = number(humidity, LogQuantity.HUMIDITY, line) * humidityFactor;
    boolean possible = ratio >= limits.lowestHumidity() && ratio <= 1 + limits.aboveSaturation();
    double believed = believed(ratio, possible, LogQuantity.HUMIDITY, line);
    if (believed > 1) {
      notes.add(LogFlaw.ABOVE_SATURATION, LogQuantity.HUMIDITY, line);
      return 1;
    }
    return believed;
  }
}
