package org.drysill.options;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.Assessment;
import org.drysill.assess.cautions.ShownCaution;
import org.drysill.options.effect.Studied;
import org.drysill.options.money.Costed;
import org.drysill.options.money.FanCosts;
import org.drysill.options.money.MoneyStudy;
import org.drysill.options.money.SameAir;
import org.drysill.options.packs.PackageStudy;
import org.drysill.options.rank.Budgets;
import org.drysill.options.rank.Entry;
import org.drysill.options.rank.InTurn;
import org.drysill.options.rank.Purse;
import org.drysill.options.rank.RankedMeasures;
import org.drysill.options.rank.Ranking;
import org.drysill.options.repair.RepairedHome;
import org.drysill.options.repair.Repairs;
import org.drysill.options.site.Candidate;
import org.drysill.reference.Citation;
import org.drysill.reference.cautions.Trigger;
import org.drysill.reference.measures.Measure;

/**
 * Studies every published measure in a home, one by one, and ranks those that have an effect.
 *
 * <p>Sift, cost, compare, rank: each step takes what the one before it made. What comes before
 * every measure is taken as done where the survey says enough of it: measures and packages are
 * studied on the home as it is then.
 */
public final class OptionsStudy {
  private final Assessment today;
  private final Assessment assessment;
  private final OptionsBasis basis;
  private final Sieve.Sifted sifted;
  private final Optional<RepairedHome> repaired;

  private OptionsStudy(Assessment today, OptionsBasis basis) {
    Sieve.Sifted first = Sieve.sift(today, basis);
    this.today = today;
    this.basis = basis;
    this.repaired = RepairedHome.of(today, basis, first.defects());
    this.assessment = repaired.map(RepairedHome::then).orElse(today);
    this.sifted = repaired.map(r -> Sieve.siftAgain(first, r, basis)).orElse(first);
  }

  /**
   * The options of a home.
   *
   * @param assessment what its survey means
   * @param basis what is published about measures and money
   */
  public static OptionsResult study(Assessment assessment, OptionsBasis basis) {
    return new OptionsStudy(assessment, basis).study();
  }

  private OptionsResult study() {
    MoneyStudy money = new MoneyStudy(assessment, basis);
    List<FirstThing> first =
        new FirstThings(today, basis)
            .of(
                sifted.causes(),
                sifted.defects().stream().map(new MoneyStudy(today, basis)::of).toList());
    List<Entry> entries = entries(sifted.working().stream().map(money::of).toList());
    Purse purse = Purse.of(assessment.home());
    Ranking ranking = new Ranking(basis.defaults().step().likely());
    RankedMeasures words = new RankedMeasures(assessment, basis.catalogue(), ranking, purse);
    List<Entry> within = ranking.ranked(entries.stream().filter(e -> !purse.isBeyond(e)).toList());
    List<RankedMeasure> ranked = words.within(within);
    Optional<PackagesResult> packages =
        PackageStudy.of(assessment, basis, ranking.ranked(entries), money.airBill());
    return new OptionsResult(
        first,
        new Repairs(today, basis).told(repaired, sifted.defects(), sifted.causes()),
        ranked,
        words.beyond(ranking.ranked(entries.stream().filter(purse::isBeyond).toList())),
        sifted.notHere(),
        new Budgets(purse, basis.catalogue()).of(first, ranked),
        order(packages, within),
        packages,
        packages
            .flatMap(PackagesResult::sureness)
            .map(new NextReadings(assessment, basis.advice())::of)
            .orElse(List.of()),
        new FanCosts(today, basis).all(),
        ranking.rule(),
        cautions(entries),
        OptionAssumptions.of(basis, assessment),
        sources(entries));
  }

  /** The steps of the best package, else the ranking without what an earlier measure makes idle. */
  private static List<String> order(Optional<PackagesResult> packages, List<Entry> ranked) {
    List<String> steps =
        packages.stream()
            .flatMap(p -> p.best().stream().limit(1))
            .flatMap(p -> p.steps().stream())
            .map(s -> s.id())
            .toList();
    return steps.isEmpty()
        ? InTurn.of(ranked).stream().map(e -> e.costed().studied().candidate().id()).toList()
        : steps;
  }

  private List<Entry> entries(List<Costed> costed) {
    SameAir sameAir = new SameAir(costed, basis, assessment.home().money().currency());
    return costed.stream().map(sameAir::compared).map(this::entry).toList();
  }

  private Entry entry(Costed costed) {
    List<ShownCaution> shown = cautions(costed.studied().candidate());
    boolean untested =
        shown.stream().anyMatch(c -> c.caution().trigger() == Trigger.OPEN_FLUE_WITH_EXTRACT)
            && basis.cautions().openFlued(today.home());
    return new Entry(costed, shown, !untested);
  }

  private List<ShownCaution> cautions(Candidate candidate) {
    return basis.cautions().ofWork(candidate.measure().cautions(), today.home(), candidate.rooms());
  }

  private List<ShownCaution> cautions(List<Entry> entries) {
    Map<String, ShownCaution> once = new LinkedHashMap<>();
    Stream.of(
            sifted.causes().stream().map(this::cautions),
            sifted.defects().stream().map(Studied::candidate).map(this::cautions),
            entries.stream().map(Entry::cautions))
        .flatMap(s -> s)
        .flatMap(List::stream)
        .sorted(Comparator.comparingInt(c -> c.caution().order()))
        .forEach(c -> once.putIfAbsent(c.id(), c));
    return List.copyOf(once.values());
  }

  private static List<Citation> sources(List<Entry> entries) {
    return entries.stream()
        .map(e -> e.costed().studied().candidate().measure())
        .flatMap(m -> Stream.concat(Stream.of(m.price().source()), effectSources(m)))
        .distinct()
        .toList();
  }

  private static Stream<Citation> effectSources(Measure measure) {
    return Stream.of(
            measure.air().map(a -> a.source()),
            measure.moisture().map(m -> m.source()),
            measure.surface().map(s -> s.source()),
            measure.warmth().map(w -> w.source()))
        .flatMap(Optional::stream);
  }
}
