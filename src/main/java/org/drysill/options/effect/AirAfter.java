package org.drysill.options.effect;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assessment;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.assess.Working.Input;
import org.drysill.assess.ventilation.provided.ProvidedAir;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.How;

/** The air of the home with a measure, against what is asked. */
record AirAfter(Assessment assessment, SteadyZone zone, FlowChange change, Figures figures) {
  private static final Citation QUADRATURE =
      new Citation(
          "ASHRAE Handbook Fundamentals",
          Optional.empty(),
          Optional.of("mechanical flows and infiltration in quadrature"),
          How.MEMORY);

  /** Outdoor air added over time [m³/s]. */
  Figure added() {
    return figures.of(
        "added_air",
        "outdoor air added, averaged over time",
        zone.addedAir(change),
        Unit.AIRFLOW,
        "Q' − Q, Q = min(Qsu, Qex) + √((Qsu − Qex)² + Qi²)",
        inputs(),
        List.of(QUADRATURE));
  }

  /** True where it likely adds any air. */
  boolean adds() {
    return zone.addedAir(change).likely() > 0;
  }

  /** The whole home afterwards. */
  Finding wholeHome() {
    Finding today = assessment.ventilation().wholeHome();
    return new Finding(
        "options." + today.id(),
        today.subject(),
        today.room(),
        verdict(),
        today.direction(),
        Optional.of(provided()),
        today.required(),
        "With it the home would get the air shown here; today's finding stands beside it.",
        today.settledBy(),
        today.sources());
  }

  Verdict verdict() {
    Finding today = assessment.ventilation().wholeHome();
    if (change.equals(FlowChange.NONE)) {
      return today.verdict();
    }
    return today
        .required()
        .map(r -> Verdict.atLeast(zone.outdoorAir(change), r.value().high()))
        .orElse(Verdict.UNKNOWN);
  }

  /** Share of today's likely shortfall that it closes [1]. */
  double shortfallClosed() {
    double asked = assessment.ventilation().wholeHome().required().map(Figure::likely).orElse(0.0);
    double today = zone.outdoorAir(FlowChange.NONE).likely();
    double then = zone.outdoorAir(change).likely();
    return asked <= today ? 0 : Math.max(0, Math.min(1, (then - today) / (asked - today)));
  }

  private Figure provided() {
    return figures.of(
        "whole_home",
        "outdoor air of the home with it",
        zone.outdoorAir(change),
        Unit.AIRFLOW,
        "Q' = min(Qsu', Qex') + √((Qsu' − Qex')² + Qi'²)",
        inputs(),
        List.of(QUADRATURE));
  }

  private List<Input> inputs() {
    ProvidedAir air = assessment.ventilation().provided();
    Range supply = change.supply();
    Range extract = change.extract();
    return List.of(
        Input.of("Qsu", air.supply()),
        Input.of("Qex", air.extract()),
        Input.of("Qi", air.infiltration()),
        Input.of("ΔQsu", "supply added", supply, Unit.AIRFLOW, Basis.CALCULATED),
        Input.of("ΔQex", "extract added", extract, Unit.AIRFLOW, Basis.CALCULATED));
  }
}
