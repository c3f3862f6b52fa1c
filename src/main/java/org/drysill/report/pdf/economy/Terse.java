package org.drysill.report.pdf.economy;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Contents, one operator a line, without what they say again: colours, fonts and lines are set
 * where something is painted with them and where they differ, text that goes on where the text
 * before it ended is not placed anew, marks around nothing go. Text is in the codes of {@link
 * GlyphCodes}, marks are counted anew.
 */
final class Terse {
  private static final String END_OF_MARKED = "EMC";
  private static final String END_OF_STRING = ") Tj\n";
  private static final Pattern NUMBERED = Pattern.compile("/(\\w+) ?<</MCID (\\d+)>> ?BDC");

  private final Function<String, Optional<GlyphCodes>> fonts;
  private final StringBuilder out = new StringBuilder();
  private final Map<Integer, Integer> numbers = new LinkedHashMap<>();
  private final PaintState state = new PaintState(this::write);
  private final TextPlace place = new TextPlace();

  /** A path that is not painted yet. */
  private final StringBuilder path = new StringBuilder();

  /** A mark around which nothing stands yet; empty where there is none. */
  private String mark = "";

  /** Where the text that was shown last ends, while nothing else follows; below zero otherwise. */
  private int endOfText = -1;

  /**
   * A page or a chart.
   *
   * @param fonts the codes of a font by its name there
   */
  Terse(Function<String, Optional<GlyphCodes>> fonts) {
    this.fonts = fonts;
  }

  String rewritten(String content) {
    content.lines().forEach(this::line);
    writePath();
    return out.toString();
  }

  /** The new numbers of marked contents by the old ones; those of nothing have none. */
  Map<Integer, Integer> numbers() {
    return numbers;
  }

  private void line(String line) {
    String operator = line.substring(line.lastIndexOf(' ') + 1);
    if (state.takes(operator, line)) {
      return;
    }
    switch (operator) {
      case "BT", "Tm" -> {
        place.begin();
        write(line);
      }
      case "Td" -> place.move(line);
      case "Tj" -> text(line);
      case "TJ" -> spaced(line);
      case "m", "l", "c", "v", "y" -> path.append(Decimals3.shortened(line)).append('\n');
      case "re", "h", "W", "W*" -> path.append(line).append('\n');
      case "f", "F", "f*" -> painted(line, PaintState.FILL);
      case "S", "s" -> painted(line, PaintState.STROKE);
      case "B", "B*", "b", "b*", "Do" -> painted(line, PaintState.BOTH);
      case "BDC" -> marked(line);
      case END_OF_MARKED -> end();
      default -> {
        writePath();
        write(line);
      }
    }
  }

  /** Nothing may be set between the first point of a path and its painting. */
  private void painted(String line, List<String> with) {
    state.set(with);
    writePath();
    write(line);
  }

  private void text(String line) {
    Optional<GlyphCodes> font = font();
    String words = font.map(codes -> codes.recoded(line)).orElse(line);
    Optional<String> move = place.next();
    boolean goesOn = move.isEmpty() && endOfText == out.length() && mark.isEmpty();
    state.set(PaintState.TEXT);
    if (goesOn && endOfText == out.length()) {
      out.setLength(endOfText - END_OF_STRING.length());
      out.append(words, 1, words.length()).append('\n');
    } else {
      move.ifPresent(this::write);
      write(words);
    }
    endOfText = words.endsWith(") Tj") ? out.length() : -1;
    place.shown(font.map(codes -> codes.width(line) * size() / 1000).orElse(Double.NaN));
  }

  /** Text with distances of its own: where it ends is not reckoned. */
  private void spaced(String line) {
    state.set(PaintState.TEXT);
    place.next().ifPresent(this::write);
    write(font().map(codes -> codes.recoded(line)).orElse(line));
    place.shown(Double.NaN);
  }

  private Optional<GlyphCodes> font() {
    String[] words = state.font();
    return words.length < 2 ? Optional.empty() : fonts.apply(words[0].substring(1));
  }

  private double size() {
    return Double.parseDouble(state.font()[1]);
  }

  private void marked(String line) {
    flush();
    mark = line;
  }

  private void end() {
    if (mark.isEmpty()) {
      write(END_OF_MARKED);
    }
    mark = "";
  }

  private void flush() {
    if (!mark.isEmpty()) {
      Matcher numbered = NUMBERED.matcher(mark);
      if (numbered.matches()) {
        int number = numbers.size();
        numbers.put(Integer.parseInt(numbered.group(2)), number);
        out.append('/').append(numbered.group(1)).append("<</MCID ").append(number).append(">>BDC");
      } else {
        out.append(mark);
      }
      out.append('\n');
      mark = "";
    }
  }

  private void write(String line) {
    flush();
    out.append(line).append('\n');
  }

  private void writePath() {
    if (path.length() > 0) {
      flush();
      out.append(path);
      path.setLength(0);
    }
  }
}
