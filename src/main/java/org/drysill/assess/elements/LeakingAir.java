package org.drysill.assess.elements;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Range;
import org.drysill.physics.air.Iso13788Vapour;
import org.drysill.physics.air.MoistAir;
import org.drysill.physics.layers.MonthClimate;
import org.drysill.physics.layers.MonthWater;
import org.drysill.reference.Citation;
import org.drysill.reference.How;
import org.drysill.reference.elements.ElementDefaults;

/**
 * What room air that leaks into a wall could bring: all vapour beyond saturation at the coldest
 * place that matters is taken to stay there, an upper bound for the air that passes.
 *
 * <pre>M = q · Σ max(0, vi − vs(Tc)) · t</pre>
 */
final class LeakingAir {
  private static final double SECONDS_PER_HOUR = 3600;
  private static final Citation BOUND =
      new Citation(
          "Balance of the vapour of leaking air",
          Optional.empty(),
          Optional.of("an upper bound: all vapour beyond saturation stays in the wall"),
          How.DERIVED);

  private final WallSubject wall;
  private final Run run;
  private final ElementDefaults defaults;

  LeakingAir(WallSubject wall, Run run, ElementDefaults defaults) {
    this.wall = wall;
    this.run = run;
    this.defaults = defaults;
  }

  /** The water of a year; empty where no place within the wall stands out. */
  Optional<Figure> find() {
    return plane().map(this::figure);
  }

  /** The wettest plane, else the cold face of the insulation. */
  private Optional<Integer> plane() {
    List<MonthWater> months = run.year().months();
    Optional<Integer> wettest =
        IntStream.range(0, run.element().planes())
            .boxed()
            .filter(k -> highest(months, k) > 0)
            .max(Comparator.comparingDouble(k -> highest(months, k)));
    return wettest.or(this::coldFace);
  }

  private static double highest(List<MonthWater> months, int plane) {
    return months.stream().mapToDouble(m -> m.storedKgM2(plane)).max().orElse(0);
  }

  private Optional<Integer> coldFace() {
    Places places = Places.of(run.slices());
    return IntStream.range(1, run.element().planes())
        .filter(k -> places.share(k) == 0 && isInsulation(places.layer(k) - 1))
        .boxed()
        .max(Comparator.naturalOrder());
  }

  private boolean isInsulation(int layer) {
    return wall.layers().get(layer).kind() == LayerKind.INSULATION;
  }

  private Figure figure(int plane) {
    Range flow = defaults.leakingAir().range().times(1 / SECONDS_PER_HOUR);
    double perFlow =
        wall.climate().months(Side.LIKELY).stream().mapToDouble(m -> beyond(m, plane)).sum();
    return new Figure(
        "element." + wall.id() + ".leaking_air",
        "water that leaking room air could leave within the wall in a year",
        flow.times(perFlow),
        Unit.WATER_CONTENT,
        Basis.ASSUMED,
        () ->
            new Working(
                "M = q · Σ max(0, vi - vs(Tc)) · t",
                List.of(
                    Input.of("q", "leaking air", flow, Unit.AIRFLOW_PER_AREA, Basis.ASSUMED),
                    wall.excess()),
                List.of(BOUND, defaults.leakingAir().source()),
                Optional.of(
                    "Vapour content of the room air, vi, less that of saturated air where the"
                        + " water settles, vs, month by month.")));
  }

  /** Vapour beyond saturation times the length of the month [kg·s/m³]. */
  private double beyond(MonthClimate month, int plane) {
    double there = run.element().celsius(plane, month.indoorCelsius(), month.outdoorCelsius());
    double room = MoistAir.vapourContentKgM3(month.indoorCelsius(), month.indoorPa());
    double saturated =
        MoistAir.vapourContentKgM3(there, Iso13788Vapour.saturationPressurePa(there));
    return Math.max(0, room - saturated) * month.days() * 24 * SECONDS_PER_HOUR;
  }
}
