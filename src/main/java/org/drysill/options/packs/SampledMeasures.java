package org.drysill.options.packs;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.assess.Assessment;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.MoneyFacts;
import org.drysill.options.MeasureMoney;
import org.drysill.options.Sureness.InputKind;
import org.drysill.options.draws.Doubt;
import org.drysill.options.draws.Draws;
import org.drysill.options.effect.Studied;
import org.drysill.options.money.AirBill;
import org.drysill.options.money.MoneyStudy;
import org.drysill.physics.Range;
import org.drysill.physics.energy.GlobalCost;
import org.drysill.physics.samples.TwoPieceNormal;
import org.drysill.reference.measures.Measure;

/**
 * What measures do and cost in each sample.
 *
 * <pre>
 * annual = Σ (CI·A(r) + upkeep + W·p_el + H·h·e·p_heat) + ΔQ·q·h·p_heat
 * </pre>
 *
 * <p>CI first cost, A(r) the equal yearly payment for purchase and replacement at discount rate r,
 * W electricity, H heat beside that of the added air, h the heat of a year by its likely value, e
 * the effect of the measure by its likely one, ΔQ the air that the package adds, q heat of a flow.
 * A measure in several rooms costs and does in all of them more or less than is likely at once.
 */
final class SampledMeasures {
  private final Draws draws;
  private final MoneyStudy study;
  private final VapourChanges changes;
  private final MoneyFacts money;
  private final AirBill price;
  private final double[] heatPrice;
  private final double[] powerPrice;
  private final double[] rate;
  private final double[] year;
  private final List<Doubt> doubts = new ArrayList<>();
  private final Map<String, SampledMeasure> known = new LinkedHashMap<>();

  SampledMeasures(Assessment assessment, MoneyStudy study, VapourChanges changes, Draws draws) {
    this.changes = changes;
    this.draws = draws;
    this.study = study;
    this.money = assessment.home().money();
    this.price = study.airBill();
    this.heatPrice = of("money.heat", money.heat(), 0, "the price of the energy that heats");
    this.powerPrice = of("money.electricity", money.electricity(), 0, "the price of electricity");
    this.rate = of("money.discount", money.discountRate(), -0.05, "the discount rate");
    double likely = study.heatOfAir().likely();
    this.year =
        Arrays.stream(at("money.heat_year", study.heatOfAir()))
            .map(heat -> likely > 0 ? Math.max(0, heat / likely) : 1)
            .toArray();
    doubt(
        study.heatOfAir(),
        "money.heat_year",
        InputKind.MONEY,
        Optional.empty(),
        "the energy that warms outdoor air over a year",
        Basis.ASSUMED,
        "how much free heat warms a home, and how well its heating works",
        year);
  }

  /** A measure. */
  SampledMeasure of(Member member) {
    return known.computeIfAbsent(member.id(), id -> sampled(member));
  }

  /** What the heat of a flow of outdoor air costs in a sample [currency/a per m³/s]. */
  double air(int sample) {
    return price.heatKwh() * year[sample] * heatPrice[sample];
  }

  /** What is not known of them. */
  List<Doubt> doubts() {
    return List.copyOf(doubts);
  }

  private double[] of(String id, Figure figure, double least, String name) {
    double[] values = Arrays.stream(at(id, figure.value())).map(v -> Math.max(least, v)).toArray();
    doubt(
        figure.value(),
        id,
        InputKind.MONEY,
        Optional.empty(),
        name,
        figure.basis(),
        figure.basis() == Basis.ASSUMED || figure.basis() == Basis.PUBLISHED
            ? "a usual value"
            : "what the survey states",
        values);
    return values;
  }

  private double[] at(String id, Range range) {
    double[] z = range.isSpread() ? draws.of(id) : new double[draws.samples()];
    return Arrays.stream(z).map(v -> TwoPieceNormal.at(range, v)).toArray();
  }

  private void doubt(
      Range range,
      String id,
      InputKind kind,
      Optional<String> place,
      String name,
      Basis basis,
      String restsOn,
      double[] values) {
    if (range.isSpread() && doubts.stream().noneMatch(d -> d.id().equals(id))) {
      doubts.add(
          new Doubt(id, kind, place, name, basis, restsOn, Arrays.stream(values).boxed().toList()));
    }
  }

