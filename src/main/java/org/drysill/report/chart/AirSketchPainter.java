package org.drysill.report.chart;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Stream;
import org.drysill.report.chart.AirSketchLayout.Box;
import org.drysill.report.chart.AirSketchLayout.Floor;
import org.drysill.report.font.Face;

/** Draws an {@link AirSketch}. */
final class AirSketchPainter {
  private static final double BESIDE = 5;

  private final AirSketch sketch;
  private final Setter setter;
  private final Arrow arrow;

  AirSketchPainter(AirSketch sketch, Setter setter) {
    this.sketch = sketch;
    this.setter = setter;
    this.arrow =
        new Arrow(
            setter,
            flows(sketch).mapToDouble(AirSketch.Flow::size).max().orElse(Double.MIN_NORMAL));
  }

  private static Stream<AirSketch.Flow> flows(AirSketch sketch) {
    return sketch.storeys().stream()
        .flatMap(
            s ->
                Stream.concat(
                    s.below().stream(),
                    Stream.concat(s.hall().stream(), s.rooms().stream())
                        .flatMap(r -> Stream.concat(r.outside().stream(), r.door().stream()))));
  }

  void paint(double width) {
    AirSketchLayout layout = new AirSketchLayout(sketch, width);
    List<Floor> floors = layout.floors();
    for (int i = 0; i < floors.size(); i++) {
      Floor floor = floors.get(i);
      floor.hall().forEach(hall -> hall(floor, hall, layout));
      floor.rooms().forEach(room -> room(floor, room, layout, width));
      setter.left(floor.storey().label(), 0, baseline(floor.top()), Face.BOLD, Ink.INK);
      if (i + 1 < floors.size()) {
        below(floor, floors.get(i + 1), layout.middle());
      }
    }
  }

  private static double baseline(double top) {
    return top + Setter.LINE_HEIGHT - 3;
  }

  private void frame(Box box) {
    setter.fill(box.x(), box.y(), box.width(), box.height(), Ink.GROUND);
    setter.outline(
        new Rectangle2D.Double(box.x(), box.y(), box.width(), box.height()), Ink.LINE, 0.8);
  }

  private void room(Floor floor, Box box, AirSketchLayout layout, double width) {
    frame(box);
    String name = setter.clipped(box.room().label(), layout.nameWidth(), Face.REGULAR);
    if (box.right()) {
      setter.left(name, box.x(), baseline(box.nameTop()), Face.REGULAR, Ink.INK);
    } else {
      setter.right(name, box.end(), baseline(box.nameTop()), Face.REGULAR, Ink.INK);
    }
    double edge = box.right() ? box.end() : box.x();
    double words = box.right() ? width - AirSketchLayout.WORDS : AirSketchLayout.WORDS;
    List<AirSketch.Flow> flows = box.room().outside();
    for (int i = 0; i < flows.size(); i++) {
      double y =
          box.y() + box.height() / 2 + (i - (flows.size() - 1) / 2.0) * AirSketchLayout.PITCH;
      side(flows.get(i), edge, words, y, box.right());
    }
    for (Box hall : floor.hall()) {
      box.room().door().ifPresent(flow -> door(flow, box, hall));
    }
  }

  /** A flow at the outer side of a box: its words stand where the arrow begins or ends. */
  private void side(AirSketch.Flow flow, double edge, double words, double y, boolean right) {
    arrow.across(flow, flow.in() ? words : edge, flow.in() ? edge : words, y);
    String text = setter.clipped(flow.label(), AirSketchLayout.WORDS - BESIDE, Face.REGULAR);
    double base = y + Setter.HALF_CAP;
    if (right) {
      setter.left(text, words + BESIDE, base, Face.REGULAR, Ink.INK);
    } else {
      setter.right(text, words - BESIDE, base, Face.REGULAR, Ink.INK);
    }
  }

  private void door(AirSketch.Flow flow, Box box, Box hall) {
    double room = box.right() ? box.x() : box.end();
    double hallEdge = box.right() ? hall.end() : hall.x();
    double y = box.y() + box.height() / 2;
    arrow.across(flow, flow.in() ? hallEdge : room, flow.in() ? room : hallEdge, y);
    double beside = AirSketchLayout.GAP / 2;
    double x = box.right() ? room - beside : room + beside;
    setter.centre(flow.label(), x, y - 7, Face.REGULAR, Ink.INK);
  }

  private void hall(Floor floor, Box box, AirSketchLayout layout) {
    frame(box);
    double most = AirSketchLayout.GAP + AirSketchLayout.ARROW;
    String name = setter.clipped(box.room().label(), 2 * most, Face.REGULAR);
    setter.right(name, layout.middle() - 2 * BESIDE, baseline(floor.top()), Face.REGULAR, Ink.INK);
    double[] next = {floor.hallFlowsTop(), floor.hallFlowsTop()};
    for (AirSketch.Flow flow : box.room().outside()) {
      int side = flow.in() ? 0 : 1;
      double y = next[side] + AirSketchLayout.PITCH / 2;
      next[side] += AirSketchLayout.PITCH;
      double edge = flow.in() ? box.x() : box.end();
      double words = edge + (flow.in() ? -1 : 1) * AirSketchLayout.ARROW;
      side(flow, edge, words, y, !flow.in());
    }
  }

  private void below(Floor floor, Floor lower, double middle) {
    floor
        .storey()
        .below()
        .ifPresent(
            flow -> {
              double high = floor.bottom() + 1;
              double low = lower.top() + Setter.LINE_HEIGHT + 2;
              arrow.upright(flow, middle, flow.in() ? low : high, flow.in() ? high : low);
              double base = (high + low) / 2 + Setter.HALF_CAP;
              setter.left(flow.label(), middle + 3 * BESIDE, base, Face.REGULAR, Ink.INK);
            });
  }
}
