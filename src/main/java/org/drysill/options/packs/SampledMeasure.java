package org.drysill.options.packs;

import java.util.List;
import org.drysill.assess.ventilation.provided.FanFlow;
import org.drysill.physics.Range;
import org.drysill.physics.samples.TwoPieceNormal;

/** A measure in each sample. */
final class SampledMeasure {
  /** The measure. */
  final Member member;

  /** The fans that go with it. */
  final List<Gone> gone;

  /** By what it moves more air than is likely [1]. */
  final double[] flow;

  /** By what it spares more water than is likely [1]. */
  final double[] water;

  /** What it costs a year, without the heat of the air that it adds [currency/a]. */
  final double[] annual;

  private final double[] deviate;

  /**
   * A fan that goes.
   *
   * @param fan the fan
   * @param change what goes with it, likely
   */
  record Gone(FanFlow fan, VapourChange change) {}

  SampledMeasure(
      Member member,
      List<Gone> gone,
      double[] deviate,
      double[] flow,
      double[] water,
      double[] annual) {
    this.member = member;
    this.gone = List.copyOf(gone);
    this.deviate = deviate;
    this.flow = flow;
    this.water = water;
    this.annual = annual;
  }

  /** True where it does anything to air or water, or anything goes with it. */
  boolean actsOnVapour() {
    return !gone.isEmpty() || !member.change().isNothing();
  }

  /** Whatever else hangs on its effect, in a sample. */
  double of(Range range, int sample) {
    return TwoPieceNormal.at(range, deviate[sample]);
  }
}
