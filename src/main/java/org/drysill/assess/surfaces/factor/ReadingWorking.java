package org.drysill.assess.surfaces.factor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.reference.Citation;

/** The working of a factor from readings. */
final class ReadingWorking {
  private ReadingWorking() {}

  static Working of(CombinedReadings combined, List<Citation> sources) {
    List<Input> inputs = new ArrayList<>();
    int number = 0;
    for (ReadingFactor reading : combined.used()) {
      number++;
      add(inputs, reading, number);
    }
    return new Working(
        "f_j = (Tsi - Te) / (Ti - Te); u_j = √(us² + (f·ui)² + ((1 - f)·ue)²) / (Ti - Te);"
            + " f = Σ f_j/u_j² / Σ 1/u_j²",
        inputs,
        sources,
        Optional.of(
            "The instruments' errors count as offsets that all readings share: more readings do"
                + " not make the error smaller, their scatter makes it larger."));
  }

  private static void add(List<Input> inputs, ReadingFactor reading, int number) {
    inputs.add(
        Input.of("Tsi," + number, "surface", reading.surface(), Unit.CELSIUS, Basis.MEASURED));
    reading
        .air()
        .map(a -> Input.of("Ti," + number, "room air", a, Unit.CELSIUS, Basis.MEASURED))
        .ifPresent(inputs::add);
    reading
        .outdoor()
        .map(o -> Input.of("Te," + number, "outdoor air", o, Unit.CELSIUS, Basis.MEASURED))
        .ifPresent(inputs::add);
  }
}
