package org.drysill.report.chart;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.drysill.report.font.Face;

/** Draws {@link CostStack}. */
final class CostStackPainter {
  private static final double BAR = 13;
  private static final double HEAD = 2;
  private static final double GAP = 8;

  /** From the middle of a row down to the middle of its bar; the labels stand above it. */
  private static final double SINK = 9;

  private final CostStack chart;
  private final Setter setter;

  CostStackPainter(CostStack chart, Setter setter) {
    this.chart = chart;
    this.setter = setter;
  }

  /** A part at its place on the canvas. */
  private record Placed(CostStack.Part part, double from, double to) {
    double middle() {
      return (from + to) / 2;
    }
  }

  void paint(double width, double height) {
    List<String> labels = chart.bars().stream().map(CostStack.Bar::label).toList();
    double totals =
        chart.bars().stream().mapToDouble(b -> setter.width(b.total(), Face.BOLD)).max().orElse(0);
    Rows rows =
        new Rows(setter, chart.axis(), labels, width, height, HEAD, totals + GAP, Rows.LABELS);
    rows.frame();
    for (int i = 0; i < chart.bars().size(); i++) {
      bar(rows, i, width);
    }
    rows.base();
  }

  private void bar(Rows rows, int row, double width) {
    CostStack.Bar bar = chart.bars().get(row);
    double middle = rows.middle(row) + SINK;
    List<Placed> parts = placed(rows.plot(), bar);
    parts.forEach(p -> fill(p, middle));
    names(rows.plot(), parts, middle);
    setter.left(bar.label(), 0, middle + Setter.HALF_CAP, Face.BOLD, Ink.INK);
    setter.right(bar.total(), width, middle + Setter.HALF_CAP, Face.BOLD, Ink.INK);
  }

  private List<Placed> placed(Plot plot, CostStack.Bar bar) {
    List<Placed> placed = new ArrayList<>();
    double right = 0;
    double left = 0;
    for (CostStack.Part part : bar.parts()) {
      double from = part.value() < 0 ? left : right;
      double to = from + part.value();
      left = part.value() < 0 ? to : left;
      right = part.value() < 0 ? right : to;
      placed.add(
          new Placed(part, plot.x(Math.min(from, to)), Math.max(plot.x(Math.max(from, to)), 0)));
    }
    placed.sort(Comparator.comparingDouble(Placed::from));
    return placed;
  }

  private void fill(Placed placed, double middle) {
    Rectangle2D box =
        new Rectangle2D.Double(
            placed.from(), middle - BAR / 2, Math.max(0.8, placed.to() - placed.from()), BAR);
    setter.fill(box, ground(placed.part().pattern()));
    switch (placed.part().pattern()) {
      case RISING -> setter.fill(Stripes.within(box, 4.5, 0.9, true), Ink.TEXT);
      case FALLING -> setter.fill(Stripes.within(box, 4.5, 0.9, false), Ink.TEXT);
      case DATA, GROUND, INK, OPEN -> {}
    }
    setter.outline(box, Ink.TEXT, 0.6);
  }

  private static Ink ground(CostStack.Pattern pattern) {
    return switch (pattern) {
      case DATA -> Ink.DATA;
      case GROUND -> Ink.GRID;
      case INK -> Ink.TEXT;
      case RISING, FALLING, OPEN -> Ink.PAPER;
    };
  }

  /** Names stand above their parts, moved apart where they would meet, each with a leader. */
  private void names(Plot plot, List<Placed> parts, double middle) {
    double[] starts = starts(plot, parts);
    double baseline = middle - BAR / 2 - 6;
    for (int i = 0; i < parts.size(); i++) {
      String label = parts.get(i).part().label();
      double end = starts[i] + setter.width(label, Face.REGULAR);
      double foot = Math.max(starts[i] + 3, Math.min(parts.get(i).middle(), end - 3));
      setter.line(foot, baseline + 2, parts.get(i).middle(), middle - BAR / 2, Ink.QUIET, 0.5);
      // Grid lines stop short of the words.
      setter.fill(starts[i] - 1, baseline - 9, end - starts[i] + 2, 11, Ink.PAPER);
      setter.left(label, starts[i], baseline, Face.REGULAR, Ink.INK);
    }
  }

  /** Each name as near to its part as its neighbours let it, from the left and then back. */
  private double[] starts(Plot plot, List<Placed> parts) {
    double[] starts = new double[parts.size()];
    double free = 0;
    for (int i = 0; i < starts.length; i++) {
      double centred = parts.get(i).middle() - width(parts, i) / 2;
      // What is left of zero is named left of it.
      double wished =
          parts.get(i).part().value() < 0
              ? Math.min(centred, parts.get(i).to() - width(parts, i) - 2)
              : centred;
      starts[i] = Math.max(free, wished);
      free = starts[i] + width(parts, i) + GAP;
    }
    double end = plot.right() + GAP;
    for (int i = starts.length - 1; i >= 0; i--) {
      starts[i] = Math.min(starts[i], end - width(parts, i));
      end = starts[i] - GAP;
    }
    return starts;
  }

  private double width(List<Placed> parts, int part) {
    return setter.width(parts.get(part).part().label(), Face.REGULAR);
  }
}
