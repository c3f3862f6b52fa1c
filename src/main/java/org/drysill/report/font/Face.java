package org.drysill.report.font;

/** A font file that the report is set in, and how the stylesheet calls it. */
public enum Face {
  /** Titles and large numerals. */
  LIGHT("Body", 300, false, Face.ROBOTO + "Roboto-Light.ttf"),
  /** Text. */
  REGULAR("Body", 400, false, Face.ROBOTO + "Roboto-Regular.ttf"),
  /** Emphasis in text. */
  ITALIC("Body", 400, true, Face.ROBOTO + "Roboto-Italic.ttf"),
  /** Small headings. */
  MEDIUM("Body", 500, false, Face.ROBOTO + "Roboto-Medium.ttf"),
  /** Findings. */
  BOLD("Body", 700, false, Face.ROBOTO + "Roboto-Bold.ttf"),
  /** Characters that the text fonts lack: arrows, marks, other scripts. */
  SYMBOLS("Symbols", 400, false, Face.DEJAVU + "DejaVuSans.ttf"),
  /** The same in bold. */
  SYMBOLS_BOLD("Symbols", 700, false, Face.DEJAVU + "DejaVuSans-Bold.ttf");

  private static final String ROBOTO = "com/formdev/flatlaf/fonts/roboto/";
  private static final String DEJAVU = "net/sf/jasperreports/fonts/dejavu/";

  private final String family;
  private final int weight;
  private final boolean italic;
  private final String resource;

  Face(String family, int weight, boolean italic, String resource) {
    this.family = family;
    this.weight = weight;
    this.italic = italic;
    this.resource = resource;
  }

  /** The family as the stylesheet names it. */
  public String family() {
    return family;
  }

  /** The weight as the stylesheet numbers it. */
  public int weight() {
    return weight;
  }

  /** True for a slanted face. */
  public boolean italic() {
    return italic;
  }

  /** The face that stands in where this one lacks a character; a symbol face stands for itself. */
  public Face fallback() {
    return this == BOLD || this == SYMBOLS_BOLD ? SYMBOLS_BOLD : SYMBOLS;
  }

  String resource() {
    return resource;
  }
}
