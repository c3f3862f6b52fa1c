package org.drysill.assess.ventilation.airing;

import java.util.Optional;
import org.drysill.physics.Range;
import org.drysill.physics.flow.WindowAiring;
import org.drysill.survey.Opening;
import org.drysill.yaml.Quantity;

/** The flow through one window that opens, the room having openings on one side only. */
public final class WindowFlow {
  private static final double WIDEST = 180;

  private WindowFlow() {}

  /** True where kind, size and angle say how far it opens. */
  public static boolean isKnown(Opening opening) {
    return isSized(opening.width()) && isSized(opening.height()) && share(opening).isPresent();
  }

  private static boolean isSized(Optional<Quantity> side) {
    return side.filter(q -> q.value() > 0).isPresent();
  }

  /** True for what opens at all. */
  public static boolean opens(Opening opening) {
    return !share(opening).equals(Optional.of(0.0));
  }

  /** Flow by EN 16798-7 [m³/s]; 0 where the size or the angle is not known. */
  public static double en16798M3S(Opening opening, double differenceK, double windMs) {
    return through(opening, WindowAiring::en16798M3S, differenceK, windMs);
  }

  /** Flow by EN 16798-7, its bounds those of it and of EN 15242 [m³/s]. */
  static Range byBoth(Opening opening, double differenceK, double windMs) {
    double likely = en16798M3S(opening, differenceK, windMs);
    double other = through(opening, WindowAiring::en15242M3S, differenceK, windMs);
    return new Range(Math.min(likely, other), likely, Math.max(likely, other));
  }

  private interface Formula {
    double m3PerSecond(double areaM2, double heightM, double differenceK, double windMs);
  }

  private static double through(Opening opening, Formula formula, double difference, double wind) {
    double width = opening.width().map(Quantity::value).orElse(0.0);
    double height = opening.height().map(Quantity::value).orElse(0.0);
    return share(opening).orElse(0.0)
        * formula.m3PerSecond(width * height, height, difference, wind);
  }

  /** Ck is printed for bottom-hung windows; side-hung ones let through as much or more. */
  private static Optional<Double> share(Opening opening) {
    return switch (opening.kind()) {
      case SIDE_HUNG, TOP_HUNG, BOTTOM_HUNG, PIVOT ->
          opening
              .angle()
              .map(a -> Math.min(1, WindowAiring.bottomHungShare(Math.min(a.low(), WIDEST))));
      case SASH, DOOR -> Optional.of(1.0);
      case FIXED -> Optional.of(0.0);
    };
  }
}
