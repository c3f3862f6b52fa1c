package org.drysill.report.table;

import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Unit;

/** Which way a comparison goes, told by its own result. */
final class Limits {
  private Limits() {}

  /** True where the value must stay below the limit, such as a humidity. */
  static boolean mustStayBelow(Finding finding) {
    if (finding.provided().isEmpty() || finding.required().isEmpty()) {
      return false;
    }
    double value = finding.provided().get().likely();
    double limit = finding.required().get().likely();
    return switch (finding.verdict()) {
      case SHORT -> value >= limit;
      case MEETS -> value < limit;
      case UNKNOWN -> kindStaysBelow(finding.provided().get());
    };
  }

  private static boolean kindStaysBelow(Figure figure) {
    return figure.unit() == Unit.RELATIVE_HUMIDITY
        || figure.unit() == Unit.SPECIFIC_FAN_POWER
        || figure.unit() == Unit.PPM;
  }
}
