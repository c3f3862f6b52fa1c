package org.drysill.assess.change.air;

import java.util.Locale;
import java.util.Optional;
import org.drysill.assess.change.shown.ChangeWords;
import org.drysill.assess.change.shown.Doubt;
import org.drysill.assess.change.shown.Judgement;
import org.drysill.reference.readings.ChangeRules;

/**
 * Compares the air of one place at two visits.
 *
 * @param id id of the room, or {@code home}
 * @param name its name in sentences
 * @param before at the earlier visit
 * @param after at the later visit
 * @param rules when a change counts as shown
 */
record AirComparison(String id, String name, AirState before, AirState after, ChangeRules rules) {
  AirChange change() {
    AirChangeFigures figures = new AirChangeFigures(this);
    HumidityChange humidity = figures.humidity();
    ExcessChange excess = figures.excess();
    return new AirChange(
        id,
        name,
        from(),
        after.spell().logged(),
        figures.temperatureBefore(),
        figures.temperatureAfter(),
        humidity,
        excess,
        said(humidity, excess));
  }

  /** Whether outdoor air was read or logged with the room at both visits. */
  boolean simultaneous() {
    return before.simultaneous() && after.simultaneous();
  }

  /**
   * Whether a change is shown: first what stands against comparing, then the error.
   *
   * @param change after less before
   * @param error of both visits together
   * @param errorSaid the error in words
   */
  Judgement judge(double change, double error, String errorSaid) {
    return obstacle().orElseGet(() -> Judgement.byError(change, error, errorSaid));
  }

  private Optional<Judgement> obstacle() {
    if (!simultaneous()) {
      return Optional.of(
          Judgement.notShown(
              Doubt.OUTDOORS_NOT_READ, "outdoor air was not read with the rooms at both visits"));
    }
    return new Weather(rules)
        .doubt(Outdoors.of(before), Outdoors.of(after))
        .or(() -> tooShort(before.spell()))
        .or(() -> tooShort(after.spell()));
  }

  private Optional<Judgement> tooShort(Spell spell) {
    double least = rules.log().shortestDays().value();
    double gaps = rules.log().longestGapShare().value();
    if (!spell.logged() || (spell.roundedDays() >= least && spell.gapShare() <= gaps)) {
      return Optional.empty();
    }
    return Optional.of(
        Judgement.notShown(
            Doubt.TOO_SHORT,
            String.format(
                Locale.ROOT,
                "%s with %.0f %% of gaps is less than the %.0f days with at most %.0f %% of gaps that"
                    + " count",
                spell.said(),
                spell.gapShare() * 100,
                least,
                gaps * 100)));
  }

  private String from() {
    return before.spell().logged()
        ? before.spell().said() + " before and " + after.spell().said() + " after"
        : "the readings of both visits";
  }

  private String said(HumidityChange humidity, ExcessChange excess) {
    return "Relative humidity "
        + ChangeWords.humidity(humidity.before().likely(), humidity.after().likely())
        + "; of that "
        + points(humidity.fromTemperature().likely())
        + " points by the temperature of the air"
        + vapour(humidity)
        + ". "
        + excessSaid(excess);
  }

  private static String vapour(HumidityChange humidity) {
    return humidity
        .fromIndoors()
        .map(
            indoors ->
                ", "
                    + points(humidity.fromOutdoors().orElseThrow().likely())
                    + " by outdoor air and "
                    + points(indoors.likely())
                    + " by moisture and air indoors")
        .orElseGet(
            () -> " and " + points(humidity.fromMoisture().likely()) + " by water in the air");
  }

  private static String points(double ratio) {
    return ChangeWords.signed(ratio * 100);
  }

  private static String excessSaid(ExcessChange excess) {
    String span =
        String.format(
            Locale.ROOT,
            "Vapour excess over outdoors %.0f Pa before, %.0f Pa after: ",
            excess.before().likely(),
            excess.after().likely());
    Judgement judgement = excess.judgement();
    return span
        + (judgement.isShown() ? "it " + judgement.words() : "a change is not shown")
        + "; "
        + judgement.criterion()
        + ".";
  }
}
