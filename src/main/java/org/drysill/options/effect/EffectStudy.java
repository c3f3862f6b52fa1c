package org.drysill.options.effect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assessment;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.assess.Working.Input;
import org.drysill.assess.surfaces.CondensationResult;
import org.drysill.assess.ventilation.provided.ProvidedAir;
import org.drysill.options.MeasureEffect;
import org.drysill.options.OptionsBasis;
import org.drysill.options.SurfaceChange;
import org.drysill.options.site.Candidate;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.How;
import org.drysill.reference.measures.AirEffect;
import org.drysill.reference.measures.AirMove;
import org.drysill.reference.measures.Measure;

/** What single measures do in a home. */
public final class EffectStudy {
  private static final Citation BALANCE =
      new Citation(
          "Steady balance of one zone",
          Optional.empty(),
          Optional.of("excess = G / Q"),
          How.DERIVED);

  private final Assessment assessment;
  private final OptionsBasis basis;
  private final SteadyZone zone;
  private final MoistureShares moisture;

  /** For an assessment and what is published. */
  public EffectStudy(Assessment assessment, OptionsBasis basis) {
    this.assessment = assessment;
    this.basis = basis;
    ProvidedAir air = assessment.ventilation().provided();
    this.zone =
        new SteadyZone(air.supply().value(), air.extract().value(), air.infiltration().value());
    this.moisture =
        new MoistureShares(assessment.moisture(), basis.defaults().mostRemoved().likely());
  }

  /** The effect of a candidate; empty where its flow cannot be told. */
  public Optional<Studied> of(Candidate candidate) {
    Optional<AirEffect> air = candidate.measure().air();
    Optional<NewFlow> flow = air.flatMap(a -> new NewFlows(assessment, basis).of(candidate, a));
    if (air.isPresent() && flow.isEmpty()) {
      return Optional.empty();
    }
    FlowChange change =
        air.map(a -> new FlowChanges(assessment).of(candidate, a, flow.orElseThrow().mean()))
            .orElse(FlowChange.NONE);
    return Optional.of(study(candidate, flow, change));
  }

  private Studied study(Candidate candidate, Optional<NewFlow> flow, FlowChange change) {
    Measure measure = candidate.measure();
    Range water = measure.moisture().map(moisture::water).orElse(Range.exactly(0));
    Range ratio = zone.dilution(change).times(moisture.left(water));
    CondensationResult then =
        basis
            .surfaces()
            .assess(
                new ChangedSurfaces(assessment).with(candidate),
                new ScaledVapour(assessment).times(ratio));
    SurfaceCompared compared = new SurfaceCompared(assessment.condensation(), then);
    AirAfter air = new AirAfter(assessment, zone, change, new Figures(candidate.id()));
    MeasureEffect effect = effect(candidate, flow, air, water, ratio, compared);
    return new Studied(
        candidate,
        effect,
        flow.map(f -> new Studied.Running(f.running(), f.shareOfDay())),
        water,
        air.shortfallClosed(),
        opaqueClosed(compared.changes()),
        works(measure, effect, ratio, air));
  }

  private MeasureEffect effect(
      Candidate candidate,
      Optional<NewFlow> flow,
      AirAfter air,
      Range water,
      Range ratio,
      SurfaceCompared compared) {
    Figures figures = new Figures(candidate.id());
    boolean moves =
        candidate.measure().air().filter(a -> a.moves() != AirMove.TRANSFER).isPresent();
    Figure change =
        figures.of(
            "excess_change",
            "change of the indoor vapour excess",
            ratio.plus(Range.exactly(-1)),
            Unit.PERCENT,
            "(G' / G) · (Q / Q') − 1",
            List.of(
                Input.of("Q", assessment.ventilation().provided().wholeHome()),
                Input.of("G", assessment.moisture().itemised())),
            List.of(BALANCE));
    return new MeasureEffect(
        moves ? Optional.of(air.added()) : Optional.empty(),
        moves ? flow.map(f -> running(figures, f)) : Optional.empty(),
        water.high() > 0 ? Optional.of(water(figures, water, candidate)) : Optional.empty(),
        ratio.equals(Range.exactly(1)) ? Optional.empty() : Optional.of(change),
        excessAfter(figures, ratio, change),
        moves ? Optional.of(air.wholeHome()) : Optional.empty(),
        flow.map(f -> new ExtractAfter(assessment, figures).of(candidate, f)).orElse(List.of()),
        compared.changes(),
        air.verdict(),
        compared.opaqueSafe(),
        Optional.of(wetGlass(figures, compared)),
        notes(candidate.measure()));
  }

  private static Figure running(Figures figures, NewFlow flow) {
    return figures.of(
        "running_flow",
        "flow while it runs",
        flow.running(),
        Unit.AIRFLOW,
        flow.basis(),
        "the rate at which it would be set",
        List.of(),
        List.of(flow.source()));
  }

  private static Figure water(Figures figures, Range water, Candidate candidate) {
    return figures.of(
        "moisture",
        "water less in the air",
        water,
        Unit.MASS_RATE,
        "share × water of the sources, or what the machine takes",
        List.of(),
        candidate.measure().moisture().map(m -> List.of(m.source())).orElse(List.of()));
  }

  private Optional<Figure> excessAfter(Figures figures, Range ratio, Figure change) {
    return assessment
        .humidity()
        .home()
        .filter(h -> h.excess().value().low() >= 0 && !ratio.equals(Range.exactly(1)))
        .map(
            h ->
                figures.of(
                    "excess_after",
                    "vapour excess with it",
                    h.excess().value().times(ratio),
                    Unit.VAPOUR_CONTENT,
                    "excess · (1 + change)",
                    List.of(Input.of("excess", h.excess()), Input.of("change", change)),
                    List.of(BALANCE)));
  }

  private static Figure wetGlass(Figures figures, SurfaceCompared compared) {
    return figures.of(
        "wet_glass_months",
        "months with condensation, summed over the windows",
        Range.exactly(compared.wetGlassMonths()),
        Unit.COUNT,
        "Σ months at risk of each window, assessed again",
        List.of(),
        List.of());
  }

  private static List<String> notes(Measure measure) {
    List<String> notes = new ArrayList<>(measure.sideEffects());
    if (measure.air().filter(a -> a.moves() == AirMove.TRANSFER).isPresent()) {
      notes.add("It moves no air by itself; it lets fans reach the rooms behind doors.");
    }
    return notes;
  }

  private boolean works(Measure measure, MeasureEffect effect, Range ratio, AirAfter air) {
    double least = basis.defaults().leastEffect().likely();
    boolean settlesExtract =
        effect.extract().stream().map(Finding::verdict).anyMatch(v -> v == Verdict.MEETS);
    boolean drier = ratio.likely() < 1 - least;
    boolean fewerMonths =
        effect.surfaces().stream().anyMatch(s -> s.monthsAfter() < s.monthsBefore());
    boolean passes = measure.air().filter(a -> a.moves() == AirMove.TRANSFER).isPresent();
    return drier || fewerMonths || passes || (settlesExtract && air.adds());
  }

  private static double opaqueClosed(List<SurfaceChange> changes) {
    int before = 0;
    int after = 0;
    for (SurfaceChange change : changes) {
      before += change.glass() ? 0 : change.monthsBefore();
      after += change.glass() ? 0 : change.monthsAfter();
    }
    return before == 0 ? 0 : Math.max(0, (before - after) / (double) before);
  }
}
