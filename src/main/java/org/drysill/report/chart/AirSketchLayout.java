package org.drysill.report.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Where the rooms of an {@link AirSketch} stand: two columns of rooms, and the hall between them. A
 * room is as high as its arrows need at least, and as wide as then keeps its area in proportion.
 */
final class AirSketchLayout {
  /** The width of a chart across both columns of the page: 172 mm. */
  static final double USUAL_WIDTH = 172 / 25.4 * 96;

  /** From one arrow to the next. */
  static final double PITCH = 14;

  /** Room for the words of flows at both sides. */
  static final double WORDS = 74;

  /** The least length of an arrow at the sides. */
  static final double ARROW = 28;

  /** From the rooms to the column of the hall. */
  static final double GAP = 50;

  private static final double HALL = 92;
  private static final double LARGEST = 62;
  private static final double PAD = 5;
  private static final double BETWEEN_ROOMS = 7;
  private static final double BETWEEN_STOREYS = 22;

  /**
   * A room in its place.
   *
   * @param right true in the column at the right
   * @param nameTop the top of the line of its name
   */
  record Box(
      AirSketch.Room room,
      boolean right,
      double x,
      double y,
      double width,
      double height,
      double nameTop) {
    double end() {
      return x + width;
    }

    double bottom() {
      return y + height;
    }
  }

  /**
   * A storey in its place.
   *
   * @param top the top of the line of its name
   * @param hall one box, or none
   */
  record Floor(
      AirSketch.Storey storey,
      double top,
      double bottom,
      List<Box> hall,
      List<Box> rooms,
      double hallFlowsTop) {}

  private final double column;
  private final double width;
  private final double perArea;
  private final List<Floor> floors = new ArrayList<>();

  AirSketchLayout(AirSketch sketch, double width) {
    this.width = width;
    column = (width - 2 * (WORDS + ARROW) - 2 * GAP - HALL) / 2;
    double largest =
        sketch.storeys().stream()
            .flatMap(s -> Stream.concat(s.hall().stream(), s.rooms().stream()))
            .mapToDouble(AirSketch.Room::area)
            .max()
            .orElse(1);
    perArea = column * LARGEST / Math.max(largest, Double.MIN_NORMAL);
    double top = 0;
    for (AirSketch.Storey storey : sketch.storeys()) {
      Floor floor = floor(storey, top);
      floors.add(floor);
      top = floor.bottom() + BETWEEN_STOREYS;
    }
  }

  List<Floor> floors() {
    return List.copyOf(floors);
  }

  double height() {
    return floors.isEmpty() ? 0 : floors.get(floors.size() - 1).bottom() + 1;
  }

  double middle() {
    return width / 2;
  }

  /** The width that a name above a room has. */
  double nameWidth() {
    return column;
  }

  private Floor floor(AirSketch.Storey storey, double top) {
    double first = top + Setter.LINE_HEIGHT + 3;
    double[] next = {first, first};
    List<Box> rooms = new ArrayList<>();
    for (AirSketch.Room room : storey.rooms()) {
      int side = next[0] <= next[1] ? 0 : 1;
      Box box = box(room, side == 1, next[side]);
      rooms.add(box);
      next[side] = box.bottom() + BETWEEN_ROOMS;
    }
    double roomsEnd = Math.max(next[0], next[1]);
    if (storey.hall().isEmpty()) {
      return new Floor(storey, top, roomsEnd, List.of(), rooms, roomsEnd);
    }
    AirSketch.Room hall = storey.hall().get();
    double flows = PITCH * Math.max(count(hall, true), count(hall, false));
    double height = Math.max(roomsEnd - first + flows + PAD, hall.area() * perArea / HALL);
    double wide = Math.max(3, hall.area() * perArea / height);
    Box box = new Box(hall, false, middle() - wide / 2, first, wide, height, top);
    double bottom = first + height;
    return new Floor(storey, top, bottom, List.of(box), rooms, bottom - PAD - flows);
  }

  private Box box(AirSketch.Room room, boolean right, double top) {
    double y = top + Setter.LINE_HEIGHT + 1;
    double least = PITCH * Math.max(1, room.outside().size()) + PAD;
    double height = Math.max(least, room.area() * perArea / column);
    double wide = Math.max(3, room.area() * perArea / height);
    double inner = right ? middle() + HALL / 2 + GAP : middle() - HALL / 2 - GAP;
    return new Box(room, right, right ? inner : inner - wide, y, wide, height, top);
  }

  private static long count(AirSketch.Room room, boolean in) {
    return room.outside().stream().filter(flow -> flow.in() == in).count();
  }
}
