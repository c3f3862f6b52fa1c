package org.drysill.options.packs;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drysill.assess.Assessment;
import org.drysill.assess.Figure;
import org.drysill.assess.OutdoorClimate;
import org.drysill.assess.ventilation.words.FlowText;
import org.drysill.options.MeasurePackage;
import org.drysill.options.PackagesResult;
import org.drysill.options.PackagesResult.FrontPoint;
import org.drysill.options.packs.PackValue.Bits;
import org.drysill.options.rank.Purse;

/** What follows from the packages of a home: the best of them, and what all of them tell. */
final class PackageAnswer {
  private static final List<String> NAMES = List.of("A", "B", "C");

  private final Assessment assessment;
  private final Candidates candidates;
  private final SampledPackages sampled;
  private final PackageHours hours;
  private final HourlyLook hourly;
  private final Best pick;
  private final SureBest sure;
  private final Packages packages;
  private final PackOrder order;
  private final Purse purse;

  /**
   * For a home.
   *
   * @param sampled the packages in many samples
   * @param hours the packages hour by hour
   * @param hourly the packages hour by hour in samples
   * @param pick picks from all packages at the likely values
   * @param sure picks the best by how sure they are
   */
  PackageAnswer(
      Assessment assessment,
      Candidates candidates,
      SampledPackages sampled,
      PackageHours hours,
      HourlyLook hourly,
      Best pick,
      SureBest sure) {
    this.sampled = sampled;
    this.hours = hours;
    this.hourly = hourly;
    this.assessment = assessment;
    this.candidates = candidates;
    this.pick = pick;
    this.sure = sure;
    this.packages = pick.packages();
    this.order = pick.order();
    this.purse = Purse.of(assessment.home());
  }

  /**
   * The result.
   *
   * @param most its lists go by so many of the best packages
   * @param ofFront so many packages of the front are followed hour by hour in samples
   * @param onceTested the best one once a safety test is passed, asked for where the best of all
   *     does without
   */
  PackagesResult of(int most, int ofFront, Supplier<Optional<MeasurePackage>> onceTested) {
    List<PackValue> best = best(most);
    PackValue today = packages.of(new Bits(0, 0));
    Optional<PackValue> beyond = beyond(best);
    Optional<PackValue> dryGlass = dryGlass(best);
    List<PackValue> front = front(best);
    Set<PackValue> followed = new LinkedHashSet<>(evenly(front, ofFront));
    best.stream().limit(NAMES.size()).forEach(followed::add);
    followed.add(today);
    beyond.ifPresent(followed::add);
    dryGlass.ifPresent(followed::add);
    hourly.look(followed);
    Spreads spreads = spreads(best);
    PackWriter writer = writer(spreads);
    return new PackagesResult(
        candidates.size(),
        packages.count(),
        sure.order().rule(),
        candidates.leftOut(),
        writer.of("today", today, List.of()),
        shown(writer, best),
        beyond.map(v -> writer.of("X", v, reasons(v).of(v, best.stream().findFirst()))),
        dryGlass.map(v -> writer.of("dry", v, List.of())),
        best.stream().findFirst().filter(PackValue::safe).flatMap(b -> onceTested.get()),
        front.stream().map(v -> point(v, best, followed)).toList(),
        InBest.all(candidates, best),
        best.size(),
        new InBest(
                packages, candidates, purse, new FlowText(assessment.ventilation().rules().units()))
            .none(best),
        new SumsOfMoney(sure, candidates, purse).of(best),
        spreads.sureness(sampled.count()),
        limits());
  }

  /** The best of all by a name, among so many. */
  Optional<MeasurePackage> best(String name, int most) {
    List<PackValue> best = best(most);
    return best.stream()
        .findFirst()
        .map(v -> writer(spreads(best)).of(name, v, reasons(v).of(v, Optional.empty())));
  }

  private List<PackValue> best(int most) {
    return sure.several(this::isReached, most);
  }

  /** True for what the money at hand reaches and closes anything that is lacking. */
  private boolean isReached(PackValue value) {
    return purse.money().map(m -> value.bill().first() <= m.high()).orElse(true) && does(value);
  }

  private Spreads spreads(List<PackValue> best) {
    return new Spreads(
        sampled, hourly, best, assessment.ventilation().wholeHome().required().map(Figure::likely));
  }

  private PackWriter writer(Spreads spreads) {
    return new PackWriter(
        assessment,
        candidates,
        new OrderOfWorks(packages, order),
        bits -> packages.winterHumidity(bits, coldest()),
        packages::atRisk,
        hours::of,
        spreads);
  }

