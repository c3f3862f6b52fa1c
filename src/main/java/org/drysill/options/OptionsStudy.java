package org.drysill.options;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.Assessment;
import org.drysill.assess.Assumption;
import org.drysill.assess.cautions.ShownCaution;
import org.drysill.options.effect.EffectStudy;
import org.drysill.options.effect.Studied;
import org.drysill.options.money.Costed;
import org.drysill.options.money.FanCosts;
import org.drysill.options.money.MoneyStudy;
import org.drysill.options.money.SameAir;
import org.drysill.options.rank.Budgets;
import org.drysill.options.rank.Entry;
import org.drysill.options.rank.RankedMeasures;
import org.drysill.options.rank.Ranking;
import org.drysill.options.site.Candidate;
import org.drysill.options.site.Placing;
import org.drysill.options.site.Placings;
import org.drysill.reference.Citation;
import org.drysill.reference.cautions.Trigger;
import org.drysill.reference.measures.Measure;
import org.drysill.survey.ApplianceKind;
import org.drysill.survey.CombustionAppliance;

/** Studies every published measure in a home and ranks those that have an effect. */
public final class OptionsStudy {
  private final Assessment assessment;
  private final OptionsBasis basis;
  private final List<NotHere> notHere = new ArrayList<>();
  private final List<Candidate> causes = new ArrayList<>();
  private final List<Studied> working = new ArrayList<>();

  private OptionsStudy(Assessment assessment, OptionsBasis basis) {
    this.assessment = assessment;
    this.basis = basis;
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
    sift();
    MoneyStudy money = new MoneyStudy(assessment, basis);
    List<Costed> costed = working.stream().map(money::of).toList();
    SameAir sameAir = new SameAir(costed, basis);
    List<Entry> entries = costed.stream().map(sameAir::compared).map(this::entry).toList();
    Ranking ranking = new Ranking(basis.defaults().step().likely());
    List<Entry> ordered = ranking.ranked(entries);
    List<RankedMeasure> ranked = new RankedMeasures(basis.catalogue()).of(ordered);
    return new OptionsResult(
        FirstThings.of(assessment, causes),
        ranked,
        notHere,
        new Budgets(assessment.home(), basis.catalogue()).of(ranked),
        new FanCosts(assessment, basis).all(),
        ranking.rule(),
        cautions(ordered),
        assumptions(),
        sources(ordered));
  }

  private void sift() {
    Placings placings = new Placings(assessment, basis);
    EffectStudy effects = new EffectStudy(assessment, basis);
    for (Measure measure : basis.catalogue().measures()) {
      Placing placing = placings.of(measure);
      placing.refusal().ifPresent(notHere::add);
      if (measure.isBeforeAll()) {
        causes.addAll(placing.candidates());
      } else {
        placing.candidates().forEach(c -> sift(c, effects));
      }
    }
  }

  private void sift(Candidate candidate, EffectStudy effects) {
    if (solidFuelInTheRoom(candidate)) {
      refuse(candidate, "no extract fan belongs in a room with a solid-fuel appliance");
      return;
    }
    Optional<Studied> studied = effects.of(candidate);
    if (studied.isEmpty()) {
      refuse(candidate, "no document gives the flow that it would need here");
    } else if (studied.get().works()) {
      working.add(studied.get());
    } else {
      refuse(candidate, "it would change neither the air nor a cold surface enough to notice");
    }
  }

  private void refuse(Candidate candidate, String because) {
    notHere.add(new NotHere(candidate.measure().id(), candidate.title(), because));
  }

  private boolean solidFuelInTheRoom(Candidate candidate) {
    List<String> rooms = candidate.scope().rooms();
    return candidate.measure().cautions().contains(openFlue())
        && assessment.home().survey().dwelling().combustionAppliances().stream()
            .filter(a -> a.kind() == ApplianceKind.SOLID_FUEL_STOVE)
            .map(CombustionAppliance::room)
            .flatMap(Optional::stream)
            .anyMatch(rooms::contains);
  }

  private String openFlue() {
    return basis.cautions().cautions().stream()
        .filter(c -> c.trigger() == Trigger.OPEN_FLUE_WITH_EXTRACT)
        .map(c -> c.id())
        .findFirst()
        .orElse("");
  }

  private Entry entry(Costed costed) {
    Candidate candidate = costed.studied().candidate();
    List<ShownCaution> shown =
        basis
            .cautions()
            .ofWork(candidate.measure().cautions(), assessment.home(), candidate.rooms());
    boolean tested =
        shown.stream()
            .filter(c -> c.caution().trigger() == Trigger.OPEN_FLUE_WITH_EXTRACT)
            .anyMatch(c -> basis.cautions().openFlued(assessment.home()));
    return new Entry(costed, shown, !tested);
  }

  private static List<ShownCaution> cautions(List<Entry> entries) {
    Map<String, ShownCaution> once = new LinkedHashMap<>();
    entries.stream()
        .flatMap(e -> e.cautions().stream())
        .sorted(Comparator.comparingInt((ShownCaution c) -> c.caution().order()))
        .forEach(c -> once.putIfAbsent(c.id(), c));
    return List.copyOf(once.values());
  }

  private List<Assumption> assumptions() {
    return OptionAssumptions.of(basis.defaults());
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
