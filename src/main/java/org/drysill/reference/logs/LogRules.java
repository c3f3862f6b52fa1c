package org.drysill.reference.logs;

import org.drysill.physics.tracer.Substance;
import org.drysill.reference.DataFiles;
import org.drysill.reference.Sourced;
import org.drysill.yaml.Key;

/**
 * How series of a logger are read.
 *
 * @param decays what a decay must be for its rate to count
 * @param capacitance M, effective moisture capacitance multiplier of furnished rooms [1]
 * @param confidence how sure an interval of a decay is
 * @param errors scatter of single readings
 * @param balance when means can be balanced against production
 * @param events what counts as an event of vapour
 */
public record LogRules(
    @Key(about = "What a decay must be for its rate to count") DecayCriteria decays,
    @Key(about = "Effective moisture capacitance multiplier of furnished rooms")
        Sourced capacitance,
    @Key(about = "How sure an interval is") IntervalRules confidence,
    @Key(about = "Scatter of single readings") ReadingScatter errors,
    @Key(about = "When means can be balanced against production") BalanceCriteria balance,
    @Key(about = "What counts as an event of vapour") EventCriteria events) {
  /** Reads the bundled rules. */
  public static LogRules bundled() {
    return DataFiles.read("defaults/logs.yaml", LogRules.class);
  }

  /** Vapour in a furnished room. */
  public Substance vapour() {
    return new Substance.Buffered(capacitance.range());
  }
}
