package org.drysill.report.pdf.economy;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * A TrueType font without the instructions that fit its outlines to the dots of a coarse screen:
 * half of what a subset weighs, and nothing to paper or to a screen of our days.
 */
final class Unhinted {
  private static final Set<String> ONLY_FOR_INSTRUCTIONS = Set.of("cvt ", "fpgm", "prep", "gasp");
  private static final int HEAD = 12;
  private static final int ENTRY = 16;
  private static final int LOCATION_FORMAT = 50;
  private static final int ADJUSTMENT = 8;
  private static final int CHECKSUM_OF_ALL = 0xB1B0AFBA;

  private final Map<String, byte[]> tables = new TreeMap<>();

  private Unhinted() {}

  /** The font without instructions. */
  static byte[] of(byte[] font) {
    Unhinted unhinted = new Unhinted();
    ByteBuffer in = ByteBuffer.wrap(font);
    int count = in.getShort(4);
    for (int i = 0; i < count; i++) {
      int entry = HEAD + i * ENTRY;
      String tag = new String(font, entry, 4, StandardCharsets.ISO_8859_1);
      byte[] table = new byte[in.getInt(entry + 12)];
      in.get(in.getInt(entry + 8), table);
      if (!ONLY_FOR_INSTRUCTIONS.contains(tag)) {
        unhinted.tables.put(tag, table);
      }
    }
    unhinted.outlines();
    return unhinted.written(in.getInt(0));
  }

  private void outlines() {
    ByteBuffer head = ByteBuffer.wrap(tables.get("head"));
    boolean isLong = head.getShort(LOCATION_FORMAT) != 0;
    ByteBuffer locations = ByteBuffer.wrap(tables.get("loca"));
    byte[] glyphs = tables.get("glyf");
    int count = locations.capacity() / (isLong ? 4 : 2);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteBuffer moved = ByteBuffer.allocate(locations.capacity());
    for (int i = 0; i < count; i++) {
      if (isLong) {
        moved.putInt(out.size());
      } else {
        moved.putShort((short) (out.size() / 2));
      }
      if (i + 1 < count) {
        int from = location(locations, i, isLong);
        int to = location(locations, i + 1, isLong);
        out.writeBytes(Outline.of(ByteBuffer.wrap(glyphs, from, to - from).slice()));
      }
    }
    tables.put("glyf", out.toByteArray());
    tables.put("loca", moved.array());
  }

  private static int location(ByteBuffer locations, int glyph, boolean isLong) {
    return isLong ? locations.getInt(4 * glyph) : 2 * (locations.getShort(2 * glyph) & 0xffff);
  }

  private byte[] written(int version) {
    ByteBuffer.wrap(tables.get("head")).putInt(ADJUSTMENT, 0);
    Map<String, Integer> places = new LinkedHashMap<>();
    int size = HEAD + ENTRY * tables.size();
    for (Map.Entry<String, byte[]> table : tables.entrySet()) {
      places.put(table.getKey(), size);
      size += padded(table.getValue().length);
    }
    ByteBuffer out = ByteBuffer.allocate(size);
    int power = Integer.highestOneBit(tables.size());
    out.putInt(version).putShort((short) tables.size()).putShort((short) (power * ENTRY));
    out.putShort((short) Integer.numberOfTrailingZeros(power));
    out.putShort((short) ((tables.size() - power) * ENTRY));
    tables.forEach(
        (tag, table) -> {
          out.put(tag.getBytes(StandardCharsets.ISO_8859_1));
          out.putInt(sum(table)).putInt(places.get(tag)).putInt(table.length);
        });
    tables.forEach((tag, table) -> out.put(places.get(tag), table));
    out.putInt(places.get("head") + ADJUSTMENT, CHECKSUM_OF_ALL - sum(out.array()));
    return out.array();
  }

  private static int padded(int length) {
    return (length + 3) & ~3;
  }

  /** The sum of a table as words of 32 bits, zeros after its end. */
  private static int sum(byte[] table) {
    int sum = 0;
    for (int i = 0; i < table.length; i++) {
      sum += (table[i] & 0xff) << (24 - 8 * (i % 4));
    }
    return sum;
  }
}
