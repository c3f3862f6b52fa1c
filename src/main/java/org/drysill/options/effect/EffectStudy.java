package org.drysill.options.effect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drysill.assess.Assessment;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Unit;
import org.drysill.assess.Working.Input;
import org.drysill.assess.moisture.MoistureResult.Item;
import org.drysill.assess.ventilation.provided.FanFlow;
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
import org.drysill.reference.measures.MoistureEffect;

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
  private final Figure production;
  private final MoistureShares moisture;

  /** For an assessment and what is published. */
  public EffectStudy(Assessment assessment, OptionsBasis basis) {
    this.assessment = assessment;
    this.basis = basis;
    ProvidedAir air = assessment.ventilation().provided();
    this.zone =
        new SteadyZone(air.supply().value(), air.extract().value(), air.infiltration().value());
    this.production = Production.of(assessment.moisture());
    this.moisture =
        new MoistureShares(
            assessment.moisture(),
            assessment.ventilation().extract(),
            production.likely(),
            MachineAir.celsius(assessment.home()),
            basis.defaults().mostRemoved().likely());
  }

  /** All the water that the home gives off, likely [kg/s]. */
  public double production() {
    return production.likely();
  }

  /** All the water that the home gives off, by its sources and by its readings [kg/s]. */
  public Figure water() {
    return production;
  }

  /** The sources of water that a candidate touches. */
  public List<Item> sources(Candidate candidate) {
    return candidate.measure().moisture().stream()
        .flatMap(m -> moisture.sources(candidate, m))
        .toList();
  }

  /** The part of what the list of sources says that readings leave room for, at most 1. */
  public double believed() {
    return moisture.believed();
  }

  /** The effect of a candidate; empty where its flow cannot be told. */
  public Optional<Studied> of(Candidate candidate) {
    Optional<AirEffect> air = candidate.measure().air();
    Optional<NewFlow> flow = air.flatMap(a -> new NewFlows(assessment, basis).of(candidate, a));
    if (air.isPresent() && flow.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(study(candidate, flow));
  }

  private Studied study(Candidate candidate, Optional<NewFlow> flow) {
    List<FanFlow> replaced = new ReplacedFans(assessment.ventilation().provided()).by(candidate);
    FlowChange change =
        candidate
            .measure()
            .air()
            .flatMap(a -> flow.map(f -> FlowChange.of(a.moves(), f.mean(), replaced)))
            .orElse(FlowChange.NONE);
    Range water = moisture.water(candidate);
    Range ratio = zone.dilution(change).times(moisture.left(candidate, water));
    MeasureEffect effect = effect(candidate, flow, change, water, ratio);
    return new Studied(
        candidate,
        effect,
        flow.map(f -> new Studied.Running(f.running(), f.shareOfDay())),
        replaced,
        water,
        new ShownEffect(
                basis.defaults().leastEffect().likely(),
                !assessment.condensation().places().isEmpty())
            .in(effect));
  }

  private MeasureEffect effect(
      Candidate candidate, Optional<NewFlow> flow, FlowChange change, Range water, Range ratio) {
    Figures figures = new Figures(candidate.id());
    AirAfter air = new AirAfter(assessment, zone, change, figures);
    SurfaceCompared surfaces = new SurfacesWith(assessment, basis.surfaces()).of(candidate, ratio);
    Optional<NewFlow> moved =
        flow.filter(f -> candidate.measure().air().orElseThrow().moves() != AirMove.TRANSFER);
    List<Finding> extract =
        flow.map(f -> new ExtractAfter(assessment, figures).of(candidate, f)).orElse(List.of());
    Optional<Figure> spared =
        water.high() > 0 ? Optional.of(water(figures, water, candidate)) : Optional.empty();
    Figure changed = excessChange(figures, ratio, spared, moved.map(f -> air.outdoorAir()));
    return new MeasureEffect(
        moved.map(f -> air.added()),
        moved.map(f -> running(figures, f)),
        spared,
        ratio.equals(Range.exactly(1)) ? Optional.empty() : Optional.of(changed),
        excessAfter(figures, ratio, changed),
        air.lacksToday(),
        air.lacksAfter(),
        moved.map(f -> air.wholeHome()),
        extract,
        new Settled(assessment.ventilation()).by(candidate, extract),
        surfaces.changes(),
        air.verdict(),
        surfaces.opaqueSafe(),
        Optional.of(wetGlass(figures, surfaces.changes())),
        notes(candidate.measure()));
  }

  private Figure excessChange(
      Figures figures, Range ratio, Optional<Figure> water, Optional<Figure> air) {
    List<Input> inputs = new ArrayList<>();
    water.ifPresent(
        w -> {
          inputs.add(Input.of("G", production));
          inputs.add(Input.of("ΔG", w));
        });
    air.ifPresent(
        then -> {
          // By the means of its fans, as Q' is; what the home gets with fans that switch is a
          // little
          // less.
          inputs.add(
              Input.of(
                  "Q",
                  "outdoor air today, by the mean flows of its fans",
                  zone.outdoorAir(FlowChange.NONE),
                  Unit.AIRFLOW,
                  Basis.CALCULATED));
          inputs.add(Input.of("Q'", then));
        });
    String change =
        Stream.of(water.map(w -> "(1 − ΔG/G)"), air.map(a -> "(Q/Q')"))
            .flatMap(Optional::stream)
            .collect(Collectors.joining("·"));
    return figures.of(
        "excess_change",
        "change of the indoor vapour excess",
        ratio.plus(Range.exactly(-1)),
        Unit.PERCENT,
        change.isEmpty() ? "none" : change + " − 1",
        inputs,
        List.of(BALANCE));
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

  private Figure water(Figures figures, Range water, Candidate candidate) {
    WaterWorking working = new WaterWorking(moisture, production);
    MoistureEffect effect = candidate.measure().moisture().orElseThrow();
    return figures.of(
        "moisture",
        "water less in the air",
        water,
        Unit.MASS_RATE,
        working.formula(candidate, effect),
        working.inputs(candidate, effect),
        List.of(effect.source()));
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

  private static Figure wetGlass(Figures figures, List<SurfaceChange> changes) {
    return figures.of(
        "wet_glass_months",
        "months with condensation, summed over the windows",
        changes.stream()
            .filter(SurfaceChange::glass)
            .map(SurfaceChange::monthsAfter)
            .reduce(Range.exactly(0), Range::plus),
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
}
