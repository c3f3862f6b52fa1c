package org.drysill.physics.tracer;

import java.util.List;
import java.util.Optional;
import org.drysill.physics.tracer.fit.FittedExponential;

/**
 * All falls of a series, accepted and rejected, in the order of time.
 *
 * @param substance what was logged
 * @param all what was looked at
 */
public record Decays(Substance substance, List<Decay> all) {
  /** Copies the list. */
  public Decays {
    all = List.copyOf(all);
  }

  /** Finds and judges every fall of a series. */
  public static Decays find(
      TracerSeries series, ReadingErrors errors, Substance substance, DecayRules rules) {
    DecayJudge judge = new DecayJudge(series, errors, substance, rules);
    return new Decays(
        substance, Falls.of(series, errors, substance, rules).stream().map(judge::judge).toList());
  }

  /** Those whose rate counts. */
  public List<Decay.Accepted> accepted() {
    return all.stream()
        .filter(Decay.Accepted.class::isInstance)
        .map(Decay.Accepted.class::cast)
        .toList();
  }

  /** Those whose rate does not count. */
  public List<Decay.Rejected> rejected() {
    return all.stream()
        .filter(Decay.Rejected.class::isInstance)
        .map(Decay.Rejected.class::cast)
        .toList();
  }

  /** What they say of the air change together; empty without any accepted decay. */
  public Optional<AirChangeEvidence> airChange(Confidence confidence) {
    List<FittedExponential> fits = accepted().stream().map(Decay.Accepted::fit).toList();
    return fits.isEmpty()
        ? Optional.empty()
        : Optional.of(substance.evidence(CombinedRate.of(fits, confidence), confidence.level()));
  }
}
