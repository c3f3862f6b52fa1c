package org.drysill.options;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drysill.assess.Assessment;
import org.drysill.options.effect.EffectStudy;
import org.drysill.options.effect.Studied;
import org.drysill.options.repair.RepairedHome;
import org.drysill.options.site.Candidate;
import org.drysill.options.site.Placing;
import org.drysill.options.site.Placings;
import org.drysill.reference.cautions.Caution;
import org.drysill.reference.cautions.Trigger;
import org.drysill.reference.measures.Measure;
import org.drysill.survey.ApplianceKind;
import org.drysill.survey.CombustionAppliance;

/** Sifts the published measures: what comes first, what does something here, what is not here. */
final class Sieve {
  private final Assessment assessment;
  private final OptionsBasis basis;
  private final EffectStudy effects;
  private final List<NotHere> notHere = new ArrayList<>();
  private final List<Candidate> causes = new ArrayList<>();
  private final List<Studied> defects = new ArrayList<>();
  private final List<Studied> working = new ArrayList<>();

  /**
   * A sieve.
   *
   * @param assessment by what a measure is considered
   * @param then on what it is studied
   */
  private Sieve(Assessment assessment, Assessment then, OptionsBasis basis) {
    this.assessment = assessment;
    this.basis = basis;
    this.effects = new EffectStudy(then, basis);
  }

  /**
   * What is left in each sieve.
   *
   * @param causes water from elsewhere, to be mended before all, whose amount is not known
   * @param defects what is to be mended before all and has an effect that can be reckoned
   * @param working measures with a shown effect
   * @param notHere the others, with the reason
   */
  record Sifted(
      List<Candidate> causes, List<Studied> defects, List<Studied> working, List<NotHere> notHere) {
    Sifted {
      causes = List.copyOf(causes);
      defects = List.copyOf(defects);
      working = List.copyOf(working);
      notHere = List.copyOf(notHere);
    }
  }

  static Sifted sift(Assessment assessment, OptionsBasis basis) {
    return new Sieve(assessment, assessment, basis).sift(basis.catalogue().measures());
  }

  /**
   * What remains to be done once the causes and defects are mended. What the home as found calls
   * for is considered still, for a better fan may be worth its place even where the mended one
   * does; what it does is reckoned on the mended home.
   *
   * @param first what was sifted from the home as it is
   * @param home the home with them mended
   */
  static Sifted siftAgain(Sifted first, RepairedHome home, OptionsBasis basis) {
    Map<Boolean, List<Measure>> measures =
        basis.catalogue().measures().stream()
            .collect(Collectors.partitioningBy(Measure::isBeforeAll));
    List<String> before = measures.get(true).stream().map(Measure::id).toList();
    Sifted again = new Sieve(home.asFound(), home.then(), basis).sift(measures.get(false));
    return new Sifted(
        first.causes(),
        first.defects(),
        again.working().stream().map(s -> inPlaceOfMended(s, first.defects())).toList(),
        Stream.concat(
                again.notHere().stream(),
                first.notHere().stream().filter(n -> before.contains(n.measure())))
            .sorted(Comparator.comparing(NotHere::kind))
            .toList());
  }

  /** A measure that takes the place of a fan that was just mended says so. */
  private static Studied inPlaceOfMended(Studied studied, List<Studied> defects) {
    List<String> gone = studied.replaced().stream().map(f -> f.fan().id()).toList();
    return defects.stream()
        .filter(d -> d.replaced().stream().anyMatch(f -> gone.contains(f.fan().id())))
        .findFirst()
        .map(d -> studied.saying(d.candidate().measure().name()))
        .orElse(studied);
  }

  private Sifted sift(List<Measure> measures) {
    Placings placings = new Placings(assessment, basis);
    for (Measure measure : measures) {
      Placing placing = placings.of(measure);
      placing.refusal().ifPresent(notHere::add);
      placing.candidates().forEach(this::sift);
    }
    notHere.sort(Comparator.comparing(NotHere::kind));
    return new Sifted(causes, defects, working, notHere);
  }

  private void sift(Candidate candidate) {
    if (solidFuelInTheRoom(candidate)) {
      refuse(
          candidate,
          NotHere.Kind.UNSAFE,
          "no extract fan belongs in a room with a solid-fuel appliance");
    } else if (mendsACause(candidate.measure())) {
      effects
          .of(candidate)
          .filter(s -> s.water().likely() > 0)
          .ifPresentOrElse(defects::add, () -> causes.add(candidate));
    } else {
      study(candidate);
    }
  }

  private void study(Candidate candidate) {
    Optional<Studied> studied = effects.of(candidate);
    if (studied.isEmpty()) {
      refuse(
          candidate, NotHere.Kind.NOT_TOLD, "no document gives the flow that it would need here");
    } else if (candidate.measure().isBeforeAll()) {
      defects.add(studied.get());
    } else if (studied.get().works()) {
      working.add(studied.get());
    } else {
      refuse(
          candidate,
          NotHere.Kind.NO_EFFECT,
          "at the likely values it closes no shortfall and ends no month at risk");
    }
  }

  /**
   * What comes first and moves no air: a leak, a gutter, a survey. It has an effect that can be
   * reckoned where the survey says how much water it is about.
   */
  private static boolean mendsACause(Measure measure) {
    return measure.isBeforeAll() && measure.air().isEmpty();
  }

  private void refuse(Candidate candidate, NotHere.Kind kind, String because) {
    notHere.add(new NotHere(candidate.measure().id(), candidate.title(), kind, because));
  }

  private boolean solidFuelInTheRoom(Candidate candidate) {
    List<String> rooms = candidate.scope().rooms();
    return takesAirOut(candidate.measure())
        && assessment.home().survey().dwelling().combustionAppliances().stream()
            .filter(a -> a.kind() == ApplianceKind.SOLID_FUEL_STOVE)
            .map(CombustionAppliance::room)
            .flatMap(Optional::stream)
            .anyMatch(rooms::contains);
  }

  /** True where the caution about open flues and extract belongs to it. */
  private boolean takesAirOut(Measure measure) {
    return basis.cautions().cautions().stream()
        .filter(c -> c.trigger() == Trigger.OPEN_FLUE_WITH_EXTRACT)
        .map(Caution::id)
        .anyMatch(measure.cautions()::contains);
  }
}
