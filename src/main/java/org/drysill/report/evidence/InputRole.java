package org.drysill.report.evidence;

import org.drysill.yaml.Worded;

/** What a file was to a report. */
public enum InputRole implements Worded {
  /** What was seen at the visit. */
  SURVEY("The survey"),
  /** What was seen at the visit before. */
  EARLIER_SURVEY("The earlier survey"),
  /** Rules of one's own. */
  RULE_SET("A rule set of one's own"),
  /** Measures of one's own. */
  MEASURES("Measures of one's own"),
  /** Hours of outdoor weather. */
  WEATHER("A weather file"),
  /** What an instrument recorded. */
  LOG("A log of readings"),
  /** A picture, which no figure rests on. */
  PHOTOGRAPH("A photograph"),
  /** A template or a style sheet of one's own, which no figure rests on. */
  TEMPLATE("A template of one's own"),
  /** Anything else that a survey names. */
  OTHER("A file that the survey names");

  private final String description;

  InputRole(String description) {
    this.description = description;
  }

  /** What it is, as the beginning of a sentence. */
  public String description() {
    return description;
  }

  /** The role of a file by the key that names it. */
  public static InputRole of(String key) {
    if (key.endsWith("jurisdiction.file")) {
      return RULE_SET;
    }
    if (key.endsWith("options.measures")) {
      return MEASURES;
    }
    if (key.endsWith("climate.file")) {
      return WEATHER;
    }
    if (key.endsWith("logger.file") || key.endsWith(".log") || key.endsWith(".log.file")) {
      return LOG;
    }
    return key.contains("photos") ? PHOTOGRAPH : OTHER;
  }
}
