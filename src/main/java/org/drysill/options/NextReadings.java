package org.drysill.options;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.drysill.assess.Assessment;
import org.drysill.assess.Verdict;
import org.drysill.assess.surfaces.ColdPlace;
import org.drysill.options.Sureness.Input;
import org.drysill.options.Sureness.InputKind;
import org.drysill.options.Sureness.Result;
import org.drysill.options.Sureness.ResultKind;
import org.drysill.reference.readings.ReadingAdvice;
import org.drysill.reference.readings.ReadingAdvice.Advice;

/**
 * What to measure next: the inputs that make most of the spread of those results that are still
 * open, each with the reading that settles it.
 *
 * <p>A result is open where what it has to reach lies within nine in ten of its samples, and the
 * air also where the verdict on the home of today cannot be told. A reading is asked for where its
 * first-order share of the variance of an open result is at least the least share, and more than
 * twice its standard error, so that chance makes no instruction.
 */
record NextReadings(Assessment assessment, ReadingAdvice advice) {
  private static final double CERTAIN = 2;

  /** The readings, that which takes away most first; none where nothing is open. */
  List<NextReading> of(Sureness sureness) {
    Set<ResultKind> open = open(sureness, assessment.ventilation().wholeHome().verdict());
    return sureness.inputs().stream()
        .flatMap(input -> reading(input, open).stream())
        .sorted(Comparator.comparingDouble(NextReading::most).reversed())
        .limit(advice.most())
        .toList();
  }

  static Set<ResultKind> open(Sureness sureness, Verdict air) {
    Set<ResultKind> open = EnumSet.noneOf(ResultKind.class);
    for (Result result : sureness.results()) {
      if (result
          .target()
          .filter(t -> t > result.spread().low() && t < result.spread().high())
          .isPresent()) {
        open.add(result.kind());
      }
      if (result.kind() == ResultKind.AIR && air == Verdict.UNKNOWN) {
        open.add(ResultKind.AIR);
      }
    }
    return open;
  }

  private Optional<NextReading> reading(Input input, Set<ResultKind> open) {
    return advice
        .of(input.kind().name().toLowerCase(Locale.ROOT))
        .map(a -> reading(input, a, open))
        .filter(r -> r.most() > 0);
  }

  private double share(Input input, ResultKind result, Set<ResultKind> open) {
    return input
        .share(result)
        .filter(s -> open.contains(result))
        .filter(s -> s.share() >= advice.leastShare().likely())
        .filter(s -> s.share() > CERTAIN * s.error())
        .map(Sureness.Share::share)
        .orElse(0.0);
  }

  private NextReading reading(Input input, Advice words, Set<ResultKind> open) {
    String name = input.name();
    String place = name.substring(name.indexOf(": ") < 0 ? 0 : name.indexOf(": ") + 2);
    return new NextReading(
        input.id(),
        room(input),
        words.ask().replace("{name}", name).replace("{place}", place),
        words.with(),
        words.when(),
        share(input, ResultKind.AIR, open),
        share(input, ResultKind.RESERVE, open),
        share(input, ResultKind.LEAD, open),
        words.covers());
  }

  private Optional<String> room(Input input) {
    if (input.kind() == InputKind.FAN) {
      return input.place().flatMap(assessment.ventilation()::fan).map(f -> f.room());
    }
    if (input.kind() == InputKind.SURFACE) {
      return assessment.condensation().places().stream()
          .filter(p -> input.place().equals(Optional.of(p.id())))
          .findFirst()
          .map(ColdPlace::room);
    }
    return input.kind() == InputKind.EXCESS ? input.place() : Optional.empty();
  }
}
