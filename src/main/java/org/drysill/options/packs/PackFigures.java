package org.drysill.options.packs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Unit;
import org.drysill.assess.Working.Input;
import org.drysill.options.effect.Figures;
import org.drysill.physics.Range;

/**
 * The figures of a package, each with the working that gives it.
 *
 * @param figures makes them
 * @param wholeHome the air of the home against what is asked
 */
record PackFigures(Figures figures, Finding wholeHome) {
  private static final String TOGETHER =
      "for the air by which its measures together bring less than each alone";

  /** Air that is still lacking. */
  Figure lacks(PackValue value) {
    return figures.of(
        "lacks",
        "air that is still lacking: outdoor air of the home, and extract of wet rooms",
        Range.exactly(value.lacks()),
        Unit.AIRFLOW,
        asked().isPresent() ? "max(0, asked − Q') + e" : "e",
        lacking(value),
        List.of());
  }

  private Optional<Figure> asked() {
    return wholeHome.required().filter(f -> f.likely() > 0);
  }

  private List<Input> lacking(PackValue value) {
    double asked = asked().map(Figure::likely).orElse(0.0);
    double air = asked > 0 ? value.airReserve() * asked : 0;
    List<Input> inputs = new ArrayList<>();
    asked()
        .ifPresent(
            f -> {
              inputs.add(Input.of("asked", f));
              inputs.add(calculated("Q'", "outdoor air of the home with it", air, Unit.AIRFLOW));
            });
    inputs.add(
        calculated(
            "e",
            "extract that wet rooms still lack",
            Math.max(0, value.lacks() - Math.max(0, asked - air)),
            Unit.AIRFLOW));
    return inputs;
  }

  private static Input calculated(String symbol, String name, double value, Unit unit) {
    return Input.of(symbol, name, Range.exactly(value), unit, Basis.CALCULATED);
  }

  /** Of the rooms with cold places, by volume [1]; empty where there are none. */
  Optional<Figure> humidity(double found) {
    return Double.isNaN(found)
        ? Optional.empty()
        : Optional.of(
            figures.of(
                "winter_humidity",
                "mean humidity of the rooms with cold places in the coldest month",
                Range.exactly(found),
                Unit.PERCENT,
                "Σ V·(φ0 + Δφ·v'/v) / Σ V",
                List.of(),
                List.of()));
  }

  /** Ends are those of the measures, moved by as much as the likely value of the sum. */
  Figure money(String id, String name, Unit unit, double likely, List<Figure> parts) {
    double sum = sum(parts, Range::likely);
    Range value =
        new Range(
            likely + Math.min(0, sum(parts, Range::low) - sum),
            likely,
            likely + Math.max(0, sum(parts, Range::high) - sum));
    return summed(id, name, unit, value, parts);
  }

  /** A sum at the likely values. */
  Figure energy(String id, String name, double likely, Unit unit, List<Figure> parts) {
    return summed(id, name, unit, Range.exactly(likely), parts);
  }

  private Figure summed(String id, String name, Unit unit, Range value, List<Figure> parts) {
    double together = value.likely() - sum(parts, Range::likely);
    return figures.of(
        id,
        name,
        value,
        unit,
        formula("Σ i", together),
        inputs(parts.stream().map(f -> Input.of("i", f)), together, unit),
        List.of());
  }

  /** Energy for heat that the measures take, less what they save [kWh/a]. */
  Figure heat(double likely, List<Figure> lost, List<Figure> saved) {
    double together = likely - sum(lost, Range::likely) + sum(saved, Range::likely);
    return figures.of(
        "heat",
        "energy for heat in a year",
        Range.exactly(likely),
        Unit.KWH_PER_YEAR,
        formula("Σ (l − s)", together),
        inputs(
            Stream.concat(
                lost.stream().map(f -> Input.of("l", f)),
                saved.stream().map(f -> Input.of("s", f))),
            together,
            Unit.KWH_PER_YEAR),
        List.of());
  }

  /** What is summed, and what several measures together take less for air. */
  private static List<Input> inputs(Stream<Input> parts, double together, Unit unit) {
    return Stream.concat(
            parts,
            isNothing(together)
                ? Stream.empty()
                : Stream.of(calculated("a", TOGETHER, together, unit)))
        .toList();
  }

  private static String formula(String sum, double together) {
    return isNothing(together) ? sum : sum + " + a";
  }

  /** What sums in another order leave. */
  private static boolean isNothing(double together) {
    return Math.abs(together) < 1e-6;
  }

  private static double sum(List<Figure> parts, ToDoubleFunction<Range> end) {
    return parts.stream().map(Figure::value).mapToDouble(end).sum();
  }
}
