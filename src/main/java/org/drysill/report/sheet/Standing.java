package org.drysill.report.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.drysill.assess.Finding;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.assess.change.air.AirChange;
import org.drysill.assess.surfaces.ColdPlace;
import org.drysill.assess.surfaces.SurfaceClass;
import org.drysill.assess.surfaces.months.Risk;
import org.drysill.report.language.LocalNumbers;
import org.drysill.report.language.Names;
import org.drysill.report.language.Phrases;
import org.drysill.report.subject.CountedAir;
import org.drysill.report.subject.Subject;
import org.drysill.report.words.Words;
import org.drysill.survey.Room;
import org.drysill.survey.RoomReading;

/** The rows of how things stand. */
final class Standing {
  private static final int EXTRACT_ROWS = 3;
  private static final int PLACES = 3;
  private static final int ROOMS = 5;
  private static final int RULES = 60;

  private final Subject subject;
  private final Phrases phrases;
  private final LocalNumbers numbers;
  private final Names names;

  Standing(Subject subject, Phrases phrases, LocalNumbers numbers, Names names) {
    this.subject = subject;
    this.phrases = phrases;
    this.numbers = numbers;
    this.names = names;
  }

  List<SheetRow> rows() {
    List<SheetRow> rows = new ArrayList<>();
    rows.add(air());
    extract().forEach(rows::add);
    surface(SurfaceClass.OPAQUE, "row.mould").ifPresent(rows::add);
    surface(SurfaceClass.GLASS, "row.glass").ifPresent(rows::add);
    subject.change().flatMap(c -> c.home()).map(this::change).ifPresent(rows::add);
    humidity().ifPresent(rows::add);
    return rows;
  }

  private SheetRow air() {
    Finding home = subject.ventilation().wholeHome();
    var got = CountedAir.of(subject).provided();
    String found = home.verdict() == Verdict.UNKNOWN ? numbers.between(got) : numbers.found(got);
    String rules = Words.shortened(subject.ventilation().rules().title(), RULES);
    String text =
        subject
            .ventilation()
            .required()
            .wholeHome()
            .map(asked -> phrases.say("row.air.text", found, numbers.asked(asked), rules))
            .orElseGet(() -> phrases.say("row.air.open", found, rules));
    return row(phrases.say("row.air"), text, home.verdict());
  }

  /** The gravest of each wet room, the gravest rooms. */
  private List<SheetRow> extract() {
    Map<String, Finding> byRoom = new LinkedHashMap<>();
    for (Finding finding : subject.ventilation().extract()) {
      finding
          .room()
          .filter(room -> finding.required().isPresent())
          .ifPresent(
              room -> byRoom.merge(room, finding, (a, b) -> gravity(b) < gravity(a) ? b : a));
    }
    return byRoom.entrySet().stream()
        .sorted(Comparator.comparingInt(e -> gravity(e.getValue())))
        .limit(EXTRACT_ROWS)
        .map(e -> extract(e.getKey(), e.getValue()))
        .toList();
  }

  private SheetRow extract(String room, Finding finding) {
    String asked = numbers.asked(finding.required().orElseThrow());
    String text =
        finding
            .provided()
            .filter(p -> p.value().high() > 0)
            .map(p -> finding.verdict() == Verdict.UNKNOWN ? numbers.between(p) : numbers.found(p))
            .map(found -> phrases.say("row.extract.text", found, asked))
            .orElseGet(() -> phrases.say("row.extract.none", asked));
    return row(phrases.say("row.extract", names.room(room)), text, finding.verdict());
  }

  private static int gravity(Finding finding) {
    return switch (finding.verdict()) {
      case SHORT -> 0;
      case UNKNOWN -> 1;
      case MEETS -> 2;
    };
  }

  private SheetRow row(String what, String text, Verdict verdict) {
    String mark = verdict.name().toLowerCase(Locale.ROOT);
    return new SheetRow(what, text, mark, phrases.say("verdict." + mark));
  }

  /** What may happen in an average year, at the likely values, as on the first page. */
  private Optional<SheetRow> surface(SurfaceClass surface, String key) {
    List<ColdPlace> looked =
        subject.condensation().worstFirst().stream().filter(p -> p.surface() == surface).toList();
    long all = looked.stream().map(ColdPlace::item).distinct().count();
    if (all == 0) {
      return Optional.empty();
    }
    List<String> risky =
        looked.stream()
            .filter(p -> p.months().gravest() != Risk.NONE)
            .map(ColdPlace::item)
            .distinct()
            .toList();
    if (risky.isEmpty()) {
      return Optional.of(
          new SheetRow(
              phrases.say(key),
              Words.capital(phrases.count(key + ".none", (int) all)),
              "meets",
              phrases.say("verdict.dry")));
    }
    String where = names.few(risky.stream().map(this::place), PLACES);
    return Optional.of(
        new SheetRow(
            phrases.say(key),
            Words.capital(phrases.count(key + ".text", risky.size(), where)),
            "short",
            phrases.say("verdict.risk")));
  }

  private String place(String item) {
    return names.place(item).orElse(item);
  }

  private SheetRow change(AirChange home) {
    return switch (home.shown()) {
      case FELL -> change("fell", "seen", "better");
      case ROSE -> change("rose", "seen", "worse");
      case NOT_SHOWN -> change("same", "unseen", "notshown");
    };
  }

  private SheetRow change(String text, String mark, String verdict) {
    return new SheetRow(
        phrases.say("row.change"),
        phrases.say("row.change." + text),
        mark,
        phrases.say("verdict." + verdict));
  }

  private Optional<SheetRow> humidity() {
    List<String> read =
        subject.survey().rooms().stream().flatMap(r -> read(r).stream()).limit(ROOMS).toList();
    return read.isEmpty()
        ? Optional.empty()
        : Optional.of(new SheetRow(phrases.say("row.humidity"), String.join("; ", read), "", ""));
  }

  /** The first reading of a room that tells its humidity. */
  private Optional<String> read(Room room) {
    return room.readings().stream()
        .filter(r -> r.humidity().isPresent())
        .findFirst()
        .map(r -> read(room, r));
  }

  private String read(Room room, RoomReading reading) {
    return phrases.say(
        "row.humidity.text",
        names.room(room.id()),
        numbers.read(reading.humidity().orElseThrow().value(), Unit.RELATIVE_HUMIDITY),
        numbers.read(reading.temperature().value(), Unit.CELSIUS));
  }
}
