package org.drysill.assess.surfaces;

import java.util.ArrayList;
import java.util.List;
import org.drysill.assess.Assumption;
import org.drysill.assess.Home;
import org.drysill.assess.OutdoorHours;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.readings.InstrumentErrors;
import org.drysill.assess.surfaces.factor.FactorFinder;
import org.drysill.assess.surfaces.year.SurfaceYears;
import org.drysill.reference.surfaces.SurfaceTables;

/** Assesses every cold spot, window and built-up wall of a home. */
public final class SurfaceAssessor {
  private final Home home;
  private final SurfaceTables tables;
  private final VapourOfRooms vapour;
  private final InstrumentErrors errors;
  private final Drafts drafts;
  private final PlaceBuilder builder;
  private final GlazingChoices glazing;
  private final OutdoorHours hours;

  private SurfaceAssessor(Home home, IndoorVapours vapour, SurfaceTables tables) {
    this.home = home;
    this.tables = tables;
    this.vapour = new VapourOfRooms(vapour, tables.defaults());
    this.errors = new InstrumentErrors(home.survey(), tables.readings().accuracy());
    this.hours = OutdoorHours.of(home.climate(), tables.hours().weather());
    SurfaceYears years = new SurfaceYears(hours, tables);
    FactorFinder factors = new FactorFinder(home, tables, errors);
    this.drafts = new Drafts(factors, tables);
    this.builder = new PlaceBuilder(home, tables, this.vapour, errors, years);
    this.glazing = new GlazingChoices(tables.glazing(), factors, years, this.vapour);
  }

  /**
   * Condensation and mould risk of a home.
   *
   * @param home the home with every gap filled
   * @param vapour what was read of its indoor vapour
   * @param tables what is published about surfaces
   */
  public static CondensationResult assess(Home home, IndoorVapours vapour, SurfaceTables tables) {
    return new SurfaceAssessor(home, vapour, tables).assess();
  }

  private CondensationResult assess() {
    List<ColdPlace> places = new ArrayList<>();
    List<RoomFacts> judged = new ArrayList<>();
    List<OtherGlazing> otherGlazing = new ArrayList<>();
    for (RoomFacts room : home.rooms()) {
      List<ColdPlace> here = places(room);
      if (!here.isEmpty()) {
        places.addAll(here);
        judged.add(room);
        otherGlazing.addAll(glazing.of(room, here));
      }
    }
    List<Assumption> assumptions = new ArrayList<>(vapour.assumptions(judged));
    assumptions.addAll(new SurfaceAssumptions(tables).of(places, hours.made()));
    assumptions.addAll(errors.assumptions());
    return new CondensationResult(
        places,
        NeverDry.of(places, tables.surfaces().livableHumidity().likely()),
        otherGlazing,
        judged.stream().map(vapour::sentence).toList(),
        assumptions);
  }

  private List<ColdPlace> places(RoomFacts room) {
    List<ColdPlace> places = new ArrayList<>();
    drafts.each(room, draft -> places.add(builder.place(room, draft)));
    return places;
  }
}
