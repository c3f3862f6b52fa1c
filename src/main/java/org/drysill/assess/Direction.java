package org.drysill.assess;

/** Which way what is there is held against what is asked. */
public enum Direction {
  /** It must reach what is asked; equality does. */
  AT_LEAST,
  /** It may reach the limit and must not pass it. */
  AT_MOST,
  /** It must stay below the limit; equality fails. */
  BELOW,
  /** Two ways to one quantity, which should agree within their ranges. */
  AGREES,
  /** No value is held against another, such as for a room that was not read. */
  NONE;

  /** True where a higher value is the worse one. */
  public boolean limitsFromAbove() {
    return this == AT_MOST || this == BELOW;
  }
}
