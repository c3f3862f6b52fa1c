package org.drysill.assess.surfaces;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.readings.InstrumentErrors;
import org.drysill.assess.surfaces.factor.ReadingFactor;
import org.drysill.assess.surfaces.factor.TemperatureFactor;
import org.drysill.assess.surfaces.months.Criterion;
import org.drysill.assess.surfaces.months.MonthTable;
import org.drysill.assess.surfaces.months.MonthTables;
import org.drysill.assess.surfaces.months.VapourExcess;
import org.drysill.reference.surfaces.CriticalFactor;
import org.drysill.reference.surfaces.SurfaceTables;
import org.drysill.survey.Window;

/** Makes the assessment of one place, once its temperature factor is known. */
final class PlaceBuilder {
  private final Home home;
  private final SurfaceTables tables;
  private final VapourOfRooms vapour;
  private final NowAssessment now;

  PlaceBuilder(Home home, SurfaceTables tables, VapourOfRooms vapour, InstrumentErrors errors) {
    this.home = home;
    this.tables = tables;
    this.vapour = vapour;
    this.now = new NowAssessment(home, tables, errors);
  }

  /**
   * What is known of a place before its year.
   *
   * @param id unique id
   * @param item the survey's id
   * @param name its name in sentences
   * @param kind which part of the survey it comes from
   * @param kindWords what it is
   * @param seen what was seen on it
   * @param factor its temperature factor
   * @param read what was read on it
   */
  record Draft(
      String id,
      String item,
      String name,
      PlaceKind kind,
      String kindWords,
      Seen seen,
      TemperatureFactor factor,
      List<ReadingFactor> read) {}

  /** An opaque place, and the same with furniture before it where that can be told. */
  ColdPlace opaque(RoomFacts room, Draft draft, Optional<TemperatureFactor> furnished) {
    Criterion criterion = Criterion.opaque(tables);
    MonthTable months = months(room, draft, criterion);
    Optional<Finding> published =
        critical()
            .map(
                c ->
                    Requirements.ofDocument(
                        draft.id(), subject(room, draft), room, draft.factor(), c));
    Optional<Finding> behind =
        furnished.map(
            f ->
                requirement(
                    draft.id() + ".furnished",
                    subject(room, draft) + ", with furniture before it",
                    room,
                    f,
                    months,
                    criterion));
    return place(
        room, draft, SurfaceClass.OPAQUE, criterion, months, published, behind, Optional.empty());
  }

  /** A place on glass. */
  ColdPlace glass(RoomFacts room, Draft draft, Optional<Window> wholePane) {
    Criterion criterion = Criterion.glass(tables);
    MonthTable months = months(room, draft, criterion);
    Optional<Figure> water =
        wholePane.flatMap(w -> PaneWater.of(draft.id(), w, months, tables.defaults()));
    return place(
        room,
        draft,
        SurfaceClass.GLASS,
        criterion,
        months,
        Optional.empty(),
        Optional.empty(),
        water);
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

  private ColdPlace place(
      RoomFacts room,
      Draft draft,
      SurfaceClass surface,
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
        surface,
        draft.seen(),
        draft.factor(),
        now.of(draft.id(), room, draft.factor(), draft.read()),
        months,
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
