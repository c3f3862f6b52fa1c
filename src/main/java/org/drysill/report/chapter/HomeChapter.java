package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.report.block.Block;
import org.drysill.report.block.Bullets;
import org.drysill.report.block.Fact;
import org.drysill.report.block.Facts;
import org.drysill.report.block.Section;
import org.drysill.report.block.Subhead;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.InstrumentTable;
import org.drysill.report.words.Words;
import org.drysill.survey.Dwelling;
import org.drysill.survey.Visit;
import org.drysill.yaml.Worded;

/** The home and the visit: facts, who, with what, what was not inspected. */
final class HomeChapter implements Chapter {
  @Override
  public Optional<Section> write(Desk desk) {
    List<Block> blocks = new ArrayList<>();
    Home home = desk.subject().home();
    blocks.add(
        new Facts(
            desk.notes(List.of(Optional.of(home.volume()), Optional.of(home.n50()))),
            home(desk, home)));
    blocks.add(new Subhead(List.of(), "The visit"));
    Visit visit = desk.subject().survey().visit();
    blocks.add(new Facts(List.of(), visit(desk, visit)));
    if (!visit.instruments().isEmpty()) {
      blocks.add(InstrumentTable.of("Instruments", visit.instruments()));
    }
    if (!visit.notInspected().isEmpty()) {
      blocks.add(new Subhead(List.of(), "What was not inspected"));
      blocks.add(
          new Bullets(List.of(), visit.notInspected().stream().map(Words::sentence).toList()));
    }
    return Optional.of(new Section("home", heading(desk), "The home and the visit", false, blocks));
  }

  private static String heading(Desk desk) {
    Dwelling dwelling = desk.subject().survey().dwelling();
    String type = dwelling.type().map(Worded::word).orElse("home");
    return Words.capital(Words.article(type))
        + " of "
        + desk.numbers().likely(desk.subject().home().floorArea())
        + ", visited on "
        + Words.date(desk.subject().survey().visit().date());
  }

  private static List<Fact> home(Desk desk, Home home) {
    Dwelling dwelling = home.survey().dwelling();
    List<Fact> facts = new ArrayList<>();
    dwelling.address().ifPresent(a -> facts.add(new Fact("Address", a)));
    dwelling.type().ifPresent(t -> facts.add(new Fact("Type", Words.capital(t.word()))));
    dwelling.built().ifPresent(b -> facts.add(new Fact("Built", Integer.toString(b))));
    dwelling.tenure().ifPresent(t -> facts.add(new Fact("Tenure", Words.capital(t.word()))));
    facts.add(figure(desk, "Floor area", home.floorArea()));
    facts.add(figure(desk, "Air volume", home.volume()));
    facts.add(
        new Fact(
            "Size",
            Words.capital(Words.count(home.storeys(), "storey", "storeys"))
                + ", "
                + Words.count(home.bedrooms(), "bedroom", "bedrooms")));
    facts.add(figure(desk, people(dwelling), home.occupants()));
    facts.add(figure(desk, "Usual temperature", home.setpoint()));
    facts.add(figure(desk, "Air leakage at 50" + "\u00a0Pa", home.n50()));
    dwelling
        .heating()
        .flatMap(h -> h.fuel())
        .ifPresent(f -> facts.add(new Fact("Heating", Words.capital(f.word()))));
    dwelling
        .construction()
        .flatMap(c -> c.walls())
        .ifPresent(w -> facts.add(new Fact("Walls", Words.capital(w))));
    dwelling
        .construction()
        .flatMap(c -> c.roof())
        .ifPresent(r -> facts.add(new Fact("Roof", Words.capital(r))));
    facts.add(new Fact("Climate", Words.capital(home.climate().name())));
    facts.add(new Fact("Ventilation rules", desk.subject().ventilation().rules().named()));
    return facts;
  }

  /** An empty home is judged for those who may live there. */
  private static String people(Dwelling dwelling) {
    boolean empty =
        dwelling
            .occupants()
            .filter(o -> o.adults().equals(Optional.of(0)) && o.children().orElse(0) == 0)
            .isPresent();
    return empty ? "People, once it is lived in" : "People";
  }

  private static Fact figure(Desk desk, String name, Figure figure) {
    String basis =
        switch (figure.basis()) {
          case ASSUMED -> ", assumed";
          case CALCULATED -> ", calculated";
          case MEASURED, DECLARED, PUBLISHED -> "";
        };
    return new Fact(name, desk.numbers().full(figure) + basis);
  }

  private static List<Fact> visit(Desk desk, Visit visit) {
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact("Date", Words.date(visit.date())));
    visit.reference().ifPresent(r -> facts.add(new Fact("Reference", r)));
    visit
        .surveyor()
        .ifPresent(
            s ->
                facts.add(
                    new Fact(
                        "Readings by",
                        s.name()
                            + s.qualification().map(q -> ", " + q).orElse("")
                            + s.organisation().map(o -> ", " + o).orElse(""))));
    visit.preparedFor().ifPresent(p -> facts.add(new Fact("Prepared for", p)));
    visit.reason().ifPresent(r -> facts.add(new Fact("Reason", Words.sentence(r))));
    desk.photos().ofHome().ifPresent(p -> facts.add(new Fact("Of the home", Words.capital(p))));
    return facts;
  }
}
