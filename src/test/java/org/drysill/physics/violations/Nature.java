package org.drysill.physics.violations;

import org.drysill.Drysill;
import org.drysill.assess.Verdict;
import org.drysill.options.OptionsResult;
import org.drysill.reference.How;
import org.drysill.report.Report;
import org.drysill.survey.RoomUse;
import org.drysill.yaml.Quantity;

/**
 * Classes of {@code physics} that break the rules of the house, so that a test can see them told.
 */
public final class Nature {
  private Nature() {}

  /** Imports against the grain. */
  public record ReadsASurvey(RoomUse use) {}

  /** Knows how files write numbers. */
  public record ReadsYaml(Quantity quantity) {}

  /** Knows what is published. */
  public record LooksThingsUp(How how) {}

  /** Knows what it means. */
  public record Judges(Verdict verdict) {}

  /** Knows what could be done. */
  public record Advises(OptionsResult result) {}

  /** Knows what is said. */
  public record Reports(Report report) {}

  /** Knows the whole pipeline. */
  public record RunsThePipeline(Drysill pipeline) {}
}
