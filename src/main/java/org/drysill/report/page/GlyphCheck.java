package org.drysill.report.page;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.drysill.report.font.Fonts;
import org.drysill.report.font.Printable;

/**
 * Holds text against the fonts and keeps note of what they lack, so that no character is lost
 * without a word: one that no font has is printed as its code point in brackets, such as [U+1F600].
 */
public final class GlyphCheck {
  private final Printable printable;
  private final Set<Integer> missing = new TreeSet<>();

  /** A check against the fonts of the report, with nothing noted yet. */
  public GlyphCheck() {
    this(new Fonts());
  }

  /** A check that shares fonts with others of its thread. */
  public GlyphCheck(Fonts fonts) {
    this.printable = new Printable(fonts);
  }

  /** The text as it can be printed; what had to be replaced is noted. */
  public String printable(String text) {
    return printable.of(text, missing::add);
  }

  /**
   * The characters replaced so far, in the order of their code points, each with the keys {@code
   * code} (such as U+1F600) and {@code name} (its Unicode name).
   */
  public List<Map<String, String>> missing() {
    return missing.stream().map(GlyphCheck::entry).toList();
  }

  private static Map<String, String> entry(int codePoint) {
    String name = Character.getName(codePoint);
    return Map.of("code", Printable.name(codePoint), "name", name == null ? "not assigned" : name);
  }
}
