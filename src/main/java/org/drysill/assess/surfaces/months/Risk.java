package org.drysill.assess.surfaces.months;

/** What a surface is at risk of in a month. */
public enum Risk {
  /** Nothing. */
  NONE("none"),
  /** Moist enough for mould: a surface humidity of at least the published limit. */
  MOULD("mould risk"),
  /** Wet. */
  CONDENSATION("condensation");

  private final String word;

  Risk(String word) {
    this.word = word;
  }

  /** The word for the report. */
  public String word() {
    return word;
  }
}
