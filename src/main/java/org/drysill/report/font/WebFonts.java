package org.drysill.report.font;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.fontbox.ttf.TTFSubsetter;

/**
 * The style rules that carry, inside a web page, the fonts with just the characters of its text.
 */
public final class WebFonts {
  /** The tables that a browser asks for. */
  private static final List<String> TABLES =
      List.of("cmap", "glyf", "head", "hhea", "hmtx", "loca", "maxp", "name", "OS/2", "post");

  private final Fonts fonts;

  /** Rules with these fonts. */
  public WebFonts(Fonts fonts) {
    this.fonts = fonts;
  }

  /** One rule for each face that can set some of the text and that the page may ask for. */
  public String rules(String text) {
    Set<Integer> characters =
        text.codePoints()
            .filter(c -> c >= ' ')
            .boxed()
            .collect(Collectors.toCollection(TreeSet::new));
    StringBuilder rules = new StringBuilder();
    for (Face face : Face.values()) {
      Set<Integer> own =
          characters.stream()
              .filter(c -> face.fallback() == face ? !hasText(c) && fonts.has(face, c) : hasText(c))
              .collect(Collectors.toCollection(TreeSet::new));
      if (!own.isEmpty()) {
        rules.append(rule(face, own));
      }
    }
    return rules.toString();
  }

  private boolean hasText(int codePoint) {
    return fonts.has(Face.REGULAR, codePoint);
  }

  private String rule(Face face, Set<Integer> characters) {
    return "@font-face { font-family: "
        + face.family()
        + "; font-weight: "
        + face.weight()
        + "; font-style: "
        + (face.italic() ? "italic" : "normal")
        + "; src: url(data:font/ttf;base64,"
        + Base64.getEncoder().encodeToString(subset(face, characters))
        + "); }\n";
  }

  private byte[] subset(Face face, Set<Integer> characters) {
    try {
      TTFSubsetter subsetter = new TTFSubsetter(fonts.file(face), TABLES);
      characters.forEach(subsetter::add);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      subsetter.writeToStream(out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
