package org.drysill.assess.elements;

/** What a layer is for, as far as the method and the drawing need it. */
public enum LayerKind {
  /** Brick, block, stone, concrete. */
  MASONRY,
  /** Of low conductivity. */
  INSULATION,
  /** A sheet or a coat, without thermal resistance. */
  MEMBRANE,
  /** Air. */
  CAVITY,
  /** Boards, plasters, renders, timber. */
  OTHER
}
