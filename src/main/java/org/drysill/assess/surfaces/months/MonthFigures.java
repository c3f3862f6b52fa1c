package org.drysill.assess.surfaces.months;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.OutdoorClimate;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.How;

/**
 * The figures of a year that stand in sentences, with their workings.
 *
 * @param place the id of the place
 * @param factor its temperature factor
 * @param setpoint indoor temperature while it is heated [°C]
 * @param climate outdoors by month
 * @param excess where the vapour indoors comes from
 * @param criterion what the surface must keep to
 */
record MonthFigures(
    String place,
    Figure factor,
    Figure setpoint,
    OutdoorClimate climate,
    Input excess,
    Criterion criterion) {
  private static final Citation PRESSURES =
      Citation.of("ISO 13788", "2012", "Annex E, saturation vapour pressure", How.MEMORY);

  /** The factor that the critical month needs. */
  Figure required(MonthRow row) {
    return figure(
        "required_factor",
        "required temperature factor",
        row.requiredFactor().orElseThrow(),
        Unit.RATIO,
        row,
        "f_min = (T(pi / φ) - Te) / (Ti - Te)",
        List.of(limit()));
  }

  /** The humidity at the surface in its moistest month. */
  Figure surfaceHumidity(MonthRow row) {
    return figure(
        "highest_surface_humidity",
        "highest humidity at the surface",
        row.surfaceHumidity(),
        Unit.RELATIVE_HUMIDITY,
        row,
        "φsi = pi / ps(Tsi); Tsi = Te + f · (Ti - Te)",
        List.of(Input.of("f", factor)));
  }

  /** The highest indoor humidity that keeps the surface below its limit in its coldest month. */
  Figure dryHumidity(MonthRow row) {
    return figure(
        "lowest_dry_humidity",
        "highest indoor humidity that keeps it below its limit all year",
        row.highestIndoorHumidity(),
        Unit.RELATIVE_HUMIDITY,
        row,
        "φi = φ · ps(Tsi) / ps(Ti); Tsi = Te + f · (Ti - Te)",
        List.of(Input.of("f", factor), limit()));
  }

  private Input limit() {
    return Input.of(
        "φ",
        "humidity at the surface to stay below",
        Range.exactly(criterion.limit()),
        Unit.RELATIVE_HUMIDITY,
        Basis.PUBLISHED);
  }

  private Figure figure(
      String id,
      String name,
      Range value,
      Unit unit,
      MonthRow row,
      String formula,
      List<Input> special) {
    return new Figure(
        "surface." + place + "." + id,
        name,
        value,
        unit,
        weakest(inputs(row, special)),
        () -> new Working(formula, inputs(row, special), sources(), note(row)));
  }

  private static Basis weakest(List<Input> inputs) {
    return inputs.stream().anyMatch(i -> i.basis() == Basis.ASSUMED)
        ? Basis.ASSUMED
        : Basis.CALCULATED;
  }

  private List<Input> inputs(MonthRow row, List<Input> special) {
    List<Input> inputs = new ArrayList<>(special);
    inputs.add(
        Input.of("Ti", "indoors", Range.exactly(row.indoor()), Unit.CELSIUS, setpoint.basis()));
    inputs.add(
        Input.of("Te", "outdoors", Range.exactly(row.outdoor()), Unit.CELSIUS, climate.basis()));
    inputs.add(
        Input.of(
            "pi",
            "vapour indoors, that of the month outdoors and the excess carried to it",
            row.vapourPressure(),
            Unit.PASCAL,
            Basis.CALCULATED));
    inputs.add(excess);
    return inputs;
  }

  private List<Citation> sources() {
    return Stream.concat(Stream.of(criterion.source(), PRESSURES), climate.sources().stream())
        .toList();
  }

  private Optional<String> note(MonthRow row) {
    String when = criterion.coldNights() ? "A cold night of " : "The mean of ";
    return Optional.of(when + MonthNames.of(row.month()) + ".");
  }
}
