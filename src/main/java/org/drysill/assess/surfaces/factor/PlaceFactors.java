package org.drysill.assess.surfaces.factor;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.How;
import org.drysill.reference.glazing.Glazing;
import org.drysill.reference.surfaces.FilmUse;
import org.drysill.reference.surfaces.SurfaceResistance;
import org.drysill.reference.surfaces.SurfaceTables;
import org.drysill.survey.ColdSpotKind;
import org.drysill.yaml.Quantity;

/** Words and workings of temperature factors, one method for each source. */
final class PlaceFactors {
  private static final Citation DEFINITION =
      Citation.of("ISO 13788", "2012", "3, temperature factor at the internal surface", How.MEMORY);
  private static final Citation COMBINATION =
      Citation.of("JCGM 100 (GUM)", "2008", "5.1.2, propagation of uncertainty", How.MEMORY);

  private final SurfaceTables tables;

  PlaceFactors(SurfaceTables tables) {
    this.tables = tables;
  }

  TemperatureFactor read(String place, CombinedReadings combined, List<ReadingFactor> read) {
    Figure figure =
        figure(
            place, combined.factor(), Basis.MEASURED, () -> ReadingWorking.of(combined, sources()));
    return new TemperatureFactor(
        figure, FactorSource.READINGS, combined.weak(), readingsWhy(combined), read);
  }

  private static String readingsWhy(CombinedReadings combined) {
    int n = combined.used().size();
    String count = n == 1 ? "one reading" : n + " readings";
    String where = combined.point().map(p -> ", " + p).orElse("");
    return "From " + count + where + ": " + combined.used().get(0).why() + ".";
  }

  private static List<Citation> sources() {
    return List.of(DEFINITION, COMBINATION);
  }

  TemperatureFactor stated(String place, Quantity factor, List<ReadingFactor> read) {
    double error = tables.defaults().statedFactorError().likely();
    Range range = factor.isRange() ? factor.range() : Range.around(factor.value(), error);
    Range kept = new Range(clip(range.low()), clip(range.likely()), clip(range.high()));
    Working working =
        new Working(
            "f as stated, ± error",
            List.of(Input.of("f", "stated factor", kept, Unit.RATIO, Basis.DECLARED)),
            List.of(tables.defaults().statedFactorError().source()),
            Optional.empty());
    return new TemperatureFactor(
        figure(place, kept, Basis.DECLARED, () -> working),
        FactorSource.STATED,
        false,
        withRefusals("The survey states it.", read),
        read);
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
        figure(
            place,
            factor,
            Basis.CALCULATED,
            () -> PlaneWorking.ofU(given, within, film, DEFINITION)),
        FactorSource.U_VALUE,
        !plane,
        withRefusals(why, read),
        read);
  }

  TemperatureFactor ofPaneU(String place, Quantity u, List<ReadingFactor> read) {
    return pane(
        place,
        withError(u),
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
      FactorSource source,
      String why,
      Citation from,
      List<ReadingFactor> read) {
    SurfaceResistance film = film(FilmUse.GLASS);
    Range factor = PlaneFactor.ofU(u, film.range().likely(), film.range(), outside());
    return new TemperatureFactor(
        figure(place, factor, Basis.CALCULATED, () -> PlaneWorking.ofPane(u, film, from)),
        source,
        false,
        withRefusals(why, read),
        read);
  }

  TemperatureFactor ofEdge(String place, GlassFactor.Edge edge) {
    String frame = edge.frame().map(f -> " in a frame of " + f.word()).orElse("");
    Working working =
        new Working(
            "f of the lower edge, by glazing and frame, from a table",
            List.of(),
            List.of(edge.source()),
            Optional.of("The lower edge is 2 to 4 K colder than the middle of the pane."));
    return new TemperatureFactor(
        figure(place, edge.factor(), Basis.ASSUMED, () -> working),
        FactorSource.GLAZING,
        true,
        "From typical edges of " + edge.kind() + " glazing" + frame + ".",
        List.of());
  }

  TemperatureFactor ofLayers(String place, Range resistance, FilmUse use) {
    SurfaceResistance film = film(use);
    Range factor = PlaneFactor.ofLayers(resistance, film.range(), outside());
    return new TemperatureFactor(
        figure(
            place,
            factor,
            Basis.CALCULATED,
            () -> PlaneWorking.ofLayers(resistance, film, film(FilmUse.OUTSIDE), DEFINITION)),
        FactorSource.LAYERS,
        false,
        "From the layers, whole and dry, away from corners.",
        List.of());
  }

  TemperatureFactor typical(
      String place, String kind, Optional<Integer> built, List<ReadingFactor> read) {
    Range factor = tables.details().factor(kind, built);
    String age = built.map(y -> "a home of " + y).orElse("a home of unknown age");
    Working working =
        new Working(
            "f of a typical detail by kind and age, from a table",
            List.of(),
            List.of(tables.details().source()),
            Optional.of("A planning assumption: read the surface to replace it."));
    return new TemperatureFactor(
        figure(place, factor, Basis.ASSUMED, () -> working),
        FactorSource.TYPICAL_DETAIL,
        true,
        withRefusals("Nothing usable was read: typical of " + kind + " in " + age + ".", read),
        read);
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

  private static String withRefusals(String why, List<ReadingFactor> read) {
    return Stream.concat(
            Stream.of(why), read.stream().limit(1).map(r -> "The reading was " + r.why() + "."))
        .reduce((a, b) -> a + " " + b)
        .orElseThrow();
  }

  private static double clip(double factor) {
    return Math.min(1, Math.max(0, factor));
  }

  private static Figure figure(String place, Range value, Basis basis, Supplier<Working> how) {
    return new Figure(
        "surface." + place + ".factor", "temperature factor", value, Unit.RATIO, basis, how);
  }
}
