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

  /** The whole home afterwards. */
  Finding wholeHome() {
    Finding today = assessment.ventilation().wholeHome();
    return new Finding(
        "options." + today.id(),
        today.subject(),
        today.room(),
        verdict(),
        today.direction(),
        Optional.of(outdoorAir()),
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

  /** Air that the home lacks today [m³/s]; empty where nothing is asked. */
  Optional<Figure> lacksToday() {
    return lacks(
        "lacks_today",
        "outdoor air that the home lacks today",
        FlowChange.NONE,
        assessment.ventilation().provided().wholeHome());
  }

  /** Air that it still lacks with the measure [m³/s]. */
  Optional<Figure> lacksAfter() {
    return lacks(
        "lacks_after", "outdoor air that the home still lacks with it", change, outdoorAir());
  }

  private Optional<Figure> lacks(String id, String name, FlowChange with, Figure then) {
    return assessment
        .ventilation()
        .wholeHome()
        .required()
        .map(
            asked ->
                figures.of(
                    id,
                    name,
                    positive(asked.value().minus(zone.outdoorAir(with))),
                    Unit.AIRFLOW,
                    "max(0, asked − Q)",
                    List.of(Input.of("asked", asked), Input.of("Q", then)),
                    List.of()));
  }

  private static Range positive(Range range) {
    return new Range(
        Math.max(0, range.low()), Math.max(0, range.likely()), Math.max(0, range.high()));
  }

  /** Outdoor air of the home with it. */
  Figure outdoorAir() {
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
