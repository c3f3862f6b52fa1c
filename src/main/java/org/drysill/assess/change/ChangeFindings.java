package org.drysill.assess.change;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Direction;
import org.drysill.assess.Finding;
import org.drysill.assess.Verdict;
import org.drysill.assess.change.air.AirChange;
import org.drysill.assess.change.air.OutdoorLikeness;
import org.drysill.assess.change.place.MouldChange;
import org.drysill.assess.change.shown.Shown;
import org.drysill.assess.change.visit.SameHome;
import org.drysill.reference.Citation;
import org.drysill.reference.readings.ChangeRules;

/** The claims that readers of two visits may want to make, each with what can be said of it. */
final class ChangeFindings {
  private static final String TWO_MOMENTS =
      "Readings of two moments cannot prove a lasting change: they depend on what was cooked,"
          + " washed and aired that morning. Loggers indoors and outdoors for at least 7 days, better"
          + " 2 weeks, in two like spells of the heating season would show it.";
  private static final String TWO_SPELLS =
      "Logs show the spells in which they ran. They cannot tell less moisture released from more"
          + " air, nor what other weeks of the year are like.";
  private static final String LOGGERS =
      "Leave loggers of temperature and humidity in the same rooms and outdoors for at least 7 days"
          + " of the heating season, and repeat it in like weather.";

  private final ChangeRules rules;

  ChangeFindings(ChangeRules rules) {
    this.rules = rules;
  }

  /** What the comparison cannot show. */
  static String caution(Optional<AirChange> home) {
    return isLogged(home) ? TWO_SPELLS : TWO_MOMENTS;
  }

  Finding sameHome(SameHome home) {
    return finding(
        "change.same_home",
        "Both surveys are of one home",
        home.verdict(),
        home.said() + ".",
        home.verdict() == Verdict.MEETS
            ? Optional.empty()
            : Optional.of("Write the address and the rooms alike in both surveys."),
        List.of());
  }

  Finding likeness(OutdoorLikeness outdoor) {
    boolean known = outdoor.before().isPresent() && outdoor.after().isPresent();
    Verdict verdict = outdoor.alike() ? Verdict.MEETS : known ? Verdict.SHORT : Verdict.UNKNOWN;
    return finding(
        "change.outdoor",
        "Weather of the two visits is alike",
        verdict,
        outdoor.said(),
        verdict == Verdict.MEETS
            ? Optional.empty()
            : Optional.of("Repeat the readings in weather like that of the earlier visit."),
        List.of(rules.source(), rules.vapourSource()));
  }

  Finding excess(Optional<AirChange> home) {
    Verdict verdict = home.map(change -> fell(change.shown())).orElse(Verdict.UNKNOWN);
    return finding(
        "change.vapour_excess",
        "Less moisture in the air of the home than before",
        verdict,
        home.map(AirChange::said)
            .orElse("Humidity was not read in the heated rooms at both visits."),
        verdict == Verdict.MEETS ? Optional.empty() : Optional.of(LOGGERS),
        List.of(rules.source()));
  }

  Finding mould(Optional<MouldChange> area) {
    String id = "change.mould";
    String subject = "Less mould than before";
    if (area.isEmpty()) {
      return finding(
          id,
          subject,
          Verdict.UNKNOWN,
          "No place has its area of mould stated at both visits.",
          Optional.of(
              "Note of every cold place at each visit how large the area with mould is, or that"
                  + " there is none."),
          List.of());
    }
    MouldChange change = area.get();
    if (change.before().likely() == 0 && change.after().likely() == 0) {
      return finding(
          id,
          subject,
          Verdict.MEETS,
          "No mould was seen at either visit.",
          Optional.empty(),
          List.of());
    }
    return finding(
        id,
        subject,
        fell(change.judgement().shown()),
        switch (change.judgement().shown()) {
          case FELL ->
              "The area with mould is smaller than before. Cleaning does that too; only a later"
                  + " visit shows whether it stays away.";
          case ROSE -> "The area with mould is larger than before.";
          case NOT_SHOWN ->
              "The area with mould is much the same: " + change.judgement().criterion() + ".";
        },
        change.judgement().isShown()
            ? Optional.empty()
            : Optional.of("Photograph the places with a scale at each visit."),
        List.of(rules.mouldSource()));
  }

  Finding lasting(Optional<AirChange> home) {
    Verdict verdict =
        home.filter(AirChange::logged).map(h -> fell(h.shown())).orElse(Verdict.UNKNOWN);
    return finding(
        "change.lasting",
        "A lasting change",
        verdict,
        home.filter(AirChange::logged).map(AirChange::said).orElse(TWO_MOMENTS),
        verdict == Verdict.MEETS ? Optional.empty() : Optional.of(LOGGERS),
        List.of(rules.log().source(), rules.log().daySource()));
  }

  private static boolean isLogged(Optional<AirChange> home) {
    return home.filter(AirChange::logged).isPresent();
  }

  private static Verdict fell(Shown shown) {
    return switch (shown) {
      case FELL -> Verdict.MEETS;
      case ROSE -> Verdict.SHORT;
      case NOT_SHOWN -> Verdict.UNKNOWN;
    };
  }

  private static Finding finding(
      String id,
      String subject,
      Verdict verdict,
      String because,
      Optional<String> settledBy,
      List<Citation> sources) {
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
        sources);
  }
}
