package org.drysill.survey.violations;

import java.nio.file.Path;
import org.drysill.assess.Verdict;
import org.drysill.physics.violations.Nature;
import org.yaml.snakeyaml.Yaml;

/**
 * Classes of {@code survey} that break the rules of the house, so that a test can see them told.
 */
public final class Seen {
  private Seen() {}

  /** Has an arrow that the picture lacks. */
  public record Judges(Verdict verdict) {}

  /** Parses YAML by itself. */
  public record ParsesYaml(Yaml yaml) {}

  /** Closes a circle with physics. */
  public record Computes(Nature.ReadsASurvey nature) {}

  /** Breaks nothing: reading is what this package is for. */
  public record ReadsAFile(Path file) {}
}
