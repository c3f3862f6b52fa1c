package org.drysill.assess.ventilation;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Airflow;
import org.drysill.physics.Range;
import org.drysill.reference.ventilation.QuotedRate;
import org.drysill.reference.ventilation.VentilationDefaults;

/** Air-change figures that people are told, as flows in this home. */
final class Quoted {
  private Quoted() {}

  static List<QuotedAirChange> in(Home home, VentilationDefaults defaults) {
    List<QuotedRate> rows = defaults.quoted();
    return rows.stream().map(row -> in(home, row, rows.indexOf(row) + 1)).toList();
  }

  private static QuotedAirChange in(Home home, QuotedRate row, int number) {
    Range airChange = row.airChange().range();
    return new QuotedAirChange(
        airChange,
        row.meaning(),
        row.wholeHome(),
        row.wholeHome() ? Optional.of(flow(home, row, number)) : Optional.empty(),
        row.source());
  }

  private static Figure flow(Home home, QuotedRate row, int number) {
    Range airChange = row.airChange().range();
    Range volume = home.volume().value();
    return new Figure(
        "ventilation.quoted." + number,
        row.airChange().written() + " in this home",
        airChange.times(volume).times(Airflow.ofAirChange(1, 1).m3PerSecond()),
        Unit.AIRFLOW,
        Basis.CALCULATED,
        () ->
            new Working(
                "q = n × V",
                List.of(
                    Input.of("n", "air changes", airChange, Unit.AIR_CHANGE, Basis.PUBLISHED),
                    Input.of("V", home.volume())),
                List.of(row.source()),
                Optional.empty()));
  }
}
