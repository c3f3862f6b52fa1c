package org.drysill.options.repair;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working.Input;
import org.drysill.assess.humidity.HumidityResult;
import org.drysill.assess.humidity.HumidityResult.HomeAir;
import org.drysill.options.effect.Figures;
import org.drysill.physics.Range;

/** The vapour excess of the home with its defects mended; readings stay as they were read. */
final class RepairedHumidity {
  private RepairedHumidity() {}

  static HumidityResult of(HumidityResult today, Range ratio) {
    return new HumidityResult(
        today.readings(),
        today.co2(),
        today.home().map(air -> of(air, ratio)),
        today.findings(),
        today.assumptions());
  }

  private static HomeAir of(HomeAir air, Range ratio) {
    return air.excess().value().low() < 0
        ? air
        : new HomeAir(
            air.temperature(),
            air.vapourPressure(),
            excess(air.excess(), ratio),
            air.excessPressure(),
            air.excessPressureUnread(),
            air.outdoorTemperature(),
            air.simultaneous(),
            air.rooms());
  }

  private static Figure excess(Figure today, Range ratio) {
    return new Figures("repaired")
        .of(
            "excess",
            "vapour excess with the defects mended",
            today.value().times(ratio),
            Unit.VAPOUR_CONTENT,
            "excess · ratio",
            List.of(
                Input.of("excess", today),
                new Input(
                    "ratio",
                    "excess of the rooms with the defects mended by that of today, mean by volume,"
                        + " in the month in which least is gained",
                    ratio,
                    Unit.RATIO,
                    Basis.CALCULATED,
                    Optional.empty())),
            List.of());
  }
}
