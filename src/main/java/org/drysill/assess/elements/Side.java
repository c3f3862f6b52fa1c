package org.drysill.assess.elements;

import java.util.function.ToDoubleFunction;
import org.drysill.physics.Range;

/** Which end of the ranges a case is reckoned with. */
enum Side {
  /** The one that keeps the wall drier. */
  FAVOURABLE(Range::low),
  /** The likely values. */
  LIKELY(Range::likely),
  /** The one that wets it more. */
  UNFAVOURABLE(Range::high);

  private final ToDoubleFunction<Range> moisture;

  Side(ToDoubleFunction<Range> moisture) {
    this.moisture = moisture;
  }

  /** That end of a range of moisture in the air. */
  double of(Range moistureOfAir) {
    return moisture.applyAsDouble(moistureOfAir);
  }
}
