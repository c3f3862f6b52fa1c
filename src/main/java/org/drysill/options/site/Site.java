package org.drysill.options.site;

import java.util.Optional;
import org.drysill.assess.RoomFacts;
import org.drysill.survey.ColdSpot;
import org.drysill.survey.Fan;
import org.drysill.survey.Window;

/**
 * One place of a home to which a measure could apply; nothing at all for the whole home.
 *
 * @param room the room
 * @param window the window
 * @param spot the cold spot
 * @param fan the fan
 */
public record Site(
    Optional<RoomFacts> room, Optional<Window> window, Optional<ColdSpot> spot, Optional<Fan> fan) {

  static Site home() {
    return new Site(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
  }

  static Site of(RoomFacts room) {
    return new Site(Optional.of(room), Optional.empty(), Optional.empty(), Optional.empty());
  }

  static Site of(RoomFacts room, Window window) {
    return new Site(Optional.of(room), Optional.of(window), Optional.empty(), Optional.empty());
  }

  static Site of(RoomFacts room, ColdSpot spot) {
    return new Site(Optional.of(room), Optional.empty(), Optional.of(spot), Optional.empty());
  }

  static Site of(RoomFacts room, Fan fan) {
    return new Site(Optional.of(room), Optional.empty(), Optional.empty(), Optional.of(fan));
  }

  /** The survey's id of the place; {@code home} for the whole home. */
  public String id() {
    return window
        .map(Window::id)
        .or(() -> spot.map(ColdSpot::id))
        .or(() -> fan.map(Fan::id))
        .or(() -> room.map(RoomFacts::id))
        .orElse("home");
  }
}
