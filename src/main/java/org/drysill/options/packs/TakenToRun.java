package org.drysill.options.packs;

import java.util.ArrayList;
import java.util.List;
import org.drysill.physics.Range;
import org.drysill.reference.measures.Measure;
import org.drysill.reference.measures.MoistureEffect;

/** What of a measure makes it unsure how much it takes to run, in words for a quote. */
final class TakenToRun {
  /** Whether a machine tells its electricity by the water does not hang on the temperature. */
  private static final double USUAL_CELSIUS = 20;

  private TakenToRun() {}

  /**
   * The words, such as {@code power and heat recovery}.
   *
   * @param upkeep its upkeep in a year [currency/a]
   * @param kept the part of its heat that its air keeps [1]
   */
  static String of(Measure measure, Range upkeep, Range kept) {
    List<String> words = new ArrayList<>();
    if (measure.power().isPresent()) {
      words.add("power");
    }
    measure
        .moisture()
        .flatMap(MoistureEffect::kwhPerLoad)
        .ifPresent(kwh -> words.add("electricity for each load"));
    measure
        .moisture()
        .flatMap(m -> m.kwhPerKg(USUAL_CELSIUS))
        .ifPresent(kwh -> words.add("electricity for each litre of water"));
    if (upkeep.isSpread()) {
      words.add("upkeep");
    }
    if (kept.isSpread()) {
      words.add("heat recovery");
    }
    return String.join(" and ", words);
  }
}
