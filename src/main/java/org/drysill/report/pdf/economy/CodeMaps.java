package org.drysill.report.pdf.economy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Codes of a font as character maps (ISO 32000-1, 9.7.5 and 9.10.3). */
final class CodeMaps {
  static final String NAME = "Codes";

  /** The most lines that one block of such a map may have. */
  private static final int MOST_LINES = 100;

  private final GlyphCodes font;
  private final Map<Integer, Integer> glyphs = new TreeMap<>();

  CodeMaps(GlyphCodes font) {
    this.font = font;
    font.codes().forEach((glyph, code) -> glyphs.put(code, glyph));
  }

  /** Which glyph each code is. */
  String glyphs() {
    List<String> lines = new ArrayList<>();
    glyphs.forEach((code, glyph) -> lines.add(hex(code) + " " + glyph));
    return map("1", blocks(lines, "cidchar"));
  }

  /** Which text each code is. */
  String texts() {
    List<String> lines = new ArrayList<>();
    glyphs.forEach(
        (code, glyph) -> {
          String text = font.unicode(glyph);
          if (text != null) {
            lines.add(hex(code) + " <" + utf16(text) + ">");
          }
        });
    return map("2", blocks(lines, "bfchar"));
  }

  private String map(String type, String blocks) {
    return """
        /CIDInit /ProcSet findresource begin
        12 dict begin
        begincmap
        /CIDSystemInfo <</Registry (Adobe) /Ordering (Identity) /Supplement 0>> def
        /CMapName /%s def
        /CMapType %s def
        """
            .formatted(NAME, type)
        + ranges()
        + blocks
        + """
        endcmap
        CMapName currentdict /CMap defineresource pop
        end
        end
        """;
  }

  private String ranges() {
    boolean isLong = glyphs.keySet().stream().anyMatch(code -> code > 0xff);
    return isLong
        ? "2 begincodespacerange\n<00> <EF>\n<F000> <FFFF>\nendcodespacerange\n"
        : "1 begincodespacerange\n<00> <FF>\nendcodespacerange\n";
  }

  private static String blocks(List<String> lines, String kind) {
    StringBuilder blocks = new StringBuilder();
    for (int from = 0; from < lines.size(); from += MOST_LINES) {
      List<String> block = lines.subList(from, Math.min(lines.size(), from + MOST_LINES));
      blocks.append(block.size()).append(" begin").append(kind).append('\n');
      block.forEach(line -> blocks.append(line).append('\n'));
      blocks.append("end").append(kind).append('\n');
    }
    return blocks.toString();
  }

  private static String hex(int code) {
    return (code > 0xff ? "<%04X>" : "<%02X>").formatted(code);
  }

  private static String utf16(String text) {
    return text.chars().mapToObj("%04X"::formatted).collect(Collectors.joining());
  }
}
