package org.drysill.assess.humidity;

import org.drysill.reference.Citation;
import org.drysill.reference.How;

/** Where the formulas of this package are printed. */
final class Sources {
  static final Citation SATURATION = Citation.of("ISO 13788", "2012", "Annex E", How.MEMORY);
  static final Citation EXCESS = Citation.of("ISO 13788", "2012", "Annex A", How.MEMORY);
  static final Citation GAS_LAW = Citation.of("ISO 13788", "2012", "v = p / (461.5 T)", How.MEMORY);
  static final Citation ERRORS =
      Citation.of(
          "Guide to the expression of uncertainty in measurement (JCGM 100)",
          "2008",
          "5.1.2, independent inputs",
          How.MEMORY);
  static final Citation TRACER =
      Citation.of("ASTM E741", "2011", "steady concentration", How.MEMORY);

  private Sources() {}
}
