package org.drysill.yaml.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.drysill.yaml.Dimension;
import org.drysill.yaml.Quantity;
import org.drysill.yaml.units.QuantityException.Fault;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Spellings of the trade against values in the kept unit. The factors are exact by definition (foot
 * 0.3048 m, inch 25.4 mm), worked by hand; the U-value of 1 BTU/(h·ft²·°F) is the handbook figure
 * 5.678 W/(m²·K) (memory).
 */
class QuantityTextTest {
  private static Quantity read(String text, Dimension dimension, String unit)
      throws QuantityException {
    return QuantityText.of(text, dimension, unit).quantity();
  }

  @ParameterizedTest(name = "{0} is {3}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "11 l/s | AIRFLOW | l/s | 0.011",
        "11 L/s | AIRFLOW | l/s | 0.011",
        "11 dm3/s | AIRFLOW | l/s | 0.011",
        "11 dm³/s | AIRFLOW | l/s | 0.011",
        "11 litres per second | AIRFLOW | l/s | 0.011",
        "11 | AIRFLOW | l/s | 0.011",
        "54 m3/h | AIRFLOW | l/s | 0.015",
        "54m³/h | AIRFLOW | l/s | 0.015",
        "54 m³·h⁻¹ | AIRFLOW | l/s | 0.015",
        "30 cfm | AIRFLOW | l/s | 0.0141584233",
        "0.5 m3/s | AIRFLOW | l/s | 0.5",
        "19 | TEMPERATURE | C | 19",
        "19 C | TEMPERATURE | C | 19",
        "19°C | TEMPERATURE | C | 19",
        "19 degC | TEMPERATURE | C | 19",
        "19 ℃ | TEMPERATURE | C | 19",
        "68 F | TEMPERATURE | C | 20",
        "68 °F | TEMPERATURE | C | 20",
        "-40 F | TEMPERATURE | C | -40",
        "−4 C | TEMPERATURE | C | -4",
        "293.15 K | TEMPERATURE | C | 20",
        "0.4 K | TEMPERATURE_DIFFERENCE | K | 0.4",
        "9 F | TEMPERATURE_DIFFERENCE | K | 5",
        "12.5 mm | LENGTH | mm | 0.0125",
        "12,5 mm | LENGTH | mm | 0.0125",
        "0,125 m | LENGTH | mm | 0.125",
        "76 cm | LENGTH | mm | 0.76",
        "2.4 m | LENGTH | mm | 2.4",
        "3/4 in | LENGTH | mm | 0.01905",
        "1 1/2 in | LENGTH | mm | 0.0381",
        "1-1/2 in | LENGTH | mm | 0.0381",
        "1½ in | LENGTH | mm | 0.0381",
        "3/4\" | LENGTH | mm | 0.01905",
        "6\" | LENGTH | mm | 0.1524",
        "5 ft | LENGTH | mm | 1.524",
        "5' 6\" | LENGTH | mm | 1.6764",
        "5 ft 6 in | LENGTH | mm | 1.6764",
        "4000 mm2 | AREA | mm2 | 0.004",
        "4000 mm² | AREA | mm2 | 0.004",
        "25 cm2 | AREA | mm2 | 0.0025",
        "84 sq m | AREA | m2 | 84",
        "84 square metres | AREA | m2 | 84",
        "1000 ft2 | AREA | m2 | 92.90304",
        "1000 sq ft | AREA | m2 | 92.90304",
        "0.4 kg/day | MASS_RATE | kg/day | 4.62962963e-6",
        "0.4 kg/d | MASS_RATE | kg/day | 4.62962963e-6",
        "0.4 l/day | MASS_RATE | kg/day | 4.62962963e-6",
        "0.4 litres a day | MASS_RATE | kg/day | 4.62962963e-6",
        "36 g/h | MASS_RATE | kg/day | 1e-5",
        "2 kW | POWER | W | 2000",
        "9 /h | AIR_CHANGE | /h | 9",
        "9/h | AIR_CHANGE | /h | 9",
        "9 1/h | AIR_CHANGE | /h | 9",
        "9 h-1 | AIR_CHANGE | /h | 9",
        "9 ach | AIR_CHANGE | /h | 9",
        "9 air changes an hour | AIR_CHANGE | /h | 9",
        "8 m3/(h.m2) | AIR_PERMEABILITY | m3/(h.m2) | 8",
        "8 m³/(h·m²) | AIR_PERMEABILITY | m3/(h.m2) | 8",
        "8 m3/h.m2 @ 50 Pa | AIR_PERMEABILITY | m3/(h.m2) | 8",
        "85 % | PERCENT | % | 0.85",
        "85 | PERCENT | % | 0.85",
        "85 per cent | PERCENT | % | 0.85",
        "0.85 ratio | PERCENT | % | 0.85",
        "64 %RH | RELATIVE_HUMIDITY | % | 0.64",
        "0.62 | RATIO | 1 | 0.62",
        "62 % | RATIO | 1 | 0.62",
        "900 ppm | CONCENTRATION | ppm | 900",
        "5 Pa | PRESSURE | Pa | 5",
        "2.1 W/m2K | U_VALUE | W/(m2.K) | 2.1",
        "2.1 W/(m2.K) | U_VALUE | W/(m2.K) | 2.1",
        "2.1 W/m²·K | U_VALUE | W/(m2.K) | 2.1",
        "1 BTU/(h.ft2.F) | U_VALUE | W/(m2.K) | 5.678263",
        "0.035 W/mK | CONDUCTIVITY | W/(m.K) | 0.035",
        "27 p/kWh | ENERGY_PRICE | /kWh | 0.27",
        "0.27 /kWh | ENERGY_PRICE | /kWh | 0.27",
        "0.27 GBP/kWh | ENERGY_PRICE | /kWh | 0.27",
        "£0.27/kWh | ENERGY_PRICE | /kWh | 0.27",
        "4000 | MONEY | `` | 4000",
        "4000 GBP | MONEY | `` | 4000",
        "€4000 | MONEY | `` | 4000",
        "20 years | YEARS | y | 20",
        "18 months | YEARS | y | 1.5",
        "30 deg | ANGLE | deg | 30",
        "90 min | HOURS_PER_DAY | h | 1.5",
      })
  void a_spelling_of_the_trade_is_understood(
      String text, Dimension dimension, String unit, double kept) throws QuantityException {
    Quantity quantity = read(text, dimension, unit);
    assertThat(quantity.value()).isCloseTo(kept, within(Math.abs(kept) * 1e-7));
    assertThat(quantity.isRange()).isFalse();
    assertThat(quantity.written()).isEqualTo(text);
  }

  @ParameterizedTest(name = "{0} is {3} within {4} and {5}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "8..12 /h | AIR_CHANGE | /h | 10 | 8 | 12",
        "8 .. 12 | AIR_CHANGE | /h | 10 | 8 | 12",
        "8–12 /h | AIR_CHANGE | /h | 10 | 8 | 12",
        "8 to 12 /h | AIR_CHANGE | /h | 10 | 8 | 12",
        "8-12 /h | AIR_CHANGE | /h | 10 | 8 | 12",
        "8 /h to 12 /h | AIR_CHANGE | /h | 10 | 8 | 12",
        "8 /h..12 | AIR_CHANGE | /h | 10 | 8 | 12",
        "-5..-2 C | TEMPERATURE | C | -3.5 | -5 | -2",
        "68..77 F | TEMPERATURE | C | 22.5 | 20 | 25",
        "12..15 kg/day | MASS_RATE | kg/day | 1.5625e-4 | 1.38888889e-4 | 1.73611111e-4",
        "900..1400 | MONEY | `` | 1150 | 900 | 1400",
        "5 ± 1 | AIRFLOW | l/s | 0.005 | 0.004 | 0.006",
        "5 +/- 1 l/s | AIRFLOW | l/s | 0.005 | 0.004 | 0.006",
        "5 l/s ± 1 | AIRFLOW | l/s | 0.005 | 0.004 | 0.006",
        "50 l/s ± 10 % | AIRFLOW | l/s | 0.05 | 0.045 | 0.055",
        "64 % ± 2.5 % | RELATIVE_HUMIDITY | % | 0.64 | 0.615 | 0.665",
        "20 C ± 0.5 K | TEMPERATURE | C | 20 | 19.5 | 20.5",
        "20 ± 0.5 K | TEMPERATURE | C | 20 | 19.5 | 20.5",
        "20 ± 0.5 C | TEMPERATURE | C | 20 | 19.5 | 20.5",
        "68 F ± 9 F | TEMPERATURE | C | 20 | 15 | 25",
        "68 ± 9 F | TEMPERATURE | C | 20 | 15 | 25",
        "68 F ± 9 | TEMPERATURE | C | 20 | 15 | 25",
      })
  void a_range_or_an_uncertainty_is_understood(
      String text, Dimension dimension, String unit, double value, double low, double high)
      throws QuantityException {
    Quantity quantity = read(text, dimension, unit);
    assertThat(quantity.value()).isCloseTo(value, within(Math.abs(value) * 1e-7));
    assertThat(quantity.low()).isCloseTo(low, within(Math.abs(low) * 1e-7));
    assertThat(quantity.high()).isCloseTo(high, within(Math.abs(high) * 1e-7));
  }

  @ParameterizedTest(name = "{0} is refused: {3}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "fast | AIRFLOW | l/s | NOT_A_NUMBER",
        "about 5 l/s | AIRFLOW | l/s | NOT_A_NUMBER",
        "l/s | AIRFLOW | l/s | NOT_A_NUMBER",
        "1/0 in | LENGTH | mm | NOT_A_NUMBER",
        "1e999 mm | LENGTH | mm | NOT_A_NUMBER",
        "5 kg/day | AIRFLOW | l/s | WRONG_UNIT",
        "5 furlongs | LENGTH | mm | WRONG_UNIT",
        "20 C ± 5 % | TEMPERATURE | C | WRONG_UNIT",
        "5 % | NUMBER | `` | WRONG_UNIT",
        "1,200 mm | LENGTH | mm | AMBIGUOUS",
        "1,200.5 mm | LENGTH | mm | AMBIGUOUS",
        "1.200,5 mm | LENGTH | mm | AMBIGUOUS",
        "1 200 mm | LENGTH | mm | AMBIGUOUS",
        "1'200 mm | LENGTH | mm | AMBIGUOUS",
        "12..8 /h | AIR_CHANGE | /h | BACKWARDS",
        "12 ± -8 /h | AIR_CHANGE | /h | BACKWARDS",
      })
  void what_cannot_be_read_in_one_way_is_refused(
      String text, Dimension dimension, String unit, Fault fault) {
    assertThatThrownBy(() -> read(text, dimension, unit))
        .isInstanceOfSatisfying(
            QuantityException.class, e -> assertThat(e.fault()).isEqualTo(fault))
        .message()
        .isNotBlank();
  }
}
