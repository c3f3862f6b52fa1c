package org.drysill.report.pdf.economy;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/** Writes what a chart paints, with no more of its state than has changed. */
final class ChartPaint {
  private final StringBuilder out = new StringBuilder();
  private final Deque<ChartState> saved = new ArrayDeque<>();

  /** What is set in the file by now. */
  private ChartState set = ChartState.UNKNOWN;

  /** A path that was painted last and may be painted once more, or go on; empty where none. */
  private String waiting = "";

  private String waitingFor = "";
  private boolean isText;
  private long x;
  private long y;

  /** Paints a path, by S its line or by f its area. */
  void path(ChartState state, List<String> path, String operator) {
    String words = ChartPath.words(path, state.place());
    boolean lines = operator.equals("S");
    if (lines && waitingFor.equals("f") && waiting.equals(words)) {
      stroke(state);
      waitingFor = "B";
      return;
    }
    boolean goesOn = lines && waitingFor.equals("S") && isStroked(state);
    if (goesOn) {
      waiting += words;
      return;
    }
    flush();
    if (lines) {
      stroke(state);
    } else {
      fill(state);
    }
    waiting = words;
    waitingFor = operator;
  }

  private boolean isStroked(ChartState state) {
    return set.stroke().equals(state.stroke()) && set.line().equals(state.line());
  }

  /** Shows a line of text. */
  void text(ChartState state, Place place, String words) {
    if (!place.isUpright()) {
      throw new ChartEconomy.Unknown("text that is turned");
    }
    endPath();
    if (!isText) {
      out.append("BT\n");
      isText = true;
      x = 0;
      y = 0;
    }
    fill(state);
    if (!state.font().equals(set.font())) {
      out.append(state.font()).append(" Tf\n");
      set = set.with("Tf", state.font());
    }
    long nextX = Math.round(place.e() * 100);
    long nextY = Math.round(place.f() * 100);
    out.append(Hundredths.text(nextX - x)).append(' ');
    out.append(Hundredths.text(nextY - y)).append(" Td\n");
    x = nextX;
    y = nextY;
    out.append(words).append('\n');
  }

  /** Paints within a path only, until the clip is lifted. */
  void clip(ChartState state, List<String> path) {
    flush();
    saved.push(set);
    out.append("q\n").append(ChartPath.words(path, state.place())).append("W n\n");
  }

  void unclip(int clips) {
    flush();
    for (int i = 0; i < clips; i++) {
      set = saved.pop();
      out.append("Q\n");
    }
  }

  String finished() {
    flush();
    return out.toString();
  }

  private void flush() {
    endPath();
    if (isText) {
      out.append("ET\n");
      isText = false;
    }
  }

  private void endPath() {
    if (!waitingFor.isEmpty()) {
      out.append(waiting).append(waitingFor).append('\n');
      waiting = "";
      waitingFor = "";
    }
  }

  private void fill(ChartState state) {
    if (!state.fill().equals(set.fill())) {
      out.append(state.fill()).append(" rg\n");
      set = set.with("rg", state.fill());
    }
  }

  private void stroke(ChartState state) {
    if (!state.stroke().equals(set.stroke())) {
      out.append(state.stroke()).append(" RG\n");
      set = set.with("RG", state.stroke());
    }
    ChartState.Line is = set.line();
    ChartState.Line asked = state.line();
    set("w", is.width(), asked.width());
    set("J", is.cap(), asked.cap());
    set("j", is.join(), asked.join());
    set("M", is.miter(), asked.miter());
    set("d", is.dash(), asked.dash());
  }

  private void set(String operator, String is, String asked) {
    if (!is.equals(asked)) {
      out.append(asked).append(' ').append(operator).append('\n');
      set = set.with(operator, asked);
    }
  }
}
