package org.drysill.assess.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.humidity.HumidityResult;
import org.drysill.assess.humidity.HumidityResult.HomeAir;
import org.drysill.assess.moisture.MoistureResult;
import org.drysill.assess.surfaces.CondensationResult;
import org.drysill.physics.air.MoistAir;

/** Puts the readings of all rooms together with what was found of air, water and glass. */
public final class MoistureModelAssessor {
  private final Home home;
  private final AirFound air;
  private final MoistureResult moisture;
  private final ModelRules rules;
  private final Layout layout;

  private MoistureModelAssessor(
      Home home, AirFound air, MoistureResult moisture, ModelRules rules) {
    this.home = home;
    this.air = air;
    this.moisture = moisture;
    this.rules = rules;
    this.layout = new Layout(home, rules.defaults(), air.rooms());
  }

  /**
   * Assesses a home.
   *
   * @param home the home
   * @param air what was found of its air
   * @param humidity what the readings say
   * @param moisture what its sources give off
   * @param surfaces its panes
   * @param rules what the model rests on
   */
  public static MoistureModelResult assess(
      Home home,
      AirFound air,
      HumidityResult humidity,
      MoistureResult moisture,
      CondensationResult surfaces,
      ModelRules rules) {
    Optional<String> silent = silent(humidity, air, moisture, rules);
    return silent
        .map(MoistureModelResult::silent)
        .orElseGet(
            () -> new MoistureModelAssessor(home, air, moisture, rules).fitted(humidity, surfaces));
  }

  /** The home as zones, before its readings are put together; they give temperatures alone. */
  static HomeModel believed(
      Home home,
      AirFound air,
      HumidityResult humidity,
      MoistureResult moisture,
      CondensationResult surfaces,
      ModelRules rules) {
    return new MoistureModelAssessor(home, air, moisture, rules)
        .model(new VisitAir(humidity.home().orElseThrow(), humidity), surfaces);
  }

  /** Why the readings cannot be put together, where they cannot. */
  private static Optional<String> silent(
      HumidityResult humidity, AirFound air, MoistureResult moisture, ModelRules rules) {
    Optional<HomeAir> read = humidity.home();
    if (read.isEmpty()) {
      return Optional.of("No humidity was read in a heated room.");
    }
    if (!read.get().simultaneous()) {
      return Optional.of(
          "Temperature and humidity were not both read outdoors near in time to the rooms.");
    }
    if (read.get().excess().likely() < rules.balance().leastExcess()) {
      return Optional.of(
          "The air indoors holds so little more vapour than outdoors that the hygrometer's error"
              + " decides.");
    }
    return air.provided().infiltration().likely() > 0 && moisture.itemised().likely() > 0
        ? Optional.empty()
        : Optional.of("No air through leaks is known, or no source of water.");
  }

  private MoistureModelResult fitted(HumidityResult humidity, CondensationResult surfaces) {
    HomeAir read = humidity.home().orElseThrow();
    VisitAir visit = new VisitAir(read, humidity);
    HomeModel model = model(visit, surfaces);
    double excess = MoistAir.vapourContentKgM3(visit.celsius(), read.excessPressure().likely());
    return result(
        new FittedHome(
            model, Reading.all(layout, visit, read.temperature()), excess, rules.defaults()));
  }

  private HomeModel model(VisitAir visit, CondensationResult surfaces) {
    return new HomeModel(
        layout,
        air.provided().infiltration(),
        moisture,
        FanInModel.all(layout, air.provided().fans()),
        new Glass(layout, surfaces, visit, rules.defaults().glassShare(), rules.paneFilm()),
        rules.defaults());
  }

  private MoistureModelResult result(FittedHome fit) {
    ModelFigures figures = new ModelFigures(fit);
    boolean panes = fit.model().hasPanes();
    FitUnknowns fitted = new FitUnknowns(fit, figures);
    List<FittedUnknown> unknowns =
        fitted.all(moisture.itemised(), air.provided().wholeHome(), air.provided().infiltration());
    Optional<Figure> glass = panes ? Optional.of(figures.settling()) : Optional.empty();
    Figure water = unknowns.get(0).after();
    Figure outdoorAir = unknowns.get(1).after();
    Figure together =
        figures.together(
            fit.posterior().correlation(fit.model()::water, fit.model()::outdoorAir),
            water,
            outdoorAir);
    Finding split =
        new SplitFinding(fit, home.n50().basis())
            .of(together, water, outdoorAir, rules.defaults().together());
    return new MoistureModelResult(
        Optional.empty(),
        rooms(fit, figures, inputs(unknowns, glass)),
        unknowns,
        glass,
        Optional.of(together),
        Optional.of(split),
        Optional.of(fit.zoned()),
        HomeStates.of(fit),
        ModelAssumptions.of(rules.defaults(), !layout.ways().isEmpty(), panes));
  }

  private static List<Figure> inputs(List<FittedUnknown> unknowns, Optional<Figure> glass) {
    return Stream.concat(unknowns.stream().map(FittedUnknown::after), glass.stream()).toList();
  }

  private List<ModelledRoom> rooms(FittedHome fit, ModelFigures figures, List<Figure> unknowns) {
    List<ModelledRoom> rooms = new ArrayList<>();
    for (int i = 0; i < layout.rooms().size(); i++) {
      int index = i;
      RoomFacts room = layout.rooms().get(i);
      Figure water = figures.water(i, room, unknowns.get(0));
      List<Figure> from = new ArrayList<>(unknowns);
      from.set(0, water);
      double listed = fit.model().listed(i);
      rooms.add(
          readingOf(fit, i)
              .map(reading -> read(fit, figures, room, reading, from, listed))
              .orElseGet(() -> notRead(fit, figures, index, from, listed)));
    }
    return rooms;
  }

  private ModelledRoom read(
      FittedHome fit,
      ModelFigures figures,
      RoomFacts room,
      int reading,
      List<Figure> from,
      double listed) {
    Figure measured = fit.readings().get(reading).measured();
    Figure modelled = figures.modelled(room, z -> fit.read(reading, z), from);
    boolean explained = !fit.leftOut(reading);
    return new ModelledRoom(
        room.id(),
        room.name(),
        Optional.of(measured),
        modelled,
        explained,
        Optional.of(fit.miss(reading)),
        from.get(0),
        listed,
        RoomWords.read(room, measured, modelled, explained, rules.defaults().limitOfMiss()));
  }

  private ModelledRoom notRead(
      FittedHome fit, ModelFigures figures, int index, List<Figure> from, double listed) {
    RoomFacts room = layout.rooms().get(index);
    Figure modelled = figures.modelled(room, z -> fit.model().excess(z)[index], from);
    return new ModelledRoom(
        room.id(),
        room.name(),
        Optional.empty(),
        modelled,
        true,
        Optional.empty(),
        from.get(0),
        listed,
        RoomWords.notRead(room, modelled));
  }

  private static Optional<Integer> readingOf(FittedHome fit, int room) {
    for (int r = 0; r < fit.readings().size(); r++) {
      if (fit.readings().get(r).room() == room) {
        return Optional.of(r);
      }
    }
    return Optional.empty();
  }
}