  private SampledMeasure sampled(Member member) {
    Measure measure = member.measure();
    Studied studied = member.entry().costed().studied();
    double[] z = draws.of("effect." + measure.id());
    double[] flow = ratios(z, Effects.flow(studied));
    double[] water = ratios(z, studied.water());
    boolean acts = Effects.flow(studied).isSpread() || studied.water().isSpread();
    doubt(
        acts || Effects.warmth(measure).isSpread() ? new Range(0, 0, 1) : Range.exactly(0),
        "effect." + measure.id(),
        InputKind.EFFECT,
        Optional.of(measure.id()),
        "what it does: " + measure.name(),
        Basis.ASSUMED,
        "what such a measure usually does",
        z);
    return new SampledMeasure(
        member,
        studied.replaced().stream()
            .map(f -> new SampledMeasure.Gone(f, changes.without(f)))
            .toList(),
        z,
        flow,
        water,
        annual(member, z, flow, water));
  }

  private double[] annual(Member member, double[] z, double[] flow, double[] water) {
    Measure measure = member.measure();
    MeasureMoney cost = member.entry().costed().money();
    double[] first = first(measure, cost);
    Range power = cost.electricity().value();
    Range upkeep = cost.upkeep().map(Figure::value).orElse(Range.exactly(0));
    double[] run = running(measure, power, upkeep);
    double[] kept = ratios(run, study.kept(measure));
    double[] warmth = ratios(z, Effects.warmth(measure));
    double heat =
        cost.heatLost().likely() - cost.heatSaved().likely() - member.addedAir() * price.heatKwh();
    double[] annual = new double[draws.samples()];
    for (int s = 0; s < annual.length; s++) {
      double effect = flow[s] * kept[s] * warmth[s] * (measure.air().isPresent() ? 1 : water[s]);
      double yearly =
          TwoPieceNormal.at(upkeep, run[s])
              + TwoPieceNormal.at(power, run[s]) * powerPrice[s]
              + heat * year[s] * effect * heatPrice[s];
      annual[s] =
          new GlobalCost(first[s], measure.lifeYears(), money.horizon().likely(), rate[s])
              .perYear(yearly);
    }
    return annual;
  }

  private double[] first(Measure measure, MeasureMoney cost) {
    Range first = cost.firstCost().orElseThrow().value();
    String id = "price." + measure.id();
    double[] z = first.isSpread() ? draws.of(id) : new double[draws.samples()];
    boolean quoted = cost.price().filter(p -> p.quoted()).isPresent();
    doubt(
        first,
        id,
        InputKind.PRICE,
        Optional.of(measure.id()),
        "the price of " + measure.name(),
        quoted ? Basis.DECLARED : Basis.ASSUMED,
        quoted ? "the quote of the survey" : "a usual price, no quote",
        z);
    return Arrays.stream(z).map(v -> Math.max(0, TwoPieceNormal.at(first, v))).toArray();
  }

  private double[] running(Measure measure, Range power, Range upkeep) {
    Range kept = study.kept(measure);
    boolean spread = power.isSpread() || upkeep.isSpread() || kept.isSpread();
    String id = "running." + measure.id();
    double[] z = spread ? draws.of(id) : new double[draws.samples()];
    doubt(
        spread ? new Range(0, 0, 1) : Range.exactly(0),
        id,
        InputKind.RUNNING,
        Optional.of(measure.id()),
        TakenToRun.of(measure, upkeep, kept) + " of " + measure.name(),
        Basis.ASSUMED,
        "what such a measure usually takes",
        z);
    return z;
  }

  /** By its likely value, never below nothing; 1 where nothing is likely. */
  private static double[] ratios(double[] z, Range range) {
    return Arrays.stream(z)
        .map(
            v -> range.likely() > 0 ? Math.max(0, TwoPieceNormal.at(range, v)) / range.likely() : 1)
        .toArray();
  }

  /** What a measure does, as far as it is not of surfaces. */
  private static final class Effects {
    private Effects() {}

    static Range flow(Studied studied) {
      return studied.running().map(r -> r.flow().times(r.shareOfDay())).orElse(Range.exactly(0));
    }

    static Range warmth(Measure measure) {
      return measure.warmth().map(w -> w.raisesBy().range()).orElse(Range.exactly(0));
    }
  }
}