  /** True for what closes anything that is lacking. */
  private boolean does(PackValue value) {
    return order.progress(value) > 0;
  }

  private List<MeasurePackage> shown(PackWriter writer, List<PackValue> best) {
    PackReasons reasons = reasons(sure.surest(this::isReached));
    List<MeasurePackage> shown = new ArrayList<>();
    for (int i = 0; i < Math.min(NAMES.size(), best.size()); i++) {
      Optional<PackValue> above = i == 0 ? Optional.empty() : Optional.of(best.get(0));
      shown.add(writer.of(NAMES.get(i), best.get(i), reasons.of(best.get(i), above)));
    }
    return shown;
  }

  /** Of one that stands apart from the others. */
  private PackReasons reasons(PackValue alone) {
    return reasons(sure.order().chance(alone));
  }

  private PackReasons reasons(double surest) {
    return new PackReasons(assessment, sure.order(), surest, hourly::of, purse);
  }

  /** What would be best if money were no matter, where that is another. */
  private Optional<PackValue> beyond(List<PackValue> best) {
    return purse
        .money()
        .flatMap(m -> sure.of(this::does))
        .filter(v -> best.isEmpty() || isBetter(v, best.get(0)));
  }

  private boolean isBetter(PackValue value, PackValue than) {
    return !value.equals(than) && sure.order().ranked(List.of(than, value)).get(0).equals(value);
  }

  /** What has as much air and as much in reserve as the best and keeps glass driest. */
  private Optional<PackValue> dryGlass(List<PackValue> best) {
    return best.stream()
        .findFirst()
        .flatMap(
            first ->
                pick.first(
                        v -> goesAsFar(v, first),
                        Comparator.comparingInt(PackValue::wet).thenComparing(order.comparator()))
                    .filter(v -> v.wet() < first.wet()));
  }

  private static boolean goesAsFar(PackValue value, PackValue first) {
    return (value.safe() || !first.safe())
        && value.lacks() <= first.lacks()
        && value.mould() <= first.mould()
        && value.airReserve() >= first.airReserve()
        && value.reserve() >= first.reserve();
  }

  /** The front of what is as safe and as lasting as the best, and the packages that are shown. */
  private List<PackValue> front(List<PackValue> best) {
    boolean safe = best.stream().anyMatch(PackValue::safe);
    boolean lasting = best.stream().anyMatch(v -> !v.stopGap());
    List<PackValue> front = pick.front(v -> (v.safe() || !safe) && (!v.stopGap() || !lasting));
    Stream<PackValue> shown = best.stream().limit(NAMES.size()).filter(v -> !front.contains(v));
    return Stream.concat(front.stream(), shown).toList();
  }

  private FrontPoint point(PackValue value, List<PackValue> best, Set<PackValue> followed) {
    return new FrontPoint(
        name(value, best),
        value.bill().annual(),
        value.mould(),
        value.lacks(),
        Optional.of(value).filter(followed::contains).map(hourly::of));
  }

  /** So many of them, the first and the last and others evenly between. */
  static <T> List<T> evenly(List<T> all, int most) {
    return all.size() <= most
        ? all
        : IntStream.range(0, most)
            .mapToObj(i -> all.get((int) Math.round((double) i * (all.size() - 1) / (most - 1))))
            .toList();
  }

  private static String name(PackValue value, List<PackValue> best) {
    int at = best.indexOf(value);
    return at >= 0 && at < NAMES.size() ? NAMES.get(at) : "";
  }

  private int coldest() {
    List<OutdoorClimate.Month> months = assessment.home().climate().months();
    return IntStream.range(0, months.size())
        .boxed()
        .min(Comparator.comparingDouble(m -> months.get(m).temperature()))
        .orElseThrow();
  }

  private List<String> limits() {
    List<String> limits = new ArrayList<>();
    limits.add("Months, days and money of a package are those at the likely values.");
    limits.add(
        assessment.model().zones().isPresent()
            ? "The rooms exchange air as the readings of all rooms leave it."
            : "The readings do not tell the rooms apart, so the home counts as one.");
    limits.add("Where two measures touch the same wall the stronger counts.");
    if (candidates.fabric().stream().anyMatch(m -> m.measure().warmth().isPresent())) {
      limits.add(
          "Panes of warmer rooms take less water out of the air, so that other windows may be wet"
              + " a little longer.");
    }
    limits.add(
        assessment.ventilation().wholeHome().required().map(Figure::likely).isPresent()
            ? "Air that is asked: for the home as a whole, and the extract of wet rooms that are"
                + " short today. Gaps under doors and openings are told with the single measures."
            : "No document asks for a flow of air here, so that only walls and corners count.");
    return limits;
  }
}
