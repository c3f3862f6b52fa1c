package org.drysill.options.site;

/**
 * Whether a condition holds at a place, and the reason in a sentence either way.
 *
 * @param holds whether it does
 * @param because the reason; what was found where it holds, why it does not apply where it does not
 */
record Held(boolean holds, String because) {
  static Held of(boolean holds, String yes, String no) {
    return new Held(holds, holds ? yes : no);
  }
}
