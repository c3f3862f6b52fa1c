package org.drysill.assess.elements;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.drysill.physics.Range;
import org.drysill.physics.layers.Iso13788Element;
import org.drysill.physics.layers.MonthClimate;
import org.drysill.physics.layers.Slice;

/**
 * The years of a wall: at the likely values, and the best and worst within all ranges.
 *
 * <p>No layer is worse than another in itself: what lies on the room side of a wet plane wets it
 * the more the opener it is to vapour and the better it insulates, what lies beyond it the other
 * way about. So each plane between layers is taken in turn as the one that may be wet, all layers
 * before it at one end of their ranges and all beyond at the other, and the best and worst of these
 * stand.
 *
 * @param likely at the likely values
 * @param favourable the likely one and all that keep the wall drier
 * @param unfavourable the likely one and all that wet it more
 */
record Runs(Run likely, List<Run> favourable, List<Run> unfavourable) {
  private static final Comparator<Run> WETTEST_LAST =
      Comparator.comparing((Run r) -> r.year().verdict())
          .thenComparingDouble(r -> r.year().leftKgM2())
          .thenComparingDouble(r -> r.year().highestKgM2());

  static Runs of(List<WallLayer> layers, Films films, WallClimate climate) {
    Run likely =
        Run.of(layers.stream().map(Runs::likely).toList(), films, climate.months(Side.LIKELY));
    return new Runs(
        likely,
        all(layers, films, climate, Side.FAVOURABLE, likely),
        all(layers, films, climate, Side.UNFAVOURABLE, likely));
  }

  /** The driest of all cases. */
  Run best() {
    return favourable.stream().min(WETTEST_LAST).orElseThrow();
  }

  /** The wettest of all cases. */
  Run worst() {
    return unfavourable.stream().max(WETTEST_LAST).orElseThrow();
  }

  private static List<Run> all(
      List<WallLayer> layers, Films films, WallClimate climate, Side side, Run likely) {
    List<MonthClimate> months = climate.months(side);
    List<Run> runs = new ArrayList<>(List.of(likely));
    for (int plane = 0; plane <= layers.size(); plane++) {
      runs.add(Run.of(around(layers, plane, side), films, months));
    }
    return runs;
  }

  /** The layers with those before a plane at one end of their ranges, those beyond at the other. */
  private static List<Slice> around(List<WallLayer> layers, int plane, Side side) {
    List<Slice> slices = new ArrayList<>();
    for (int i = 0; i < layers.size(); i++) {
      boolean open = (i < plane) == (side == Side.UNFAVOURABLE);
      slices.add(open ? open(layers.get(i)) : tight(layers.get(i)));
    }
    return slices;
  }

  private static Slice likely(WallLayer layer) {
    return new Slice(layer.resistance().likely(), layer.airLayer().likely());
  }

  private static Slice open(WallLayer layer) {
    return new Slice(layer.resistance().value().high(), layer.airLayer().value().low());
  }

  private static Slice tight(WallLayer layer) {
    return new Slice(layer.resistance().value().low(), layer.airLayer().value().high());
  }

  /** A value of the year with its bounds over all cases. */
  Range range(ToDoubleFunction<Iso13788Element.Year> value) {
    return new Range(
        favourable.stream().map(Run::year).mapToDouble(value).min().orElseThrow(),
        value.applyAsDouble(likely.year()),
        unfavourable.stream().map(Run::year).mapToDouble(value).max().orElseThrow());
  }
}
