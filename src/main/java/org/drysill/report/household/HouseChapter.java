package org.drysill.report.household;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.assess.MoneyFacts;
import org.drysill.report.block.Block;
import org.drysill.report.block.Fact;
import org.drysill.report.block.Facts;
import org.drysill.report.block.Section;
import org.drysill.report.chapter.Chapter;
import org.drysill.report.subject.Desk;
import org.drysill.report.words.Words;
import org.drysill.survey.CombustionAppliance;
import org.drysill.survey.Construction;
import org.drysill.survey.Dwelling;
import org.drysill.survey.Heating;

/** Facts of the house that its owner wants at hand for years, on one page. */
final class HouseChapter implements Chapter {
  @Override
  public Optional<Section> write(Desk desk) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Facts(
            desk.notes(
                List.of(
                    Optional.of(desk.subject().home().n50()),
                    Optional.of(desk.subject().home().money().heat()))),
            facts(desk)));
    blocks.add(HouseTables.rooms(desk));
    HouseTables.windows(desk).ifPresent(blocks::add);
    HouseTables.fans(desk).ifPresent(blocks::add);
    return Optional.of(
        new Section(
            "house",
            "The house as it stood on " + Words.date(desk.subject().survey().visit().date()),
            "House facts to keep",
            true,
            blocks));
  }

  private static List<Fact> facts(Desk desk) {
    Home home = desk.subject().home();
    Dwelling dwelling = home.survey().dwelling();
    List<Fact> facts = new ArrayList<>();
    dwelling.built().ifPresent(b -> facts.add(new Fact("Built", Integer.toString(b))));
    dwelling
        .construction()
        .flatMap(Construction::walls)
        .ifPresent(w -> facts.add(new Fact("Outside walls", Words.capital(w))));
    built(home).ifPresent(b -> facts.add(new Fact("Walls by layer", b)));
    dwelling
        .construction()
        .flatMap(Construction::roof)
        .ifPresent(r -> facts.add(new Fact("Roof", Words.capital(r))));
    facts.add(new Fact("Heating", heating(desk, home)));
    if (!dwelling.combustionAppliances().isEmpty()) {
      facts.add(new Fact("What burns", burning(desk, dwelling)));
    }
    facts.add(new Fact("Air leakage at 50\u00a0Pa", worded(desk, home.n50())));
    facts.add(new Fact("Prices", prices(desk, home.money())));
    return facts;
  }

  private static Optional<String> built(Home home) {
    List<String> walls =
        home.survey().rooms().stream()
            .flatMap(room -> room.walls().stream())
            .map(wall -> wall.name().orElse("wall " + wall.id()) + ": " + LayerWords.of(wall))
            .toList();
    return walls.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", walls));
  }

  private static String heating(Desk desk, Home home) {
    Optional<Heating> heating = home.survey().dwelling().heating();
    String fuel =
        heating.flatMap(Heating::fuel).map(f -> Words.capital(f.word())).orElse("Not stated");
    return fuel
        + ", efficiency "
        + worded(desk, home.money().heatingEfficiency())
        + ", usually "
        + worded(desk, home.setpoint());
  }

  private static String burning(Desk desk, Dwelling dwelling) {
    return Words.capital(
        Words.list(
            dwelling.combustionAppliances(),
            (CombustionAppliance a) ->
                a.kind().word()
                    + a.room().map(r -> " (" + Words.within(desk.room(r)) + ")").orElse("")));
  }

  private static String prices(Desk desk, MoneyFacts money) {
    return "Electricity "
        + worded(desk, money.electricity())
        + ", heat "
        + worded(desk, money.heat())
        + desk.subject()
            .survey()
            .prices()
            .flatMap(p -> p.date())
            .map(d -> ", of " + Words.date(d))
            .orElse("");
  }

  private static String worded(Desk desk, Figure figure) {
    String basis =
        switch (figure.basis()) {
          case ASSUMED -> " (assumed)";
          case MEASURED -> " (measured)";
          case CALCULATED, DECLARED, PUBLISHED -> "";
        };
    return desk.numbers().likely(figure) + basis;
  }
}
