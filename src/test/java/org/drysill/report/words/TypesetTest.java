package org.drysill.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TypesetTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "closed, with cracks of 3000..9000 mm2|closed, with cracks of 3,000–9,000 mm²",
        "open, 1.5 m2|open, 1.5 m²",
        "7 m3/(h.m2) at 50 Pa|7 m³/(h·m²) at 50 Pa",
        "9 /h at 50 Pa|9 ach at 50 Pa",
        "0.5..2.5 h|0.5–2.5 h",
        "Accuracy of CO2 of th1|Accuracy of CO₂ of th1",
        "plus or minus 100 ppm|±\u00a0100 ppm",
        "brick 1700 to 1800 kg/m3|brick 1700 to 1800 kg/m³",
        "ISO 10456, 2007, Table 3|ISO 10456, 2007, Table 3",
        "the logger room2|the logger room2"
      })
  void what_a_keyboard_writes_is_printed_as_it_should_be(String written, String printed) {
    assertThat(Typeset.of(written)).isEqualTo(printed);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "q = 0.3 l/s per 1 m2 × A|q = 0.3 l/s per 1 m² × A",
        "q = (20 m3/h + 1.15 m3/h × A + -0.001 m3/h × A²)|q = (20 m³/h + 1.15 m³/h × A − 0.001 m³/h × A²)"
      })
  void formulas_keep_their_numbers(String written, String printed) {
    assertThat(Typeset.units(written)).isEqualTo(printed);
  }
}
