package org.drysill.report.brief;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.assess.Unit;
import org.drysill.report.block.Block;
import org.drysill.report.block.Bullets;
import org.drysill.report.block.Fact;
import org.drysill.report.block.Facts;
import org.drysill.report.block.Section;
import org.drysill.report.block.Subhead;
import org.drysill.report.words.Words;
import org.drysill.survey.Dwelling;
import org.drysill.survey.Instrument;
import org.drysill.survey.OutdoorReading;
import org.drysill.survey.Surveyor;
import org.drysill.survey.Visit;
import org.drysill.yaml.Moment;
import org.drysill.yaml.Quantity;

/** The home and the visit: facts, who read what with what, the weather. */
final class HomeFacts implements BriefChapter {
  private static final int OUTDOORS = 4;

  @Override
  public Optional<Section> write(BriefDesk desk) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Facts.wide(home(desk, desk.subject().home())));
    blocks.add(new Subhead(List.of(), desk.say("visit.head")));
    Visit visit = desk.subject().survey().visit();
    blocks.add(Facts.wide(visit(desk, visit)));
    if (!visit.notInspected().isEmpty()) {
      blocks.add(new Subhead(List.of(), desk.say("visit.not-inspected")));
      blocks.add(new Bullets(List.of(), visit.notInspected()));
    }
    return Optional.of(new Section("home", heading(desk), desk.say("home.running"), false, blocks));
  }

  private static String heading(BriefDesk desk) {
    String type =
        desk.subject()
            .survey()
            .dwelling()
            .type()
            .map(t -> desk.terms().word("dwelling", t.word()))
            .orElseGet(() -> desk.say("home"));
    return Words.capital(
        desk.say(
            "home.heading",
            type,
            desk.numbers().full(desk.subject().home().floorArea()),
            desk.phrases().date(desk.subject().survey().visit().date())));
  }

  private static List<Fact> home(BriefDesk desk, Home home) {
    Dwelling dwelling = home.survey().dwelling();
    List<Fact> facts = new ArrayList<>();
    dwelling.address().ifPresent(a -> facts.add(fact(desk, "home.address", a)));
    dwelling
        .type()
        .ifPresent(
            t -> facts.add(fact(desk, "home.type", desk.terms().word("dwelling", t.word()))));
    dwelling.built().ifPresent(b -> facts.add(fact(desk, "home.built", Integer.toString(b))));
    dwelling
        .tenure()
        .ifPresent(
            t -> facts.add(fact(desk, "home.tenure", desk.terms().word("tenure", t.word()))));
    facts.add(figure(desk, "home.floor-area", home.floorArea()));
    facts.add(figure(desk, "home.volume", home.volume()));
    facts.add(
        fact(
            desk,
            "home.size",
            desk.phrases().count("home.storeys", home.storeys())
                + ", "
                + desk.phrases().count("home.bedrooms", home.bedrooms())));
    facts.add(figure(desk, "home.people", home.occupants()));
    facts.add(figure(desk, "home.setpoint", home.setpoint()));
    facts.add(figure(desk, "home.leakage", home.n50()));
    dwelling
        .heating()
        .flatMap(h -> h.fuel())
        .ifPresent(f -> facts.add(fact(desk, "home.heating", desk.terms().word("fuel", f.word()))));
    Stream.of(
            dwelling.construction().flatMap(c -> c.walls()),
            dwelling.construction().flatMap(c -> c.roof()))
        .flatMap(Optional::stream)
        .reduce((walls, roof) -> walls + "; " + roof)
        .ifPresent(c -> facts.add(fact(desk, "home.construction", c)));
    facts.add(fact(desk, "home.climate", climate(desk, home.climate().name())));
    facts.add(fact(desk, "home.rules", desk.subject().ventilation().rules().named()));
    return facts;
  }

  /** A name of a place stays; that of a mean has words. */
  private static String climate(BriefDesk desk, String name) {
    return desk.phrases().find("value." + name.replace(' ', '-')).orElse(name);
  }

  private static Fact fact(BriefDesk desk, String key, String value) {
    return new Fact(desk.say(key), value);
  }

  private static Fact figure(BriefDesk desk, String key, Figure figure) {
    return fact(desk, key, desk.numbers().full(figure) + " (" + desk.basis(figure) + ")");
  }

  private static List<Fact> visit(BriefDesk desk, Visit visit) {
    List<Fact> facts = new ArrayList<>();
    facts.add(fact(desk, "visit.date", desk.phrases().date(visit.date())));
    visit.reference().ifPresent(r -> facts.add(fact(desk, "visit.reference", r)));
    visit.surveyor().ifPresent(s -> facts.add(fact(desk, "visit.surveyor", named(s))));
    visit.preparedFor().ifPresent(p -> facts.add(fact(desk, "visit.for", p)));
    visit.reason().ifPresent(r -> facts.add(fact(desk, "visit.reason", r)));
    List<OutdoorReading> outdoor = desk.subject().survey().outdoorReadings();
    if (!outdoor.isEmpty()) {
      facts.add(
          fact(
              desk,
              "visit.weather",
              outdoor.stream()
                  .limit(OUTDOORS)
                  .map(o -> read(desk, visit, o))
                  .collect(Collectors.joining("; "))));
    }
    if (!visit.instruments().isEmpty()) {
      facts.add(
          fact(
              desk,
              "visit.instruments",
              visit.instruments().stream()
                  .map(i -> instrument(desk, i))
                  .collect(Collectors.joining("; "))));
    }
    return facts;
  }

  private static String named(Surveyor surveyor) {
    return Stream.of(
            Optional.of(surveyor.name()), surveyor.qualification(), surveyor.organisation())
        .flatMap(Optional::stream)
        .collect(Collectors.joining(", "));
  }

  private static String read(BriefDesk desk, Visit visit, OutdoorReading outdoor) {
    String when = outdoor.at().map(at -> when(desk, visit, at) + ": ").orElse("");
    return when
        + desk.numbers().read(outdoor.temperature().value(), Unit.CELSIUS)
        + outdoor
            .humidity()
            .map(h -> ", " + desk.numbers().read(h.value(), Unit.RELATIVE_HUMIDITY))
            .orElse("");
  }

  /** The time alone where the day is that of the visit. */
  static String when(BriefDesk desk, Visit visit, Moment at) {
    String time = at.time().map(Object::toString).orElse("");
    if (at.date().equals(visit.date()) && !time.isEmpty()) {
      return time;
    }
    String day = desk.phrases().date(at.date());
    return time.isEmpty() ? day : day + ", " + time;
  }

  private static String instrument(BriefDesk desk, Instrument instrument) {
    List<String> parts = new ArrayList<>();
    parts.add(instrument.id() + ": " + desk.terms().word("instrument", instrument.kind().word()));
    Stream.of(
            instrument.temperatureAccuracy(),
            instrument.humidityAccuracy(),
            instrument.flowAccuracy(),
            instrument.co2Accuracy())
        .flatMap(Optional::stream)
        .forEach(a -> parts.add("±\u00a0" + accuracy(desk, a)));
    parts.add(
        instrument
            .calibrated()
            .map(day -> desk.say("visit.calibrated", desk.phrases().date(day)))
            .orElseGet(() -> desk.say("visit.not-calibrated")));
    return String.join(", ", parts);
  }

  /** As it is written in the survey, with the marks of the language. */
  private static String accuracy(BriefDesk desk, Quantity accuracy) {
    return desk.numbers().marked(accuracy.written()).replace(' ', '\u00a0');
  }
}
