package org.drysill.assess.change.place;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.assess.change.air.AirChange;
import org.drysill.assess.change.place.SurfaceState.CommonAir;
import org.drysill.assess.change.shown.Doubt;
import org.drysill.assess.change.shown.Judgement;
import org.drysill.assess.change.shown.OwnId;
import org.drysill.assess.change.visit.VisitFacts;
import org.drysill.assess.surfaces.ColdPlace;
import org.drysill.assess.surfaces.IndoorVapour;
import org.drysill.assess.surfaces.factor.FactorSource;
import org.drysill.physics.Range;
import org.drysill.physics.air.HumidityReference;
import org.drysill.physics.air.MoistAir;
import org.drysill.reference.readings.ChangeRules;
import org.drysill.reference.readings.ReferenceAir;

/** Brings a surface of two visits to the same outdoor and room air. */
final class SameAir {
  private final VisitFacts before;
  private final VisitFacts after;
  private final List<AirChange> rooms;
  private final ReferenceAir rules;
  private final double warmest;

  /** With the air of the rooms of both visits. */
  SameAir(VisitFacts before, VisitFacts after, List<AirChange> rooms, ChangeRules rules) {
    this.before = before;
    this.after = after;
    this.rooms = rooms;
    this.rules = rules.referenceAir();
    this.warmest = rules.warmestOutdoors().value();
  }

  /**
   * Empty where the air of the room is not known at both visits, or where it was so warm outdoors
   * at one of them that its excess says nothing of colder air.
   */
  Optional<SameAirChange> change(ColdPlace earlier, ColdPlace later) {
    return rooms.stream()
        .filter(room -> room.id().equals(later.room()))
        .findFirst()
        .flatMap(
            room ->
                before
                    .vapour()
                    .of(earlier.room())
                    .filter(this::saysSomething)
                    .flatMap(
                        was ->
                            after
                                .vapour()
                                .of(later.room())
                                .filter(this::saysSomething)
                                .map(is -> change(earlier, later, room, was, is))));
  }

  /** True where it was too warm for it at one of the visits. */
  boolean isTooWarm(ColdPlace earlier, ColdPlace later) {
    return Stream.of(before.vapour().of(earlier.room()), after.vapour().of(later.room()))
        .flatMap(Optional::stream)
        .anyMatch(vapour -> !saysSomething(vapour));
  }

  private boolean saysSomething(IndoorVapour vapour) {
    return !vapour.isTooWarm(warmest);
  }

  private SameAirChange change(
      ColdPlace earlier, ColdPlace later, AirChange room, IndoorVapour was, IndoorVapour is) {
    String id = "change.cold_spot." + later.id() + ".same_air";
    CommonAir air = air(id, room.temperatureBefore(), room.temperatureAfter());
    double celsius = rules.temperature().value();
    return change(
        id,
        new SurfaceState(air, factor(id, "before", earlier), was.excessAt(celsius)),
        new SurfaceState(air, factor(id, "after", later), is.excessAt(celsius)),
        sameUnknown(earlier, later),
        read(earlier) && read(later),
        room.humidity().fromIndoors().isPresent());
  }

  /**
   * A factor that nobody measured and that is the same at both visits has the same error at both,
   * whatever it is.
   */
  private static boolean sameUnknown(ColdPlace earlier, ColdPlace later) {
    return earlier.factor().source() == later.factor().source()
        && !read(later)
        && earlier.factor().figure().value().equals(later.factor().figure().value());
  }

  private static boolean read(ColdPlace place) {
    return place.factor().source() == FactorSource.READINGS;
  }

  private static SameAirChange change(
      String id,
      SurfaceState was,
      SurfaceState is,
      boolean sameUnknown,
      boolean read,
      boolean outdoors) {
    double change = is.humidity() - was.humidity();
    double error = error(was, is, sameUnknown);
    return new SameAirChange(
        was.air().outdoor(),
        was.air().indoor(),
        was.factor(),
        is.factor(),
        read,
        was.figure(id + ".humidity_before", "before"),
        is.figure(id + ".humidity_after", "after"),
        changed(id, was, is, Range.around(change, error)),
        outdoors
            ? Judgement.byError(
                change,
                error,
                String.format(Locale.ROOT, "plus or minus %.0f percentage points", error * 100))
            : Judgement.notShown(
                Doubt.OUTDOORS_NOT_READ, "outdoor air was not read with the rooms at both visits"));
  }

  private static double error(SurfaceState was, SurfaceState is, boolean sameUnknown) {
    double excess = Math.hypot(was.errorByExcess(), is.errorByExcess());
    double factor =
        sameUnknown
            ? is.errorByFactor() - was.errorByFactor()
            : Math.hypot(was.errorByFactor(), is.errorByFactor());
    return Math.hypot(excess, factor);
  }

  private static Figure changed(String id, SurfaceState was, SurfaceState is, Range value) {
    return new Figure(
        id + ".change",
        "Change of the humidity at the surface in the same air",
        value,
        Unit.PERCENTAGE_POINT,
        Basis.CALCULATED,
        () ->
            new Working(
                "φsi2 − φsi1",
                List.of(
                    Input.of("φsi1", was.figure(id + ".humidity_before", "before")),
                    Input.of("φsi2", is.figure(id + ".humidity_after", "after"))),
                List.of(),
                Optional.of(
                    "Bounds: errors of factor and excess of both visits as root of the sum of"
                        + " squares.")));
  }

  private static Figure factor(String id, String when, ColdPlace place) {
    return OwnId.of(id + ".factor_" + when, "Temperature factor " + when, place.factor().figure());
  }

  private CommonAir air(String id, Figure first, Figure second) {
    double celsius = rules.temperature().value();
    return new CommonAir(
        new Figure(
            "change.same_air.outdoor",
            "Outdoor temperature at which cold places are compared",
            Range.exactly(celsius),
            Unit.CELSIUS,
            Basis.ASSUMED,
            () -> new Working("as assumed", List.of(), List.of(rules.source()), Optional.empty())),
        MoistAir.vapourPressurePa(celsius, rules.humidity().value(), HumidityReference.OVER_WATER),
        new Figure(
            id + ".indoor",
            "Mean temperature of the room at both visits",
            Range.exactly((first.likely() + second.likely()) / 2),
            Unit.CELSIUS,
            Basis.CALCULATED,
            () ->
                new Working(
                    "(T1 + T2) / 2",
                    List.of(Input.of("T1", first), Input.of("T2", second)),
                    List.of(),
                    Optional.empty())),
        rules.source());
  }
}
