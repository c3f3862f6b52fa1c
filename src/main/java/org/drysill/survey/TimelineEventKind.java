package org.drysill.survey;

import java.util.List;
import org.drysill.yaml.Worded;

/** What happened on a day of a remediation. */
public enum TimelineEventKind implements Worded {
  /** The landlord was told. */
  REPORTED("reported"),
  /** Someone looked. */
  INVESTIGATED("investigated", "inspected"),
  /** The finding was given to the tenant in writing. */
  SUMMARY_SENT("summary sent", "summary given"),
  /** An urgent hazard was made safe. */
  MADE_SAFE("made safe"),
  /** Work was planned and ordered. */
  WORKS_ORDERED("works ordered", "work ordered", "works planned"),
  /** Work began. */
  WORKS_STARTED("works started", "work started"),
  /** Work ended. */
  WORKS_COMPLETED("works completed", "remedied", "work completed", "completed"),
  /** The same readings were taken again. */
  RE_MEASURED("re-measured", "remeasured", "re-inspected"),
  /** Something else. */
  OTHER("other");

  private final String word;
  private final List<String> synonyms;

  TimelineEventKind(String word, String... synonyms) {
    this.word = word;
    this.synonyms = List.of(synonyms);
  }

  @Override
  public String word() {
    return word;
  }

  @Override
  public List<String> synonyms() {
    return synonyms;
  }
}
