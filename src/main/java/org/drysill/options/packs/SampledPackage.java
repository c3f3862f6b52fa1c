package org.drysill.options.packs;

import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.drysill.options.Chance;

/** A package in each sample. */
final class SampledPackage {
  /** Outdoor air of the home [m³/s]. */
  final double[] air;

  /** Air that is lacking, outdoors and extract [m³/s]. */
  final double[] lacks;

  /** The multiple of the vapour at which a wall or corner is at risk of mould; 1 and less is. */
  final double[] walls;

  /** The multiple of the vapour at which a pane is wet; 1 and less is. */
  final double[] panes;

  /** Yearly cost over the horizon [currency/a]. */
  final double[] annual;

  SampledPackage(int samples) {
    air = new double[samples];
    lacks = new double[samples];
    walls = new double[samples];
    panes = new double[samples];
    annual = new double[samples];
  }

  /** True where a sample has enough air. */
  boolean hasAir(int sample) {
    return lacks[sample] <= PackOrder.NO_AIR;
  }

  /** True where no month of a wall or corner is at risk. */
  boolean isSound(int sample) {
    return walls[sample] > 1;
  }

  /** True where it has both. */
  boolean isEnough(int sample) {
    return hasAir(sample) && isSound(sample);
  }

  /** True where it has both and no month of wet glass. */
  boolean isDry(int sample) {
    return isEnough(sample) && panes[sample] > 1;
  }

  /** The chance of something. */
  Chance chance(IntPredicate holds) {
    return Chance.of(IntStream.range(0, annual.length).filter(holds).count(), annual.length);
  }

  /** The chance of enough air and sound walls. */
  Chance enough() {
    return chance(this::isEnough);
  }
}
