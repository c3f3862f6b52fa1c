package org.drysill.assess.surfaces.year;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.DoubleFunction;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.OutdoorHours;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Range;
import org.drysill.physics.surface.MouldYear;
import org.drysill.physics.surface.PaneYear;
import org.drysill.reference.Citation;
import org.drysill.reference.How;
import org.drysill.reference.surfaces.MaterialSensitivity;
import org.drysill.reference.surfaces.SurfaceTables;

/** Follows every surface of a home hour by hour over a year. */
public final class SurfaceYears {
  private static final Citation MOULD =
      Citation.of(
          "Hukka and Viitanen; Ojanen et al.; ANSI/ASHRAE Standard 160",
          "1999, 2010, 2016",
          "mould index",
          How.MEMORY);
  private static final Citation LEWIS =
      new Citation(
          "Lewis relation between heat and vapour transfer",
          Optional.empty(),
          Optional.of("β = 7·10⁻⁹ · hc, in the form of Hens and of Künzel"),
          How.MEMORY);
  private static final String FILM = "w(h) = w(h-1) + β · (pi - ps(Tsi)) · 3600 s";
  private static final String MADE =
      " The hours were made from monthly means: no weather that was.";

  private final SurfaceTables tables;
  private final OutdoorHours hours;
  private final YearAir air;
  private final IdentityHashMap<RoomFacts, YearAir.Room> rooms = new IdentityHashMap<>();

  /** For a home whose outdoor hours are known or made. */
  public SurfaceYears(OutdoorHours hours, SurfaceTables tables) {
    this.tables = tables;
    this.hours = hours;
    this.air = YearRules.air(tables, hours);
  }

  /**
   * What is known of a place.
   *
   * @param id its id
   * @param room its room
   * @param factor its temperature factor
   * @param excess vapour indoors over outdoors [Pa] by outdoor temperature [°C]
   */
  public record Place(String id, RoomFacts room, Figure factor, DoubleFunction<Range> excess) {}

  /** A year of an opaque surface of a material of the survey. */
  public WallYear wall(Place place, Optional<String> material) {
    MaterialSensitivity sensitivity = tables.hours().sensitivity(material);
    MouldYear.Surface surface = YearRules.wall(tables, sensitivity, start());
    YearAir.Ends ends = room(place).walls();
    Range factor = place.factor().value();
    Three<MouldYear> years =
        new Three<>(
            MouldYear.of(factor.high(), ends.low(), surface),
            MouldYear.of(factor.likely(), ends.likely(), surface),
            MouldYear.of(factor.low(), ends.high(), surface));
    return new WallYear(
        figure(
            place,
            "moist_hours",
            "hours in which the air at it is moist enough for mould",
            Unit.HOURS_PER_YEAR,
            years.spread(MouldYear::moistHours),
            "t = hours with pi ≥ %s · ps(Tsi)".formatted(surface.moistFrom()),
            List.of(tables.surfaces().mouldLimit().source())),
        figure(
            place,
            "wet_hours",
            "hours in which it is wet",
            Unit.HOURS_PER_YEAR,
            years.spread(MouldYear::wetHours),
            "t = hours with pi ≥ ps(Tsi)",
            List.of(tables.surfaces().condensationLimit().source())),
        figure(
            place,
            "mould_index",
            "highest mould index of the year",
            Unit.MOULD_INDEX,
            years.spread(MouldYear::peak),
            "dM/dt = k1·k2 / (7·tM1), class: " + sensitivity.sensitivity().word(),
            List.of(MOULD, sensitivity.source(), tables.hours().mouldDecline().source())),
        sensitivity,
        day(years.likely().begins()),
        day(years.likely().visible()));
  }

  /** A year of a pane. */
  public GlassYear glass(Place place) {
    PaneYear.Pane pane = pane();
    Three<PaneYear> years = panes(place, pane);
    return new GlassYear(
        wetMornings(place, years, pane),
        figure(
            place,
            "running_nights",
            "nights in which water runs down the pane",
            Unit.DAYS_PER_YEAR,
            years.spread(PaneYear::runningNights),
            FILM + "; nights with w > " + grams(pane.clingsKgM2()),
            List.of(LEWIS, tables.hours().clingingFilm().source())),
        figure(
            place,
            "worst_night",
            "the most water that settles in one night of the year, by area of the pane",
            Unit.WATER_PER_AREA,
            years.spread(PaneYear::worstNightKgM2),
            "m = Σ β · (pi - ps(Tsi)) · 3600 s, from noon to noon",
            List.of(LEWIS, tables.defaults().paneFilm().source())));
  }

  /** Mornings of the year on which a pane is seen to be wet. */
  public Figure wetMornings(Place place) {
    PaneYear.Pane pane = pane();
    return wetMornings(place, panes(place, pane), pane);
  }

  private Figure wetMornings(Place place, Three<PaneYear> years, PaneYear.Pane pane) {
    return figure(
        place,
        "wet_mornings",
        "mornings on which the pane is seen to be wet",
        Unit.DAYS_PER_YEAR,
        years.spread(PaneYear::wetMornings),
        FILM + "; mornings with w ≥ " + grams(pane.visibleKgM2()),
        List.of(LEWIS, tables.hours().visibleFilm().source()));
  }

  private PaneYear.Pane pane() {
    return YearRules.pane(tables, start());
  }

  private Three<PaneYear> panes(Place place, PaneYear.Pane pane) {
    YearAir.Ends ends = room(place).panes();
    Range factor = place.factor().value();
    return new Three<>(
        PaneYear.of(factor.high(), ends.low(), pane),
        PaneYear.of(factor.likely(), ends.likely(), pane),
        PaneYear.of(factor.low(), ends.high(), pane));
  }

  private static String grams(double kgM2) {
    return Math.round(kgM2 * 1000) + " g/m²";
  }

  private YearAir.Room room(Place place) {
    return rooms.computeIfAbsent(
        place.room(), r -> air.room(r.setpoint().likely(), place.excess()));
  }

  private int start() {
    return YearRules.start(hours);
  }

  private static Optional<DayOfYear> day(OptionalInt hour) {
    return hour.isPresent() ? Optional.of(DayOfYear.ofHour(hour.getAsInt())) : Optional.empty();
  }

  private Figure figure(
      Place place,
      String id,
      String name,
      Unit unit,
      Range value,
      String formula,
      List<Citation> sources) {
    return new Figure(
        "surface." + place.id() + "." + id,
        name,
        value,
        unit,
        Basis.CALCULATED,
        () ->
            new Working(
                formula,
                List.of(
                    Input.of("f", place.factor()),
                    Input.of("Ti", place.room().setpoint()),
                    Input.of(
                        "Δp",
                        "vapour indoors over outdoors at 0 °C",
                        place.excess().apply(0),
                        Unit.PASCAL,
                        Basis.CALCULATED)),
                sources,
                Optional.of(
                    "Hour by hour: Tsi = Te + f · (Ti - Te). Walls and the moisture of the room"
                        + " follow the mean of the last "
                        + Math.round(tables.hours().memory().likely())
                        + " hours outdoors, panes the hour. Clean and dry in the middle of the"
                        + " warmest month."
                        + (hours.made() ? MADE : ""))));
  }
}
