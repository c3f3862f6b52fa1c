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
import org.drysill.reference.surfaces.SurfaceTables;
import org.drysill.yaml.Quantity;

/** Words and workings of temperature factors, one method for each source. */
final class PlaceFactors {
  static final Citation DEFINITION =
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

  /** A reason, with what was wrong with the reading that could not be used. */
  static String withRefusals(String why, List<ReadingFactor> read) {
    return Stream.concat(
            Stream.of(why), read.stream().limit(1).map(r -> "The reading was " + r.why() + "."))
        .reduce((a, b) -> a + " " + b)
        .orElseThrow();
  }

  private static double clip(double factor) {
    return Math.min(1, Math.max(0, factor));
  }

  /** The figure of a factor. */
  static Figure figure(String place, Range value, Basis basis, Supplier<Working> how) {
    return new Figure(
        "surface." + place + ".factor", "temperature factor", value, Unit.RATIO, basis, how);
  }
}
