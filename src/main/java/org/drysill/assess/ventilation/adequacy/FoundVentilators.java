package org.drysill.assess.ventilation.adequacy;

import java.util.List;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Range;
import org.drysill.survey.Window;
import org.drysill.yaml.Quantity;

/**
 * The background ventilators that were found in rooms.
 *
 * @param windows the windows of the rooms
 * @param seenAll true where every window was looked at and there is one in every room
 */
record FoundVentilators(List<Window> windows, boolean seenAll) {

  static FoundVentilators in(List<RoomFacts> rooms) {
    List<Window> windows = rooms.stream().flatMap(r -> r.room().windows().stream()).toList();
    boolean every = rooms.stream().noneMatch(r -> r.room().windows().isEmpty());
    boolean looked = windows.stream().allMatch(w -> w.backgroundVentilator().isPresent());
    return new FoundVentilators(windows, every && looked);
  }

  /** Area of those that were found [m²]. */
  Range area() {
    return windows.stream()
        .flatMap(w -> w.backgroundVentilator().stream())
        .map(Quantity::range)
        .reduce(Range.exactly(0), Range::plus);
  }

  /** How many were found. */
  int count() {
    return (int)
        windows.stream()
            .flatMap(w -> w.backgroundVentilator().stream())
            .filter(q -> q.high() > 0)
            .count();
  }

  Figure areaFigure(String id, String name) {
    return Asked.computed(
        id,
        name,
        area(),
        Unit.VENT_AREA,
        "A = Σ A_ventilator",
        windows.stream()
            .flatMap(
                w ->
                    w.backgroundVentilator().stream()
                        .map(
                            q ->
                                Input.of(
                                    "A_ventilator",
                                    "equivalent area at " + w.name().orElse(w.id()),
                                    q.range(),
                                    Unit.VENT_AREA,
                                    Basis.DECLARED)))
            .toList(),
        List.of());
  }
}
