package org.drysill.physics.flow;

import java.util.List;
import org.drysill.physics.Bounds;

/**
 * The curve of a fan as its maker declares it, straight between its points; EN ISO 5801 prints such
 * curves (memory).
 *
 * <p>Below the flow of the first point its pressure is held, which errs towards less air. Past the
 * last point the fan gives nothing: a curve is not drawn out beyond what was declared.
 *
 * @param points flow and pressure, by rising flow, two at least; the pressure never rises
 */
public record FanCurve(List<Point> points) {
  /** Copies the list and refuses what is no falling curve. */
  public FanCurve {
    points = List.copyOf(points);
    Bounds.atLeast("number of points", points.size(), 2);
    for (int i = 1; i < points.size(); i++) {
      Bounds.above(
          "flow of a later point [m³/s]", points.get(i).flowM3S(), before(points, i).flowM3S());
      Bounds.atLeast(
          "pressure of an earlier point [Pa]",
          before(points, i).pressurePa(),
          points.get(i).pressurePa());
    }
  }

  private static Point before(List<Point> points, int i) {
    return points.get(i - 1);
  }

  /**
   * A point of the curve.
   *
   * @param flowM3S flow [m³/s], at least 0
   * @param pressurePa pressure difference [Pa], at least 0
   */
  public record Point(double flowM3S, double pressurePa) {
    /** Refuses what is below zero. */
    public Point {
      Bounds.atLeast("flow [m³/s]", flowM3S, 0);
      Bounds.atLeast("pressure difference [Pa]", pressurePa, 0);
    }
  }

  /** The flow of the last point [m³/s]: the free flow where its pressure is 0. */
  public double mostM3S() {
    return points.get(points.size() - 1).flowM3S();
  }

  /** Pressure [Pa] at a flow from 0 to {@link #mostM3S()}. */
  public double pressurePa(double flowM3S) {
    Bounds.inside("flow [m³/s]", flowM3S, 0, mostM3S());
    int next = 0;
    while (points.get(next).flowM3S() < flowM3S) {
      next++;
    }
    return next == 0
        ? points.get(0).pressurePa()
        : between(before(points, next), points.get(next), flowM3S);
  }

  private static double between(Point from, Point to, double flowM3S) {
    double share = (flowM3S - from.flowM3S()) / (to.flowM3S() - from.flowM3S());
    return from.pressurePa() + share * (to.pressurePa() - from.pressurePa());
  }
}
