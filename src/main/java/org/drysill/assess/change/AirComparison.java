package org.drysill.assess.change;

import java.util.Locale;
import java.util.Optional;

/**
 * Compares the air of one place at two visits.
 *
 * @param id id of the room, or {@code home}
 * @param name its name in sentences
 * @param before at the earlier visit
 * @param after at the later visit
 * @param outdoor whether the weather was alike
 */
record AirComparison(
    String id, String name, AirState before, AirState after, OutdoorLikeness outdoor) {

  AirChange change() {
    AirChangeFigures figures = new AirChangeFigures(this);
    return new AirChange(
        id,
        name,
        figures.temperatureBefore(),
        figures.temperatureAfter(),
        figures.humidityBefore(),
        figures.humidityAfter(),
        figures.points(),
        figures.relative(),
        figures.fromTemperature(),
        figures.fromMoisture(),
        figures.excessBefore(),
        figures.excessAfter(),
        figures.excessChange(),
        shown(),
        said());
  }

  HumiditySplit split() {
    return HumiditySplit.of(
        before.temperature().likely(),
        before.pressure().likely(),
        after.temperature().likely(),
        after.pressure().likely());
  }

  /** Error of the change of the excess [Pa]: both visits as root of the sum of squares. */
  double excessError() {
    return Math.hypot(before.excessError(), after.excessError());
  }

  private Shown shown() {
    double change = after.excess().likely() - before.excess().likely();
    if (notShownBecause().isPresent()) {
      return Shown.NOT_SHOWN;
    }
    return change < 0 ? Shown.FELL : Shown.ROSE;
  }

  private Optional<String> notShownBecause() {
    if (!before.simultaneous() || !after.simultaneous()) {
      return Optional.of("outdoor air was not read at both visits");
    }
    if (!outdoor.alike()) {
      return Optional.of("the weather of the two visits was too unlike");
    }
    double change = Math.abs(after.excess().likely() - before.excess().likely());
    return change > excessError()
        ? Optional.empty()
        : Optional.of("it is within the errors of the instruments");
  }

  private String said() {
    HumiditySplit split = split();
    return "Relative humidity "
        + ChangeWords.humidity(before.humidity().likely(), after.humidity().likely())
        + "; of that "
        + ChangeWords.signed(split.fromTemperature() * 100)
        + " points by temperature and "
        + ChangeWords.signed(split.fromMoisture() * 100)
        + " by water in the air. "
        + excessSaid();
  }

  private String excessSaid() {
    String span =
        String.format(
            Locale.ROOT,
            "Vapour excess over outdoors %.0f Pa before, %.0f Pa after",
            before.excess().likely(),
            after.excess().likely());
    return span
        + notShownBecause()
            .map(why -> ": a change is not shown, for " + why + ".")
            .orElse(
                shown() == Shown.FELL
                    ? ": it fell by more than the instruments' errors."
                    : ": it rose by more than the instruments' errors.");
  }
}
