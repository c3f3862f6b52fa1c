package org.drysill.report.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.drysill.assess.Verdict;
import org.drysill.assess.surfaces.ColdPlace;
import org.drysill.assess.surfaces.SurfaceClass;
import org.drysill.assess.surfaces.months.Risk;
import org.drysill.report.language.Language;
import org.drysill.report.language.LocalNumbers;
import org.drysill.report.language.Names;
import org.drysill.report.language.Phrases;
import org.drysill.report.subject.Desk;
import org.drysill.report.subject.Subject;
import org.drysill.report.words.Words;

/** Words the sheet of a home. */
final class SheetPage {
  /** The bundle of the sheet's own words. */
  static final String WORDS = "org.drysill.report.sheet.words";

  private static final int HEAD_LENGTH = 70;

  /** The fixed words that the template asks for. */
  private static final List<String> LABELS =
      List.of(
          "sheet.for",
          "lead",
          "standing",
          "standing.what",
          "standing.found",
          "standing.verdict",
          "steps",
          "steps.none",
          "who",
          "habits",
          "habits.note");

  private SheetPage() {}

  static HouseholdSheet of(Subject subject, Language language) {
    Phrases phrases = Phrases.of(language, WORDS);
    LocalNumbers numbers = new LocalNumbers(Desk.numbers(subject.assessment()), phrases);
    Names names = new Names(subject.survey(), phrases);
    String day = phrases.date(subject.survey().visit().date());
    String address =
        subject
            .survey()
            .dwelling()
            .address()
            .map(a -> Words.shortened(a, HEAD_LENGTH))
            .orElseGet(() -> phrases.say("home"));
    return new HouseholdSheet(
        language.tag(),
        subject.ventilation().rules().paper().word(),
        phrases.say("title", address),
        address,
        phrases.say("visit", day),
        phrases.say(heading(subject)),
        new Standing(subject, phrases, numbers, names).rows(),
        new Works(subject, phrases, numbers, names).steps(),
        new Habits(subject, phrases).said(),
        warnings(subject, phrases),
        foot(subject, phrases, day),
        labels(phrases));
  }

  private static String heading(Subject subject) {
    List<ColdPlace> places = subject.condensation().places();
    List<ColdPlace> cold = places.stream().filter(p -> p.months().gravest() != Risk.NONE).toList();
    Verdict air = subject.ventilation().wholeHome().verdict();
    String key = "heading." + air.name().toLowerCase(Locale.ROOT);
    if (!cold.isEmpty()) {
      boolean glass = cold.stream().allMatch(p -> p.surface() == SurfaceClass.GLASS);
      return key + (glass ? ".glass" : ".cold");
    }
    return air == Verdict.MEETS && places.isEmpty() ? key + ".unseen" : key;
  }

  private static List<String> warnings(Subject subject, Phrases phrases) {
    return subject.survey().dwelling().combustionAppliances().isEmpty()
        ? List.of()
        : List.of(phrases.say("emergency"));
  }

  private static String foot(Subject subject, Phrases phrases, String day) {
    int open =
        (int)
            Desk.of(subject).found().findings().stream()
                .filter(f -> f.verdict() == Verdict.UNKNOWN)
                .count();
    String foot = phrases.say("foot", day);
    return open == 0 ? foot : Words.capital(phrases.count("open", open)) + " " + foot;
  }

  private static Map<String, String> labels(Phrases phrases) {
    Map<String, String> labels = new LinkedHashMap<>();
    LABELS.forEach(key -> labels.put(key.replace('.', '_'), phrases.say(key)));
    return labels;
  }
}
