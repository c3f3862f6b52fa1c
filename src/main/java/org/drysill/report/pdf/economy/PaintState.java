package org.drysill.report.pdf.economy;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** Colours, lines and font: what is asked for, and what is set. */
final class PaintState {
  static final List<String> FILL = List.of("fill");
  static final List<String> STROKE = List.of("stroke", "w", "J", "j", "M", "d");
  static final List<String> BOTH = List.of("fill", "stroke", "w", "J", "j", "M", "d");
  static final List<String> TEXT = List.of("fill", "Tf");

  private static final Map<String, String> KINDS =
      Map.of(
          "rg", "fill", "g", "fill", "RG", "stroke", "G", "stroke", "Tf", "Tf", "w", "w", "J", "J",
          "j", "j", "M", "M", "d", "d");

  private final Consumer<String> out;
  private final Deque<Map<String, String>> saved = new ArrayDeque<>();
  private Map<String, String> asked = new HashMap<>();
  private Map<String, String> set = new HashMap<>();

  PaintState(Consumer<String> out) {
    this.out = out;
  }

  /** Takes a line that asks for something, or keeps and restores; false for any other. */
  boolean takes(String operator, String line) {
    if (operator.equals("q")) {
      saved.push(new HashMap<>(asked));
      saved.push(new HashMap<>(set));
      out.accept(line);
      return true;
    }
    if (operator.equals("Q")) {
      set = saved.isEmpty() ? new HashMap<>() : saved.pop();
      asked = saved.isEmpty() ? new HashMap<>() : saved.pop();
      out.accept(line);
      return true;
    }
    String kind = KINDS.get(operator);
    if (kind == null) {
      return false;
    }
    asked.put(
        kind, operator.equals("Tf") || operator.equals("d") ? line : Decimals3.shortened(line));
    return true;
  }

  /** Sets what something that is painted needs. */
  void set(List<String> kinds) {
    for (String kind : kinds) {
      String line = asked.get(kind);
      if (line != null && !line.equals(set.put(kind, line))) {
        out.accept(line);
      }
    }
  }

  /** The font that is asked for: its name after a stroke, its size. */
  String[] font() {
    return asked.getOrDefault("Tf", "").split(" ", -1);
  }
}
