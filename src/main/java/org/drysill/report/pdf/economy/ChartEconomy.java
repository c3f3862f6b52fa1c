package org.drysill.report.pdf.economy;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * The contents of a chart as the drawing library writes them, one operator a line, said shorter. It
 * saves and restores the state around each stroke and sets all of it anew; here a state is set
 * where something is painted that needs it, and places are those of the whole chart.
 */
final class ChartEconomy {
  private final Deque<ChartState> saved = new ArrayDeque<>();
  private final ChartPaint paint = new ChartPaint();
  private final List<String> path = new ArrayList<>();
  private ChartState state = ChartState.INITIAL;
  private Place line = Place.NONE;
  private String clip = "";

  private ChartEconomy() {}

  /** The shorter contents; the same where they hold anything that is not known here. */
  static String rewritten(String content) {
    try {
      ChartEconomy chart = new ChartEconomy();
      content.lines().forEach(chart::operator);
      return chart.paint.finished();
    } catch (Unknown kept) {
      return content;
    }
  }

  /** Something that is best left as it is. */
  static final class Unknown extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Unknown(String line) {
      super(line, null, false, false);
    }
  }

  private void operator(String line) {
    int space = line.lastIndexOf(' ');
    String operator = line.substring(space + 1);
    String operands = space < 0 ? "" : line.substring(0, space);
    switch (operator) {
      case "m", "l", "c", "h" -> path.add(line);
      case "S", "f" -> painted(operator);
      case "W" -> clip = operator;
      case "n" -> clipped();
      case "q" -> saved.push(state);
      case "Q" -> restored();
      case "cm" -> state = state.moved(Place.of(operands));
      case "CS", "cs" -> requireRgb(operands, line);
      case "BT" -> this.line = Place.NONE;
      case "Tm" -> this.line = Place.of(operands);
      case "Tj" -> paint.text(state, this.line.within(state.place()), line);
      case "ET" -> this.line = Place.NONE;
      default -> state = state.with(operator, operands);
    }
  }

  private static void requireRgb(String operands, String line) {
    if (!operands.equals("/DeviceRGB")) {
      throw new Unknown(line);
    }
  }

  private void painted(String operator) {
    paint.path(state, path, operator);
    path.clear();
  }

  private void clipped() {
    if (clip.isEmpty()) {
      throw new Unknown("n");
    }
    paint.clip(state, path);
    state = state.clipped();
    path.clear();
    clip = "";
  }

  private void restored() {
    if (saved.isEmpty()) {
      throw new Unknown("Q");
    }
    ChartState before = saved.pop();
    if (before.clips() < state.clips()) {
      paint.unclip(state.clips() - before.clips());
    }
    state = before;
  }
}
