package org.drysill.options.site;

import java.util.List;
import org.drysill.reference.measures.AirMove;
import org.drysill.reference.measures.Measure;
import org.drysill.survey.FanKind;

/** Which kinds of fan already do what a measure for the whole home would. */
final class FanKinds {
  private FanKinds() {}

  static List<FanKind> like(Measure measure) {
    return measure.air().map(a -> like(a.moves())).orElse(List.of());
  }

  private static List<FanKind> like(AirMove move) {
    return switch (move) {
      case EXTRACT -> List.of();
      case SUPPLY -> List.of(FanKind.POSITIVE_INPUT);
      case EXCHANGE -> List.of(FanKind.BALANCED_HEAT_RECOVERY);
      case INFILTRATION, TRANSFER -> List.of();
    };
  }
}
