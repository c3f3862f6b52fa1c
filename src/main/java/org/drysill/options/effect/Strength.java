package org.drysill.options.effect;

import org.drysill.physics.Range;

/** How strongly a measure is taken to act: at its ends, or likely with all that is not known. */
enum Strength {
  /** The weaker end of its effect. */
  WEAKEST,
  /** Its likely effect, within its range. */
  LIKELY,
  /** The stronger end of its effect. */
  STRONGEST;

  /** An effect that is stronger the greater it is. */
  Range of(Range effect) {
    return switch (this) {
      case WEAKEST -> Range.exactly(effect.low());
      case LIKELY -> effect;
      case STRONGEST -> Range.exactly(effect.high());
    };
  }

  /** What is left of something, such as Q / Q': the effect is stronger the less is left. */
  Range left(Range ratio) {
    return switch (this) {
      case WEAKEST -> Range.exactly(ratio.high());
      case LIKELY -> ratio;
      case STRONGEST -> Range.exactly(ratio.low());
    };
  }
}
