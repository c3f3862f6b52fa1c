package org.drysill.assess.elements;

/** What is changed at a wall to see what it does. */
public enum VariantKind {
  /** A vapour control layer is added on the room side of the insulation. */
  CONTROL_LAYER("with a vapour control layer on the room side of the insulation"),
  /** The tightest sheet beyond the insulation is moved to its room side. */
  SHEET_MOVED("with the tight sheet moved to the room side of the insulation"),
  /** The tightest sheet beyond the insulation is taken away. */
  SHEET_REMOVED("without the tight sheet on the cold side of the insulation"),
  /** The indoor air is moister than it was read. */
  MOISTER_AIR("if the indoor air were moister, as positive input or less airing can make it");

  private final String words;

  VariantKind(String words) {
    this.words = words;
  }

  /** In words that can follow a comma. */
  public String words() {
    return words;
  }

  /** True for what would help, false for what would harm. */
  public boolean helps() {
    return this != MOISTER_AIR;
  }
}
