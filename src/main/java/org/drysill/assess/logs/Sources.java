package org.drysill.assess.logs;

import org.drysill.reference.Citation;
import org.drysill.reference.How;

/** Where the formulas of this package are printed. */
final class Sources {
  static final Citation EXCESS = Citation.of("ISO 13788", "2012", "Annex A", How.MEMORY);

  private Sources() {}
}
