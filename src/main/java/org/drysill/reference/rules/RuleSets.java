package org.drysill.reference.rules;

import org.drysill.yaml.Reading;
import org.drysill.yaml.RecordReader;
import org.drysill.yaml.Vocabularies;

/** Reads rule sets, bundled ones and those of a user alike. */
public final class RuleSets {
  private RuleSets() {}

  /**
   * Reads a rule set.
   *
   * @param text the text of the file
   * @param fileName the name that problems are reported under
   * @return the rule set, or every problem that keeps it from being one, each at its place
   */
  public static Reading<RuleSet> read(String text, String fileName) {
    return RecordReader.read(RuleSet.class, text, fileName, Vocabularies.none());
  }
}
