package org.drysill.options.rank;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.Assessment;
import org.drysill.assess.Verdict;
import org.drysill.assess.ventilation.words.FlowText;
import org.drysill.options.MeasureEffect;
import org.drysill.reference.measures.Measure;

/** Why a measure ranks where it does: what it does, what puts it there, what it leaves. */
record Reasons(Assessment assessment, Ranking ranking, Purse purse) {

  /** At most three sentences; the entry above is empty for the first. */
  List<String> of(Entry entry, Optional<Entry> above) {
    return sentences(
        deeds().of(entry.progress()), above.flatMap(a -> behind(entry, a)), leaves(entry));
  }

  /** For what is dearer than the money at hand. */
  List<String> beyond(Entry entry) {
    String dear =
        "It costs "
            + purse.words(entry.firstCost())
            + " and the budget is "
            + purse.words(purse.money().orElseThrow().high())
            + ".";
    return sentences(Optional.of(dear), deeds().of(entry.progress()), leaves(entry));
  }

  private Deeds deeds() {
    return new Deeds(flows());
  }

  private static List<String> sentences(
      Optional<String> first, Optional<String> second, Optional<String> third) {
    return Stream.of(first, second, third).flatMap(Optional::stream).toList();
  }

  /** Which step of the ranking decided against it, with the figures of that step. */
  private Optional<String> behind(Entry entry, Entry above) {
    if (above.admissible() && !entry.admissible()) {
      return Optional.of(
          "It stands behind all that are safe today: an appliance takes its air from the room, and"
              + " a spillage test comes before the work.");
    }
    if (entry.steps(ranking.step()) < above.steps(ranking.step())) {
      return Optional.of(
          "It closes "
              + percent(entry)
              + " of what the home lacks; "
              + named(above)
              + " closes "
              + percent(above)
              + ".");
    }
    if (entry.isStopGap() && !above.isStopGap()) {
      return Optional.of(
          "It is a stop-gap: it helps while it is used and leaves the cause as it is.");
    }
    return dearer(entry, above);
  }

  private Optional<String> dearer(Entry entry, Entry above) {
    if (entry.costed().annualCost().isEmpty()) {
      return Optional.of("Its cost cannot be told, so it stands behind those whose cost is known.");
    }
    double more = entry.annualCost() - above.annualCost();
    if (more < 1) {
      return Optional.empty();
    }
    String amount = purse.words(more);
    return Optional.of(
        entry.steps(ranking.step()) > 0
            ? "It goes about as far as "
                + named(above)
                + " and costs "
                + amount
                + " more a year, all in all."
            : "It costs " + amount + " a year more than " + named(above) + ", all in all.");
  }

  /** A measure may stand elsewhere than in the order of ranks, so that it is called by its name. */
  private static String named(Entry entry) {
    return "“" + entry.costed().studied().candidate().title() + "”";
  }

  private static String percent(Entry entry) {
    return Math.round(entry.progress().share() * 100) + " %";
  }

  /** What it settles, or the air that it does not bring. */
  private Optional<String> leaves(Entry entry) {
    Measure measure = entry.costed().studied().candidate().measure();
    return settled(entry)
        .or(
            () ->
                measure.moisture().isPresent()
                        && measure.air().isEmpty()
                        && assessment.ventilation().wholeHome().verdict() != Verdict.MEETS
                    ? Optional.of(
                        "It brings no outdoor air: whether the home has enough stays open.")
                    : Optional.empty());
  }

  private Optional<String> settled(Entry entry) {
    MeasureEffect effect = entry.costed().studied().effect();
    if (effect.settles().isEmpty()) {
      return Optional.empty();
    }
    return effect.extract().stream()
        .flatMap(f -> f.required().stream())
        .findFirst()
        .map(
            asked ->
                "Set to "
                    + flows().required(asked.likely())
                    + ", it gives its room the extract that is asked and lacking today.")
        .or(() -> Optional.of(openings(effect.settles().size())));
  }

  private static String openings(int number) {
    return number == 1
        ? "It gives one opening for air the size that is asked and lacking today."
        : "It gives " + number + " openings for air the size that is asked and lacking today.";
  }

  private FlowText flows() {
    return new FlowText(assessment.ventilation().rules().units());
  }
}
