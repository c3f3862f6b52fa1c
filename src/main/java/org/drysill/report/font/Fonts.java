package org.drysill.report.font;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** The font files, each read when it is first asked for. Not for use by two threads at once. */
public final class Fonts {
  private final Map<Face, TrueTypeFont> files = new EnumMap<>(Face.class);

  /** Fonts of which none is read yet. */
  public Fonts() {}

  /** A piece of text that one face can set. */
  public record Run(Face face, String text) {}

  /** The parsed file of a face. */
  public TrueTypeFont file(Face face) {
    return files.computeIfAbsent(face, Fonts::read);
  }

  /** True where the face has a glyph for the code point. */
  public boolean has(Face face, int codePoint) {
    return glyph(face, codePoint) != 0;
  }

  /** True where the regular text face or its stand-in has a glyph for the code point. */
  public boolean canSet(int codePoint) {
    return has(Face.REGULAR, codePoint) || has(Face.REGULAR.fallback(), codePoint);
  }

  /**
   * The width of a line of text.
   *
   * @param size the font size, in the unit of the result
   */
  public double width(Face face, String text, double size) {
    double width = 0;
    for (Run run : runs(face, text)) {
      TrueTypeFont file = file(run.face());
      double units =
          run.text().codePoints().mapToDouble(c -> advance(file, glyph(run.face(), c))).sum();
      width += units * size / unitsPerEm(file);
    }
    return width;
  }

  /** Cuts text into pieces that the face, or its stand-in where it lacks a character, can set. */
  public List<Run> runs(Face face, String text) {
    List<Run> runs = new ArrayList<>();
    StringBuilder piece = new StringBuilder();
    Face current = face;
    for (int codePoint : text.codePoints().toArray()) {
      Face needed = has(face, codePoint) ? face : face.fallback();
      if (needed != current && !piece.isEmpty()) {
        runs.add(new Run(current, piece.toString()));
        piece.setLength(0);
      }
      current = needed;
      piece.appendCodePoint(codePoint);
    }
    if (!piece.isEmpty()) {
      runs.add(new Run(current, piece.toString()));
    }
    return runs;
  }

  private int glyph(Face face, int codePoint) {
    try {
      return file(face).getUnicodeCmapLookup().getGlyphId(codePoint);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static double advance(TrueTypeFont file, int glyph) {
    try {
      return file.getAdvanceWidth(glyph);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static double unitsPerEm(TrueTypeFont file) {
    try {
      return file.getUnitsPerEm();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static TrueTypeFont read(Face face) {
    try (InputStream in = Fonts.class.getClassLoader().getResourceAsStream(face.resource())) {
      if (in == null) {
        throw new FileNotFoundException(face.resource());
      }
      TrueTypeFont file = new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
      // Glyph substitution would compile its patterns anew for every run of text, and the report
      // needs none: no ligatures, tabular digits by default.
      file.setEnableGsub(false);
      return file;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
