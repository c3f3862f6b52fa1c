package org.drysill.assess.moisture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Range;
import org.drysill.reference.Sourced;

/** The production of a source by the table, with its working. */
final class CountedFigure {
  private CountedFigure() {}

  static Figure of(String id, String label, Counted counted, Optional<Sourced> lids) {
    Range production = counted.production();
    return new Figure(
        id,
        "Water given off by " + label,
        lids.map(share -> production.times(share.range())).orElse(production),
        Unit.MASS_RATE,
        counted.told() ? Basis.PUBLISHED : Basis.ASSUMED,
        () -> working(counted, lids));
  }

  private static Working working(Counted counted, Optional<Sourced> lids) {
    List<Input> inputs = new ArrayList<>();
    inputs.add(
        Input.of(
            "m",
            "Water for each " + counted.rate().per().word(),
            counted.rate().amount(),
            Unit.KILOGRAM,
            Basis.PUBLISHED));
    inputs.add(
        Input.of(
            "N",
            Words.capital(counted.rate().per().counted()),
            counted.perWeek(),
            Unit.COUNT,
            counted.told() ? Basis.DECLARED : Basis.ASSUMED));
    lids.ifPresent(
        share ->
            inputs.add(
                Input.of("f", "Left by lids and hood", share.range(), Unit.RATIO, Basis.ASSUMED)));
    return new Working(
        lids.isPresent() ? "G = m N f / 7 days" : "G = m N / 7 days",
        inputs,
        List.of(counted.rate().source(), counted.rate().bounds()),
        Optional.empty());
  }
}
