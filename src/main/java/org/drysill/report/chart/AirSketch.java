package org.drysill.report.chart;

import java.util.List;
import java.util.Optional;

/**
 * A home with its air flows: each room a rectangle in proportion to its floor area, one storey
 * above the other, the hall of a storey between the rooms that open into it.
 *
 * @param text the words around the chart
 * @param storeys the storeys from top to bottom
 */
public record AirSketch(ChartText text, List<Storey> storeys) implements ChartSpec {
  /** Copies the list. */
  public AirSketch {
    storeys = List.copyOf(storeys);
  }

  /**
   * One storey.
   *
   * @param label its words; may be empty
   * @param hall the room that others open into; empty where none does
   * @param rooms the other rooms
   * @param below air between its hall and that of the storey below; in is upwards
   */
  public record Storey(String label, Optional<Room> hall, List<Room> rooms, Optional<Flow> below) {
    /** Copies the list. */
    public Storey {
      rooms = List.copyOf(rooms);
    }
  }

  /**
   * One room.
   *
   * @param label its name and area
   * @param area its floor area, in any unit that all rooms share
   * @param outside flows from and to the outside, and to rooms that are drawn elsewhere
   * @param door the flow through its door to the hall; in is into the room
   */
  public record Room(String label, double area, List<Flow> outside, Optional<Flow> door) {
    /** Copies the list. */
    public Room {
      outside = List.copyOf(outside);
    }
  }

  /**
   * One flow.
   *
   * @param kind what moves it
   * @param in true into the room
   * @param size its size, in any unit that all flows share
   * @param label its words
   */
  public record Flow(Kind kind, boolean in, double size, String label) {}

  /** What moves air; each kind has a pattern of its own. */
  public enum Kind {
    /** Blown in by a fan: a solid arrow. */
    SUPPLY,
    /** Taken out by a fan: a hollow arrow. */
    EXTRACT,
    /** Through leaks and ventilators: a broken arrow. */
    LEAKS,
    /** From room to room: a grey arrow. */
    TRANSFER
  }

  @Override
  public String kind() {
    return "air-sketch";
  }

  @Override
  public double heightMm() {
    return new AirSketchLayout(this, AirSketchLayout.USUAL_WIDTH).height() / 96 * 25.4;
  }
}
