package org.drysill.assess.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Direction;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Verdict;
import org.drysill.reference.readings.ChangeRules;

/** The claims that readers of two visits may want to make, each with what can be said of it. */
final class ChangeFindings {
  static final String CAUTION =
      "Readings of two moments cannot prove a lasting change: they depend on what was cooked,"
          + " washed and aired that morning. Loggers indoors and outdoors for at least 7 days, better"
          + " 2 weeks, in two like spells of the heating season would show it.";
  private static final String LOGGERS =
      "Leave loggers of temperature and humidity in the same rooms and outdoors for at least 7 days"
          + " of the heating season, and repeat it in like weather.";

  private final ChangeRules rules;
  private final OutdoorLikeness outdoor;

  ChangeFindings(ChangeRules rules, OutdoorLikeness outdoor) {
    this.rules = rules;
    this.outdoor = outdoor;
  }

  List<Finding> all(Optional<AirChange> home, Optional<Figure> before, Optional<Figure> after) {
    List<Finding> all = new ArrayList<>();
    all.add(likeness());
    all.add(excess(home));
    all.add(mould(before, after));
    all.add(lasting());
    return all;
  }

  private Finding likeness() {
    boolean known = outdoor.before().isPresent() && outdoor.after().isPresent();
    Verdict verdict = outdoor.alike() ? Verdict.MEETS : known ? Verdict.SHORT : Verdict.UNKNOWN;
    return finding(
        "change.outdoor",
        "Weather of the two visits",
        verdict,
        outdoor.said(),
        verdict == Verdict.MEETS
            ? Optional.empty()
            : Optional.of("Repeat the readings in weather like that of the earlier visit."));
  }

  private Finding excess(Optional<AirChange> home) {
    Verdict verdict =
        home.map(
                change ->
                    switch (change.shown()) {
                      case FELL -> Verdict.MEETS;
                      case ROSE -> Verdict.SHORT;
                      case NOT_SHOWN -> Verdict.UNKNOWN;
                    })
            .orElse(Verdict.UNKNOWN);
    return finding(
        "change.vapour_excess",
        "Less moisture in the air of the home than before",
        verdict,
        home.map(AirChange::said)
            .orElse("Humidity was not read in the heated rooms at both visits."),
        verdict == Verdict.MEETS ? Optional.empty() : Optional.of(LOGGERS));
  }

  private Finding mould(Optional<Figure> before, Optional<Figure> after) {
    if (before.isEmpty() || after.isEmpty()) {
      return finding(
          "change.mould",
          "Less mould than before",
          Verdict.UNKNOWN,
          "No place has its area of mould stated at both visits.",
          Optional.of("State mould_seen and mould_area of every cold spot at each visit."));
    }
    double was = before.get().likely();
    double is = after.get().likely();
    if (was == 0 && is == 0) {
      return finding(
          "change.mould",
          "Less mould than before",
          Verdict.MEETS,
          "No mould was seen at either visit.",
          Optional.empty());
    }
    return finding(
        "change.mould",
        "Less mould than before",
        is < was ? Verdict.MEETS : Verdict.SHORT,
        is < was
            ? "The area with mould is smaller than before. Cleaning does that too; only a later"
                + " visit shows whether it stays away."
            : "The area with mould is not smaller than before.",
        Optional.empty());
  }

  private Finding lasting() {
    return finding(
        "change.lasting", "A lasting change", Verdict.UNKNOWN, CAUTION, Optional.of(LOGGERS));
  }

  private Finding finding(
      String id, String subject, Verdict verdict, String because, Optional<String> settledBy) {
    return new Finding(
        id,
        subject,
        Optional.empty(),
        verdict,
        Direction.NONE,
        Optional.empty(),
        Optional.empty(),
        because,
        settledBy,
        List.of(rules.source()));
  }
}
