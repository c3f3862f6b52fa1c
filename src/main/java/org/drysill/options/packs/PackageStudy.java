package org.drysill.options.packs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.drysill.assess.Assessment;
import org.drysill.options.MeasurePackage;
import org.drysill.options.OptionsBasis;
import org.drysill.options.PackagesResult;
import org.drysill.options.draws.Draws;
import org.drysill.options.effect.EffectStudy;
import org.drysill.options.money.AirBill;
import org.drysill.options.packs.PackValue.Bits;
import org.drysill.options.rank.Entry;
import org.drysill.options.rank.Ranking;

/** Combines the measures that work, evaluates every package and says what follows. */
public final class PackageStudy {
  private final Assessment assessment;
  private final OptionsBasis basis;
  private final Candidates candidates;
  private final Packages packages;
  private final VapourModel model;
  private final PackOrder order;
  private final HomeZones zones;
  private final VapourChanges changes;
  private final List<Entry> ranked;
  private final AirBill price;

  PackageStudy(
      Assessment assessment,
      OptionsBasis basis,
      List<Entry> ranked,
      AirBill price,
      HomeZones zones) {
    this.assessment = assessment;
    this.basis = basis;
    this.zones = zones;
    this.ranked = List.copyOf(ranked);
    this.price = price;
    this.changes =
        new VapourChanges(
            zones, assessment.moisture().items(), new EffectStudy(assessment, basis).production());
    this.candidates =
        Candidates.of(
            ranked.stream().map(e -> new Member(e, changes.of(e.costed().studied()))).toList(),
            Math.round(basis.defaults().mostPackages().likely()));
    FabricStates states = new FabricStates(assessment, zones, candidates.fabric(), basis.tables());
    List<FabricSide> fabric = new ArrayList<>();
    for (long side : subsets(candidates.fabric())) {
      fabric.add(states.side(side));
    }
    AirSides sides = new AirSides(assessment, zones, candidates.air(), price);
    List<AirSide> air = new ArrayList<>();
    for (long side : subsets(candidates.air())) {
      air.add(sides.of(side));
    }
    this.model = new VapourModel(zones.home(), states.glass().get(0));
    this.packages =
        new Packages(
            model,
            air,
            fabric,
            states,
            barred(air, Candidates.against(candidates.air(), candidates.fabric())),
            Needs.of(candidates));
    PackValue today = packages.of(new Bits(0, 0));
    this.order =
        new PackOrder(today.lacks(), today.mould(), basis.defaults().packageStep().likely());
  }

  /**
   * The packages of a home; empty where fewer than two measures can be combined, where no outdoor
   * air is known of, or where neither air nor a wall is likely in need of anything.
   *
   * @param assessment what its survey means
   * @param basis what is published
   * @param ranked the single measures that work, best first
   * @param price what air takes in a year
   */
  public static Optional<PackagesResult> of(
      Assessment assessment, OptionsBasis basis, List<Entry> ranked, AirBill price) {
    return HomeZones.of(assessment)
        .filter(zones -> ranked.size() > 1)
        .map(zones -> new PackageStudy(assessment, basis, ranked, price, zones))
        .filter(study -> study.candidates.size() > 1 && study.isAnythingLacking())
        .map(PackageStudy::result);
  }

  Packages packages() {
    return packages;
  }

  Candidates candidates() {
    return candidates;
  }

  /** The packages hour by hour. */
  PackageHours hours() {
    return new PackageHours(homeHours(), packages, model, basis.defaults().humidAir().likely());
  }

  /** The packages hour by hour in samples. */
  HourlySamples hours(SampledPackages sampled) {
    return new HourlySamples(
        homeHours(), packages, sampled, basis.tables().surfaces().mouldLimit().likely());
  }

  private HomeHours homeHours() {
    return new HomeHours(assessment, basis, zones);
  }

  /** The packages in samples. */
  SampledPackages sampled(Draws draws) {
    return new SampledPackages(assessment, basis, zones, packages, candidates, changes, draws);
  }

  PackOrder order() {
    return order;
  }

  private static long[] subsets(List<Member> members) {
    return Subsets.of(Candidates.against(members, members), Integer.MAX_VALUE);
  }

  private static long[] barred(List<AirSide> sides, long[] against) {
    return sides.stream()
        .mapToLong(
            s ->
                IntStream.range(0, against.length)
                    .filter(i -> (s.members() & (1L << i)) != 0)
                    .mapToLong(i -> against[i])
                    .reduce(0, (a, b) -> a | b))
        .toArray();
  }

  private boolean isAnythingLacking() {
    return !order.reaches(packages.of(new Bits(0, 0)));
  }

  private PackagesResult result() {
    return answer()
        .of(
            mostBest(),
            (int) Math.round(basis.defaults().frontByHour().likely()),
            this::onceTested);
  }

  private int mostBest() {
    return (int) Math.round(basis.defaults().bestPackages().likely());
  }

  /**
   * The best package once the safety test is passed that some measures need first; empty where no
   * measure needs one, or the best package has none that does.
   */
  private Optional<MeasurePackage> onceTested() {
    List<Entry> tested =
        new Ranking(basis.defaults().step().likely())
            .ranked(ranked.stream().map(Entry::asTested).toList());
    Set<String> untested =
        ranked.stream()
            .filter(e -> !e.admissible())
            .map(e -> e.costed().studied().candidate().id())
            .collect(Collectors.toSet());
    return Optional.of(untested)
        .filter(ids -> !ids.isEmpty())
        .map(ids -> new PackageStudy(assessment, basis, tested, price, zones).answer())
        .flatMap(answer -> answer.best("T", mostBest()))
        .filter(p -> p.steps().stream().anyMatch(s -> untested.contains(s.id())));
  }

  private PackageAnswer answer() {
    SampledPackages sampled =
        sampled(Draws.of((int) Math.round(basis.defaults().samples().likely())));
    HourlyLook hourly = hourly(sampled);
    SureOrder sure =
        new SureOrder(
            order,
            hourly::wetMornings,
            v -> sampled.of(v).enough().share(),
            basis.defaults().sureEnough().likely(),
            basis.defaults().packageStep().likely());
    Best pick = new Best(packages, order);
    return new PackageAnswer(
        assessment,
        candidates,
        sampled,
        hours(),
        hourly,
        pick,
        new SureBest(new Finalists(pick, mostBest()), sure));
  }

  /** The packages hour by hour, at the likely values and in samples. */
  HourlyLook hourly(SampledPackages sampled) {
    return new HourlyLook(
        hours(sampled(new Draws(1, row -> new double[1]))), hours(sampled), sampled);
  }
}
