package org.drysill.report.compared;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.drysill.assess.Verdict;
import org.drysill.assess.change.ChangeResult;
import org.drysill.assess.change.air.AirChange;
import org.drysill.assess.change.place.MouldChange;
import org.drysill.assess.change.shown.ChangeWords;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Words;

/** What a comparison says in sentences: to whoever lives there, and to whoever must rely on it. */
public final class Statement {
  private static final int SUBJECTS = 4;

  private final ChangeResult change;
  private final Numbers numbers;

  /** The sentences of a comparison. */
  public Statement(ChangeResult change, Numbers numbers) {
    this.change = change;
    this.numbers = numbers;
  }

  /** In plain words. */
  public String plain() {
    List<String> sentences = new ArrayList<>();
    change.home().ifPresent(home -> air(sentences, home));
    change.mould().ifPresent(m -> sentences.add(mould(m)));
    if (sentences.isEmpty()) {
      sentences.add("Nothing was read or seen at both visits that could be compared.");
    }
    return String.join(" ", sentences);
  }

  private void air(List<String> sentences, AirChange home) {
    sentences.add(
        switch (home.shown()) {
          case FELL ->
              "At the later visit the air in the home held less moisture on top of what outdoor air"
                  + " brings"
                  + share(home)
                  + ".";
          case ROSE ->
              "At the later visit the air in the home held more moisture on top of what outdoor air"
                  + " brings"
                  + share(home)
                  + ".";
          case NOT_SHOWN ->
              "Whether the air in the home holds less moisture on top of what outdoor air brings is"
                  + " not shown: "
                  + home.excess().judgement().criterion()
                  + ".";
        });
    sentences.add(
        "Relative humidity went from "
            + ChangeWords.humidity(
                home.humidity().before().likely(), home.humidity().after().likely())
            + ". In percentage points that is "
            + new Split(home.humidity(), numbers).said()
            + ".");
  }

  private static String share(AirChange home) {
    return home.excess()
        .relative()
        .map(r -> ", about " + ChangeWords.share(r.likely()) + " than before")
        .orElse("");
  }

  private String mould(MouldChange mould) {
    return "Mould was seen on "
        + numbers.likely(mould.before())
        + " before and on "
        + (mould.after().likely() == 0 ? "none" : numbers.likely(mould.after()))
        + " at the later visit, over the places looked at both times"
        + (mould.judgement().isShown() ? "." : "; " + mould.judgement().criterion() + ".");
  }

  /** By which criteria, for whoever must rely on it. */
  public String criteria() {
    return Words.sentence(change.sameHome().said())
        + " Compared are "
        + change.home().map(AirChange::from).orElse("the surveys of both visits")
        + ". "
        + Words.sentence(change.outdoor().said())
        + " A change counts as shown where it is greater than the errors of both visits together,"
        + " which are taken as independent and added as squares, in weather that is alike. "
        + change
            .home()
            .map(h -> "For the home: " + h.excess().judgement().criterion() + ". ")
            .orElse("")
        + "Cold surfaces are brought to the same air: each visit keeps its own temperature factor f"
        + " and its own moisture. That a change is shown does not say what caused it.";
  }

  /** Comparisons that came out otherwise, by how they come out now; empty where none did. */
  public String verdicts() {
    return verdicts(Verdict.MEETS, "Now met: ")
        + verdicts(Verdict.SHORT, "Now short: ")
        + verdicts(Verdict.UNKNOWN, "Cannot be told now: ");
  }

  private String verdicts(Verdict now, String head) {
    List<String> subjects =
        change.verdicts().stream()
            .filter(v -> v.after() == now)
            .map(v -> Words.within(v.subject()) + " (" + Words.verdict(v.before()) + " before)")
            .distinct()
            .toList();
    return subjects.isEmpty()
        ? ""
        : head + Words.list(subjects, SUBJECTS, "other", "others") + ". ";
  }

  /** What was done between the visits, oldest first; empty where nothing is stated. */
  public String between() {
    return change.between().stream()
        .filter(e -> e.date().isBefore(change.after()))
        .map(e -> e.event().word() + " on " + Words.date(e.date()))
        .collect(Collectors.joining(", "));
  }
}
