package org.drysill.assess.surfaces.factor;

/** Where the temperature factor of a place comes from; the first that is to be had counts. */
public enum FactorSource {
  /** Temperatures read on the surface, in the room and outdoors. */
  READINGS("surface readings"),
  /** A factor stated in the survey. */
  STATED("the factor stated in the survey"),
  /** A thermal transmittance stated in the survey. */
  U_VALUE("the stated U-value"),
  /** The kind of glazing. */
  GLAZING("the kind of glazing"),
  /** The layers of a built-up element. */
  LAYERS("the layers"),
  /** A table of typical details by kind and age: an assumption. */
  TYPICAL_DETAIL("a typical detail of its kind and age");

  private final String words;

  FactorSource(String words) {
    this.words = words;
  }

  /** In words that can follow "from". */
  public String words() {
    return words;
  }
}
