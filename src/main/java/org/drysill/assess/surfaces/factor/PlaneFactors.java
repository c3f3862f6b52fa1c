package org.drysill.assess.surfaces.factor;

import java.util.List;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.glazing.FrameU;
import org.drysill.reference.glazing.Glazing;
import org.drysill.reference.surfaces.FilmUse;
import org.drysill.reference.surfaces.SurfaceResistance;
import org.drysill.reference.surfaces.SurfaceTables;
import org.drysill.survey.ColdSpotKind;
import org.drysill.yaml.Quantity;

/** Words and workings of temperature factors of plane elements: U-values, panes, layers. */
final class PlaneFactors {
  private final SurfaceTables tables;

  PlaneFactors(SurfaceTables tables) {
    this.tables = tables;
  }

  TemperatureFactor ofU(String place, Quantity u, ColdSpotKind kind, List<ReadingFactor> read) {
    return plane(place, u, kind, Films.atSurface(kind), read);
  }

  TemperatureFactor behindFurniture(String place, Quantity u, ColdSpotKind kind) {
    return plane(place + ".furnished", u, kind, FilmUse.FURNITURE, List.of());
  }

  private TemperatureFactor plane(
      String place, Quantity u, ColdSpotKind kind, FilmUse use, List<ReadingFactor> read) {
    SurfaceResistance film = film(use);
    SurfaceResistance within = film(Films.withinU(kind));
    Range given = withError(u);
    Range factor = PlaneFactor.ofU(given, within.range().likely(), film.range(), outside());
    boolean plane = use == FilmUse.WALL;
    String why =
        plane
            ? "From the stated U-value."
            : "From the stated U-value with the higher surface resistance of its kind; the"
                + " junction's own geometry is not in it.";
    return new TemperatureFactor(
        PlaceFactors.figure(
            place,
            factor,
            Basis.CALCULATED,
            () ->
                PlaneWorking.ofU(
                    given, within, film, film(FilmUse.OUTSIDE), PlaceFactors.DEFINITION)),
        FactorSource.U_VALUE,
        !plane,
        PlaceFactors.withRefusals(why, read),
        read);
  }

  TemperatureFactor ofPaneU(String place, Quantity u, List<ReadingFactor> read) {
    return pane(
        place,
        withError(u),
        Basis.DECLARED,
        FactorSource.U_VALUE,
        "From the stated U-value of the pane.",
        tables.defaults().statedUValueError().source(),
        read);
  }

  TemperatureFactor ofGlazing(String place, Glazing kind, List<ReadingFactor> read) {
    boolean unknown = kind.equals(tables.glazing().unknown());
    TemperatureFactor factor =
        pane(
            place,
            kind.ug().range(),
            Basis.PUBLISHED,
            FactorSource.GLAZING,
            unknown
                ? "The survey does not say what glazing it is: anything from single to coated"
                    + " double was taken."
                : "From the table value of " + kind.name() + " glazing.",
            kind.source(),
            read);
    return unknown ? assumed(factor) : factor;
  }

  private static TemperatureFactor assumed(TemperatureFactor f) {
    Figure g = f.figure();
    Figure figure = new Figure(g.id(), g.name(), g.value(), g.unit(), Basis.ASSUMED, g.how());
    return new TemperatureFactor(figure, f.source(), true, f.why(), f.readings());
  }

  private TemperatureFactor pane(
      String place,
      Range u,
      Basis basis,
      FactorSource source,
      String why,
      Citation from,
      List<ReadingFactor> read) {
    SurfaceResistance film = film(FilmUse.GLASS);
    Range factor = PlaneFactor.ofU(u, film.range().likely(), film.range(), outside());
    return new TemperatureFactor(
        PlaceFactors.figure(
            place,
            factor,
            Basis.CALCULATED,
            () -> PlaneWorking.ofPane(u, basis, film, film(FilmUse.OUTSIDE), from)),
        source,
        false,
        PlaceFactors.withRefusals(why, read),
        read);
  }

  TemperatureFactor ofFrame(String place, String frame) {
    FrameU made = tables.glazing().frame(frame);
    SurfaceResistance film = film(FilmUse.GLASS);
    Range factor =
        PlaneFactor.ofU(made.uf().range(), film.range().likely(), film.range(), outside());
    return new TemperatureFactor(
        PlaceFactors.figure(
            place,
            factor,
            Basis.CALCULATED,
            () ->
                PlaneWorking.ofFrame(
                    made.uf().range(), film, film(FilmUse.OUTSIDE), made.source())),
        FactorSource.GLAZING,
        true,
        "From the table value of a frame of " + frame + ".",
        List.of());
  }

  TemperatureFactor ofLayers(String place, Range resistance, FilmUse use) {
    SurfaceResistance film = film(use);
    Range factor = PlaneFactor.ofLayers(resistance, film.range(), outside());
    return new TemperatureFactor(
        PlaceFactors.figure(
            place,
            factor,
            Basis.CALCULATED,
            () ->
                PlaneWorking.ofLayers(
                    resistance, film, film(FilmUse.OUTSIDE), PlaceFactors.DEFINITION)),
        FactorSource.LAYERS,
        false,
        "From the layers, whole and dry, away from corners.",
        List.of());
  }

  private Range withError(Quantity u) {
    double share = tables.defaults().statedUValueError().likely();
    return u.isRange() ? u.range() : Range.around(u.value(), u.value() * share);
  }

  private SurfaceResistance film(FilmUse use) {
    return tables.surfaces().resistance(use);
  }

  private double outside() {
    return film(FilmUse.OUTSIDE).range().likely();
  }
}
