package org.drysill.report.verdict;

import java.util.ArrayList;
import java.util.List;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.assess.change.air.AirChange;
import org.drysill.assess.recovery.RecoveryUnit;
import org.drysill.report.subject.CountedAir;
import org.drysill.report.subject.Desk;
import org.drysill.report.words.Rounding;
import org.drysill.report.words.Words;

/** The few sentences under the heading: how much air, which places, what changed. */
final class Lead {
  private Lead() {}

  static String of(Desk desk, State state) {
    List<String> sentences = new ArrayList<>();
    sentences.add(air(desk));
    if (!state.shortRooms().isEmpty()) {
      sentences.add(
          "Extract is short in the "
              + Words.list(
                  state.shortRooms().stream().map(r -> Words.shortened(r, 30)).toList(),
                  3,
                  "other room",
                  "other rooms")
              + ".");
    }
    if (state.placesLooked() > 0) {
      sentences.add(places(state));
    }
    desk.subject().change().flatMap(c -> c.home()).ifPresent(h -> sentences.add(changed(h)));
    desk.subject().recovery().units().stream()
        .filter(u -> u.declaredAgainstMeasured().isPresent())
        .findFirst()
        .ifPresent(u -> sentences.add(Words.sentence(recovered(u))));
    return String.join(" ", sentences);
  }

  private static String air(Desk desk) {
    CountedAir got = CountedAir.of(desk.subject());
    return desk.subject()
        .ventilation()
        .required()
        .wholeHome()
        .map(asked -> air(desk, got, asked))
        .orElseGet(
            () ->
                "The home gets between "
                    + desk.numbers().between(got.provided()).replace("–", " and ")
                    + " of "
                    + got.words()
                    + "; what "
                    + rules(desk)
                    + " asks for cannot be told yet.");
  }

  private static String air(Desk desk, CountedAir counted, Figure asked) {
    Figure got = counted.provided();
    String of = " of " + counted.words();
    Finding home = desk.subject().ventilation().wholeHome();
    String provided = desk.numbers().plain(got.likely(), Unit.AIRFLOW, Rounding.DOWN);
    String required = desk.numbers().one(asked.likely(), Unit.AIRFLOW, Rounding.UP);
    String start = "The home gets about " + provided + " of the " + required;
    return switch (home.verdict()) {
      case SHORT -> start + of + " that " + rules(desk) + " asks for.";
      case MEETS ->
          "The home gets about "
              + desk.numbers().one(got.likely(), Unit.AIRFLOW, Rounding.DOWN)
              + of
              + ", and "
              + rules(desk)
              + " asks for "
              + required
              + ".";
      case UNKNOWN ->
          "The home gets between "
              + desk.numbers().between(got).replace("–", " and ")
              + of
              + "; "
              + rules(desk)
              + " asks for "
              + required
              + ".";
    };
  }

  private static String rules(Desk desk) {
    return desk.plain() ? "the rule that applies here" : "the governing rule set";
  }

  private static String places(State state) {
    List<String> parts = new ArrayList<>();
    if (state.spotsAtRisk() > 0) {
      parts.add(
          Words.count(state.spotsAtRisk(), "surface is", "surfaces are")
              + " cold enough for mould in some months");
    }
    if (state.windowsWet() > 0) {
      parts.add(
          Words.count(state.windowsWet(), "window gets", "windows get") + " wet on cold nights");
    }
    return parts.isEmpty()
        ? "None of the surfaces that were looked at is at risk in an average year."
        : Words.sentence(Words.list(parts));
  }

  private static String changed(AirChange home) {
    return switch (home.shown()) {
      case FELL -> "Against the visit before, the air holds less moisture from indoors.";
      case ROSE -> "Against the visit before, the air holds more moisture from indoors.";
      case NOT_SHOWN ->
          "Against the visit before, no change of moisture is shown: "
              + home.excess().judgement().criterion()
              + ".";
    };
  }

  private static String recovered(RecoveryUnit unit) {
    Verdict verdict = unit.declaredAgainstMeasured().map(Finding::verdict).orElse(Verdict.UNKNOWN);
    String name = "the heat recovery of the " + Words.within(Words.shortened(unit.name(), 44));
    return switch (verdict) {
      case MEETS -> name + " reaches what is declared";
      case SHORT -> name + " is below what is declared";
      case UNKNOWN -> name + " cannot be told from its test";
    };
  }
}
