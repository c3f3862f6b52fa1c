package org.drysill.assess.ventilation.rooms;

import org.drysill.physics.Range;

/** Which end of every range is reckoned with. */
enum Case {
  /** Fans, leaks and the home's outdoor air at their least. */
  LOW,
  /** All as is likely. */
  LIKELY,
  /** Fans, leaks and the home's outdoor air at their most. */
  HIGH;

  double of(Range range) {
    return switch (this) {
      case LOW -> range.low();
      case LIKELY -> range.likely();
      case HIGH -> range.high();
    };
  }
}
