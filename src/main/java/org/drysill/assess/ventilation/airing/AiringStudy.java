package org.drysill.assess.ventilation.airing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.AirChanges;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.assess.ventilation.airing.RoomAiring.AtWeather;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.How;
import org.drysill.reference.ventilation.AiringWeather;
import org.drysill.survey.Opening;
import org.drysill.survey.Window;

/** Airing of each heated room whose windows are known. */
public final class AiringStudy {
  private static final List<Citation> FORMULAS =
      List.of(
          Citation.of("EN 16798-7", "2017", "airing, openings on one side", How.MEMORY),
          Citation.of("EN 15242", "2007", "airing, de Gids and Phaff 1982", How.MEMORY));

  private AiringStudy() {}

  /** One for each heated room with a window of known opening. */
  public static List<RoomAiring> of(Home home, List<AiringWeather> weathers) {
    return home.rooms().stream()
        .filter(RoomFacts::heated)
        .flatMap(room -> of(room, weathers).stream())
        .toList();
  }

  private static Optional<RoomAiring> of(RoomFacts room, List<AiringWeather> weathers) {
    List<Opening> opening =
        room.room().windows().stream()
            .map(Window::opening)
            .flatMap(Optional::stream)
            .filter(WindowFlow::opens)
            .toList();
    List<Opening> known = opening.stream().filter(WindowFlow::isKnown).toList();
    return known.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new RoomAiring(
                room.id(),
                room.name(),
                known.size() == opening.size(),
                weathers.stream().map(w -> at(w, weathers.indexOf(w) + 1, room, known)).toList()));
  }

  private static AtWeather at(
      AiringWeather weather, int number, RoomFacts room, List<Opening> openings) {
    Figure flow = flow(weather, "room." + room.id() + ".airing." + number, room, openings);
    return new AtWeather(weather.name(), weather.winter(), flow, airChange(flow, room));
  }

  private static Figure flow(
      AiringWeather weather, String id, RoomFacts room, List<Opening> openings) {
    double difference = weather.temperatureDifference().value();
    double wind = weather.wind().value();
    Range flow =
        openings.stream()
            .map(o -> WindowFlow.byBoth(o, difference, wind))
            .reduce(Range.exactly(0), Range::plus);
    return new Figure(
        id,
        "air through the open windows of the " + room.name() + ", " + weather.name(),
        flow,
        Unit.AIRFLOW,
        Basis.CALCULATED,
        () ->
            new Working(
                "q = Σ Ck × A / 2 × √max(0.001 u²; 0.0035 h ΔT), against √(0.01 + 0.001 u² + 0.0035"
                    + " h ΔT)",
                Stream.concat(
                        openings.stream().map(AiringStudy::area),
                        Stream.of(
                            Input.of(
                                "u", "wind in m/s", Range.exactly(wind), Unit.RATIO, Basis.ASSUMED),
                            Input.of(
                                "ΔT",
                                "temperature difference",
                                Range.exactly(difference),
                                Unit.KELVIN,
                                Basis.ASSUMED)))
                    .toList(),
                Stream.concat(FORMULAS.stream(), Stream.of(weather.source())).toList(),
                Optional.of(
                    "Likely by the first, the bound by the second; all windows on one side.")));
  }

  private static Input area(Opening opening) {
    return Input.of(
        "A",
        "opening of a " + opening.kind().word() + " window",
        opening.width().orElseThrow().range().times(opening.height().orElseThrow().range()),
        Unit.SQUARE_METRE,
        Basis.MEASURED);
  }

  private static Figure airChange(Figure flow, RoomFacts room) {
    return AirChanges.of(
        flow.id() + ".air_change", flow.name() + ", as air changes", flow, room.volume());
  }
}
