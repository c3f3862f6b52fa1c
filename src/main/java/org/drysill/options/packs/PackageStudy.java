package org.drysill.options.packs;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drysill.assess.Assessment;
import org.drysill.assess.Figure;
import org.drysill.assess.OutdoorClimate;
import org.drysill.options.MeasurePackage;
import org.drysill.options.OptionsBasis;
import org.drysill.options.PackagesResult;
import org.drysill.options.PackagesResult.FrontPoint;
import org.drysill.options.effect.EffectStudy;
import org.drysill.options.money.AirBill;
import org.drysill.options.packs.PackValue.Bits;
import org.drysill.options.rank.Entry;
import org.drysill.options.rank.Purse;

/** Combines the measures that work, evaluates every package and says what follows. */
public final class PackageStudy {
  private static final int SHOWN = 3;
  private static final List<String> NAMES = List.of("A", "B", "C");

  private final Assessment assessment;
  private final OptionsBasis basis;
  private final Purse purse;
  private final Candidates candidates;
  private final Packages packages;
  private final PackOrder order;
  private final PackWriter writer;

  PackageStudy(
      Assessment assessment,
      OptionsBasis basis,
      List<Entry> ranked,
      AirBill price,
      HomeZones zones) {
    this.assessment = assessment;
    this.basis = basis;
    this.purse = Purse.of(assessment.home());
    VapourChanges changes =
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
    this.packages =
        new Packages(
            new VapourModel(zones.home(), states.glass().get(0)),
            air,
            fabric,
            states,
            barred(air, Candidates.against(candidates.air(), candidates.fabric())));
    PackValue today = packages.of(new Bits(0, 0));
    this.order =
        new PackOrder(today.lacks(), today.mould(), basis.defaults().packageStep().likely());
    this.writer =
        new PackWriter(
            assessment,
            candidates,
            new OrderOfWorks(packages, order),
            this::winterHumidity,
            packages::atRisk);
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
    Best pick = new Best(packages, order);
    Predicate<PackValue> reached =
        v -> purse.money().map(m -> v.bill().first() <= m.high()).orElse(true);
    List<PackValue> best =
        pick.several(
            reached.and(this::does), (int) Math.round(basis.defaults().bestPackages().likely()));
    List<MeasurePackage> shown = shown(best);
    return new PackagesResult(
        candidates.size(),
        packages.count(),
        PackOrder.rule(),
        candidates.leftOut(),
        writer.of("today", packages.of(new Bits(0, 0)), List.of()),
        shown,
        beyond(pick, best),
        dryGlass(pick, best),
        front(pick, best),
        InBest.all(candidates, best),
        best.size(),
        new InBest(packages, candidates, purse).none(best),
        new SumsOfMoney(pick, candidates, purse).of(best),
        limits());
  }

  /** True for what closes anything that is lacking. */
  private boolean does(PackValue value) {
    return order.progress(value) > 0;
  }

  private List<MeasurePackage> shown(List<PackValue> best) {
    PackReasons reasons = new PackReasons(assessment, order, purse);
    List<MeasurePackage> shown = new ArrayList<>();
    for (int i = 0; i < Math.min(SHOWN, best.size()); i++) {
      Optional<PackValue> above = i == 0 ? Optional.empty() : Optional.of(best.get(0));
      shown.add(writer.of(NAMES.get(i), best.get(i), reasons.of(best.get(i), above)));
    }
    return shown;
  }

  /** What would be best if money were no matter, where that is another. */
  private Optional<MeasurePackage> beyond(Best pick, List<PackValue> best) {
    PackReasons reasons = new PackReasons(assessment, order, purse);
    return purse
        .money()
        .flatMap(m -> pick.of(this::does))
        .filter(v -> best.isEmpty() || order.comparator().compare(v, best.get(0)) < 0)
        .map(v -> writer.of("X", v, reasons.of(v, best.stream().findFirst())));
  }

  private Optional<MeasurePackage> dryGlass(Best pick, List<PackValue> best) {
    return best.stream()
        .findFirst()
        .flatMap(
            first ->
                pick.first(
                        v -> (v.safe() || !first.safe()) && order.steps(v) >= order.steps(first),
                        Comparator.comparingInt(PackValue::wet).thenComparing(order.comparator()))
                    .filter(v -> v.wet() < first.wet()))
        .map(v -> writer.of("dry", v, List.of()));
  }

  /** The front of what is as safe and as lasting as the best, and the packages that are shown. */
  private List<FrontPoint> front(Best pick, List<PackValue> best) {
    boolean safe = best.stream().anyMatch(PackValue::safe);
    boolean lasting = best.stream().anyMatch(v -> !v.stopGap());
    List<PackValue> front = pick.front(v -> (v.safe() || !safe) && (!v.stopGap() || !lasting));
    return Stream.concat(front.stream(), best.stream().limit(SHOWN).filter(v -> !front.contains(v)))
        .map(v -> new FrontPoint(name(v, best), v.bill().annual(), v.mould(), v.lacks()))
        .toList();
  }

  private static String name(PackValue value, List<PackValue> best) {
    int at = best.indexOf(value);
    return at >= 0 && at < SHOWN ? NAMES.get(at) : "";
  }

  private double winterHumidity(Bits members) {
    return packages.winterHumidity(members, coldest());
  }

  private int coldest() {
    List<OutdoorClimate.Month> months = assessment.home().climate().months();
    return IntStream.range(0, months.size())
        .boxed()
        .min(Comparator.comparingDouble(m -> months.get(m).temperature()))
        .orElseThrow();
  }

  private List<String> limits() {
    return List.of(
        "The ranking is by likely values; how sure it is was not reckoned.",
        assessment.model().zones().isPresent()
            ? "The rooms exchange air as the readings of all rooms leave it; months, not hours."
            : "The readings do not tell the rooms apart, so the home counts as one; months, not"
                + " hours.",
        "Where two measures touch the same wall the stronger counts.",
        assessment.ventilation().wholeHome().required().map(Figure::likely).isPresent()
            ? "Air that is asked: for the home as a whole, and the extract of wet rooms that are"
                + " short today. Gaps under doors and openings are told with the single measures."
            : "No document asks for a flow of air here, so that only walls and corners count.");
  }
}
