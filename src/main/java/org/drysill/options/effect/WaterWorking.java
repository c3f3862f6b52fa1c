package org.drysill.options.effect;

import java.util.ArrayList;
import java.util.List;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working.Input;
import org.drysill.assess.moisture.MoistureResult.Item;
import org.drysill.options.site.Candidate;
import org.drysill.physics.Range;
import org.drysill.reference.measures.MoistureEffect;

/**
 * The working of the water that a measure keeps out of the air.
 *
 * @param shares what it keeps out
 * @param all all the water that the home gives off
 */
record WaterWorking(MoistureShares shares, Figure all) {
  private static final double SECONDS_PER_DAY = 86_400;

  String formula(Candidate candidate, MoistureEffect effect) {
    if (effect.shareAvoided().isEmpty()) {
      return "min(w; most·G)";
    }
    return "f·"
        + (shares.open(candidate) < 1 ? "o·" : "")
        + (shares.believed() < 1 ? "b·" : "")
        + "Σ Gi";
  }

  List<Input> inputs(Candidate candidate, MoistureEffect effect) {
    return effect
        .shareAvoided()
        .map(share -> ofSources(candidate, effect, share.range()))
        .orElseGet(() -> ofMachine(effect));
  }

  private List<Input> ofSources(Candidate candidate, MoistureEffect effect, Range share) {
    List<Input> inputs = new ArrayList<>();
    inputs.add(share("f", "share of their water", share));
    if (shares.open(candidate) < 1) {
      inputs.add(
          share("o", "part of the extract lacking today", Range.exactly(shares.open(candidate))));
    }
    if (shares.believed() < 1) {
      inputs.add(
          share("b", "part of the list that readings leave", Range.exactly(shares.believed())));
    }
    shares.sources(candidate, effect).map(Item::production).forEach(g -> inputs.add(source(g)));
    return inputs;
  }

  private static Input source(Figure production) {
    return Input.of("Gi", production);
  }

  private static Input share(String symbol, String name, Range value) {
    return Input.of(symbol, name, value, Unit.PERCENT, Basis.ASSUMED);
  }

  private List<Input> ofMachine(MoistureEffect effect) {
    List<Input> inputs = new ArrayList<>();
    effect
        .removedKgPerDay(shares.celsius())
        .ifPresent(
            w ->
                inputs.add(
                    Input.of(
                        "w",
                        "what it takes in air of the home's temperature",
                        w.times(1 / SECONDS_PER_DAY),
                        Unit.MASS_RATE,
                        Basis.ASSUMED)));
    inputs.add(share("most", "most that it takes of all", Range.exactly(shares.mostRemoved())));
    inputs.add(Input.of("G", all));
    return inputs;
  }
}
