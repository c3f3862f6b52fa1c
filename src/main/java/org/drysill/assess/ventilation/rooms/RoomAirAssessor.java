package org.drysill.assess.ventilation.rooms;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.ventilation.provided.ProvidedAir;
import org.drysill.physics.network.AirNetwork.Between;
import org.drysill.reference.ventilation.VentilationDefaults;

/** Finds out how the air of a home moves from room to room. */
public final class RoomAirAssessor {
  private final Layout layout;
  private final RoomFigures figures;
  private final Map<Case, AirState> mean = new EnumMap<>(Case.class);
  private final Map<Case, AirState> running = new EnumMap<>(Case.class);

  private RoomAirAssessor(
      Layout layout, AirModel model, ProvidedAir air, VentilationDefaults defaults) {
    this.layout = layout;
    this.figures = new RoomFigures(defaults);
    for (Case at : Case.values()) {
      AirState state = model.mean(air, at);
      mean.put(at, state);
      running.put(at, model.running(state.weatherPa(), at));
    }
  }

  /**
   * The air of every room.
   *
   * @param home the home
   * @param air the outdoor air of the whole home, which the rooms share
   * @param defaults what is taken for granted where the survey does not say
   */
  public static RoomAirResult of(Home home, ProvidedAir air, VentilationDefaults defaults) {
    if (home.rooms().stream().noneMatch(RoomFacts::heated)) {
      return new RoomAirResult(List.of(), List.of(), 0, List.of());
    }
    Layout layout = new Layout(home, defaults);
    FanAir fans = new FanAir(layout, air.fans());
    AirModel model = new AirModel(layout, home, fans, defaults);
    RoomAirAssessor assessor = new RoomAirAssessor(layout, model, air, defaults);
    return new RoomAirResult(
        assessor.rooms(),
        assessor.doors(),
        assessor.mean.get(Case.LIKELY).weatherPa(),
        new RoomAssumptions(layout, fans, defaults).all());
  }

  private List<RoomBalance> rooms() {
    List<RoomBalance> rooms = new ArrayList<>();
    for (int i = 0; i < layout.places().size(); i++) {
      rooms.add(room(i));
    }
    return rooms;
  }

  private RoomBalance room(int i) {
    Place place = layout.places().get(i);
    AirState likely = mean.get(Case.LIKELY);
    double into = 0;
    double from = 0;
    for (Between way : likely.network().between()) {
      double flow = way.flowM3S(likely.pressures());
      double inwards = way.to() == i ? flow : way.from() == i ? -flow : 0;
      into += Math.max(0, inwards);
      from += Math.max(0, -inwards);
    }
    return new RoomBalance(
        place.id(),
        place.name(),
        place.storey(),
        place.isHall(),
        place.floorAreaM2(),
        likely.supply().get(i),
        likely.leaksIn(i),
        into,
        likely.extract().get(i),
        likely.leaksOut(i),
        from,
        likely.pressures().pa(i),
        place.facts().map(room -> figures.outdoorAir(room, i, mean)),
        place.facts().map(room -> figures.airChange(room, figures.outdoorAir(room, i, mean))));
  }

  private List<DoorAir> doors() {
    List<DoorAir> doors = new ArrayList<>();
    for (int i = 0; i < layout.ways().size(); i++) {
      doors.add(door(i));
    }
    return doors;
  }

  private DoorAir door(int i) {
    Way way = layout.ways().get(i);
    AirState likely = mean.get(Case.LIKELY);
    double flow = likely.network().between().get(i).flowM3S(likely.pressures());
    Place first = layout.places().get(way.from());
    Place other = layout.places().get(way.to());
    return new DoorAir(
        flow < 0 ? other.id() : first.id(),
        flow < 0 ? first.id() : other.id(),
        way.kind() == Way.Kind.MEASURED || way.kind() == Way.Kind.GAP_ASSUMED,
        way.kind() == Way.Kind.OPEN,
        Math.abs(flow),
        figures.doorPressure(way, i, first, other, running));
  }
}
