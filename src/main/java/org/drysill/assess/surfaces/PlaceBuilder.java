package org.drysill.assess.surfaces;

import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.readings.InstrumentErrors;
import org.drysill.assess.surfaces.factor.TemperatureFactor;
import org.drysill.assess.surfaces.months.Criterion;
import org.drysill.assess.surfaces.months.MonthTable;
import org.drysill.assess.surfaces.months.MonthTables;
import org.drysill.assess.surfaces.months.VapourExcess;
import org.drysill.assess.surfaces.year.PlaceYear;
import org.drysill.assess.surfaces.year.SurfaceYears;
import org.drysill.reference.surfaces.CriticalFactor;
import org.drysill.reference.surfaces.SurfaceTables;

/** Makes the assessment of one place, once its temperature factor is known. */
final class PlaceBuilder {
  private final Home home;
  private final SurfaceTables tables;
  private final VapourOfRooms vapour;
  private final NowAssessment now;
  private final SurfaceYears years;

  PlaceBuilder(
      Home home,
      SurfaceTables tables,
      VapourOfRooms vapour,
      InstrumentErrors errors,
      SurfaceYears years) {
    this.home = home;
    this.tables = tables;
    this.vapour = vapour;
    this.now = new NowAssessment(home, tables, errors);
    this.years = years;
  }

  /** The place; an opaque one also with furniture before it, where that can be told. */
  ColdPlace place(RoomFacts room, Draft draft) {
    return switch (draft.surface()) {
      case OPAQUE -> opaque(room, draft);
      case GLASS -> glass(room, draft);
    };
  }

  private ColdPlace opaque(RoomFacts room, Draft draft) {
    Criterion criterion = Criterion.opaque(tables);
    MonthTable months = months(room, draft, criterion);
    Optional<Finding> published =
        critical()
            .map(
                c ->
                    Requirements.ofDocument(
                        draft.id(), subject(room, draft), room, draft.factor(), c));
    Optional<Finding> behind =
        draft
            .furnished()
            .map(
                f ->
                    requirement(
                        draft.id() + ".furnished",
                        subject(room, draft) + ", with furniture before it",
                        room,
                        f,
                        months,
                        criterion));
    return place(room, draft, criterion, months, published, behind, Optional.empty());
  }

  private ColdPlace glass(RoomFacts room, Draft draft) {
    Criterion criterion = Criterion.glass(tables);
    MonthTable months = months(room, draft, criterion);
    Optional<Figure> water =
        draft.wholePane().flatMap(w -> PaneWater.of(draft.id(), w, months, tables.defaults()));
    return place(room, draft, criterion, months, Optional.empty(), Optional.empty(), water);
  }

  private MonthTable months(RoomFacts room, Draft draft, Criterion criterion) {
    return MonthTables.of(
        draft.id(),
        draft.factor().figure(),
        room.setpoint(),
        home.climate(),
        new VapourExcess(vapour.of(room)::excessAt, vapour.of(room).input()),
        criterion,
        tables.defaults());
  }

  private PlaceYear year(RoomFacts room, Draft draft) {
    SurfaceYears.Place place =
        new SurfaceYears.Place(
            draft.id(), room, draft.factor().figure(), vapour.of(room)::excessAt);
    return switch (draft.surface()) {
      case OPAQUE -> years.wall(place, draft.material());
      case GLASS -> years.glass(place);
    };
  }

  private ColdPlace place(
      RoomFacts room,
      Draft draft,
      Criterion criterion,
      MonthTable months,
      Optional<Finding> published,
      Optional<Finding> behind,
      Optional<Figure> water) {
    return new ColdPlace(
        draft.id(),
        draft.item(),
        room.id(),
        room.name(),
        draft.name(),
        draft.kind(),
        draft.kindWords(),
        draft.surface(),
        draft.seen(),
        draft.factor(),
        now.of(draft.id(), room, draft.factor(), draft.read()),
        months,
        year(room, draft),
        requirement(draft.id(), subject(room, draft), room, draft.factor(), months, criterion),
        published,
        behind,
        water,
        PlaceWords.neverDry(draft.kindWords(), months, criterion, tables.surfaces()),
        PlaceWords.verdict(months, criterion));
  }

  private Finding requirement(
      String id,
      String subject,
      RoomFacts room,
      TemperatureFactor factor,
      MonthTable months,
      Criterion criterion) {
    return Requirements.ofYear(
        id, subject, room, factor, months, criterion, vapour.isAssumed(room));
  }

  private Optional<CriticalFactor> critical() {
    return home.survey()
        .dwelling()
        .jurisdiction()
        .rules()
        .flatMap(tables.surfaces()::criticalFactor);
  }

  private static String subject(RoomFacts room, Draft draft) {
    return Words.capital(room.name()) + ": " + draft.name();
  }
}
