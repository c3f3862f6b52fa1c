package org.drysill.report.pdf;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The colour space of IEC 61966-2-1 (sRGB) as an ICC profile of version 4.2 (ICC.1:2004-10): a
 * matrix and one curve for its three channels. It is written here, byte by byte, so that a report
 * does not depend on the profile that comes with a Java runtime.
 */
final class SrgbProfile {
  private static final int HEADER = 128;
  private static final int PARAMETRIC_WITH_LINEAR_START = 3;

  /** The white of the profile connection space, D50, as ICC.1 prints it. */
  private static final double[] D50 = {0.9642, 1.0, 0.8249};

  /** Chromaticities x, y of the primaries red, green, blue: IEC 61966-2-1, Table 1. */
  private static final double[][] PRIMARIES = {{0.64, 0.33}, {0.30, 0.60}, {0.15, 0.06}};

  /** Chromaticity x, y of the white D65: IEC 61966-2-1, Table 1. */
  private static final double[] D65 = {0.3127, 0.3290};

  /** The Bradford cone response matrix, as ICC.1:2004-10, Annex E gives it. */
  private static final double[][] BRADFORD = {
    {0.8951, 0.2664, -0.1614}, {-0.7502, 1.7135, 0.0367}, {0.0389, -0.0685, 1.0296}
  };

  /** Exponent, a, b, c, d of the decoding function of IEC 61966-2-1, clause 5.2. */
  private static final double[] CURVE = {2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045};

  private SrgbProfile() {}

  static byte[] bytes() {
    double[][] adaptation = adaptation();
    double[][] primaries = Matrix3.times(adaptation, rgbToXyz());
    Map<String, byte[]> tags = new LinkedHashMap<>();
    tags.put("desc", text("sRGB IEC61966-2.1"));
    tags.put("cprt", text("No copyright is claimed; use freely"));
    tags.put("wtpt", fixed("XYZ ", D50));
    tags.put("chad", fixed("sf32", Matrix3.flat(adaptation)));
    tags.put("rXYZ", fixed("XYZ ", Matrix3.column(primaries, 0)));
    tags.put("gXYZ", fixed("XYZ ", Matrix3.column(primaries, 1)));
    tags.put("bXYZ", fixed("XYZ ", Matrix3.column(primaries, 2)));
    for (String channel : new String[] {"rTRC", "gTRC", "bTRC"}) {
      tags.put(channel, curve());
    }
    return profile(tags);
  }

  private static byte[] profile(Map<String, byte[]> tags) {
    ByteBuffer table = ByteBuffer.allocate(4 + 12 * tags.size()).putInt(tags.size());
    ByteArrayOutputStream data = new ByteArrayOutputStream();
    int start = HEADER + table.capacity();
    for (Map.Entry<String, byte[]> tag : tags.entrySet()) {
      byte[] content = tag.getValue();
      table.put(ascii(tag.getKey())).putInt(start + data.size()).putInt(content.length);
      data.writeBytes(content);
      data.writeBytes(new byte[(4 - content.length % 4) % 4]);
    }
    int size = start + data.size();
    return ByteBuffer.allocate(size)
        .put(header(size))
        .put(table.array())
        .put(data.toByteArray())
        .array();
  }

  private static byte[] header(int size) {
    ByteBuffer header = ByteBuffer.allocate(HEADER);
    header.putInt(size).putInt(0).putInt(0x04200000);
    header.put(ascii("mntr")).put(ascii("RGB ")).put(ascii("XYZ "));
    for (int part : new int[] {2026, 1, 1, 0, 0, 0}) {
      header.putShort((short) part);
    }
    header.put(ascii("acsp"));
    header.position(68);
    for (double part : D50) {
      header.putInt(s15Fixed16(part));
    }
    return header.array();
  }

  private static byte[] text(String text) {
    byte[] letters = text.getBytes(StandardCharsets.UTF_16BE);
    ByteBuffer out = ByteBuffer.allocate(28 + letters.length);
    out.put(ascii("mluc")).putInt(0).putInt(1).putInt(12).put(ascii("enUS"));
    return out.putInt(letters.length).putInt(28).put(letters).array();
  }

  private static byte[] fixed(String type, double[] numbers) {
    ByteBuffer out = ByteBuffer.allocate(8 + 4 * numbers.length).put(ascii(type)).putInt(0);
    for (double number : numbers) {
      out.putInt(s15Fixed16(number));
    }
    return out.array();
  }

  private static byte[] curve() {
    ByteBuffer out = ByteBuffer.allocate(12 + 4 * CURVE.length).put(ascii("para")).putInt(0);
    out.putShort((short) PARAMETRIC_WITH_LINEAR_START).putShort((short) 0);
    for (double number : CURVE) {
      out.putInt(s15Fixed16(number));
    }
    return out.array();
  }

  /** Scales the primaries so that their sum is the white. */
  private static double[][] rgbToXyz() {
    double[][] columns = new double[3][3];
    for (int channel = 0; channel < 3; channel++) {
      double[] xyz = xyz(PRIMARIES[channel]);
      for (int row = 0; row < 3; row++) {
        columns[row][channel] = xyz[row];
      }
    }
    double[] scale = Matrix3.times(Matrix3.inverse(columns), xyz(D65));
    return Matrix3.times(columns, Matrix3.diagonal(scale));
  }

  /** From D65 to D50 by the cone responses of both. */
  private static double[][] adaptation() {
    double[] from = Matrix3.times(BRADFORD, xyz(D65));
    double[] to = Matrix3.times(BRADFORD, D50);
    double[] ratio = {to[0] / from[0], to[1] / from[1], to[2] / from[2]};
    return Matrix3.times(
        Matrix3.inverse(BRADFORD), Matrix3.times(Matrix3.diagonal(ratio), BRADFORD));
  }

  private static double[] xyz(double[] chromaticity) {
    double x = chromaticity[0];
    double y = chromaticity[1];
    return new double[] {x / y, 1, (1 - x - y) / y};
  }

  private static int s15Fixed16(double number) {
    return (int) Math.round(number * 65536);
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }
}
