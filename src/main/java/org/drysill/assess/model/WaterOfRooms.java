package org.drysill.assess.model;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.drysill.assess.moisture.MoistureResult;
import org.drysill.reference.model.ModelDefaults;
import org.drysill.reference.model.PeopleShare;
import org.drysill.reference.model.SourcePlace;

/**
 * The part of each room in the water that the sources of a home give off. A source is in the room
 * that lists it, people and other sources without a room where they usually are; where the home has
 * no such room they are spread by volume.
 */
final class WaterOfRooms {
  private static final String PEOPLE = "people";

  private final Layout layout;
  private final ModelDefaults defaults;

  WaterOfRooms(Layout layout, ModelDefaults defaults) {
    this.layout = layout;
    this.defaults = defaults;
  }

  /** Parts with sum 1. */
  double[] parts(MoistureResult moisture) {
    double[] water = new double[layout.rooms().size()];
    double all = moisture.itemised().likely();
    for (MoistureResult.Item item : moisture.items()) {
      add(item, water, item.production().likely() / all);
    }
    return water;
  }

  private void add(MoistureResult.Item item, double[] water, double part) {
    if (item.room().isPresent()) {
      water[layout.indexOf(item.room().get())] += part;
    } else if (item.kind().equals(PEOPLE)) {
      people(water, part);
    } else {
      spread(placesOf(item.kind()), water, part);
    }
  }

  private void people(double[] water, double part) {
    double share = 0;
    for (PeopleShare group : defaults.people()) {
      List<Integer> rooms = withUse(group.rooms());
      if (!rooms.isEmpty()) {
        spread(rooms, water, part * group.share().value());
        share += group.share().value();
      }
    }
    spread(everywhere(), water, part * (1 - Math.min(1, share)));
  }

  /** The rooms of the first use that the home has. */
  private List<Integer> placesOf(String kind) {
    return defaults.sources().stream()
        .filter(place -> place.kind().equals(kind))
        .map(SourcePlace::rooms)
        .flatMap(List::stream)
        .map(use -> withUse(List.of(use)))
        .filter(rooms -> !rooms.isEmpty())
        .findFirst()
        .orElseGet(this::everywhere);
  }

  private List<Integer> withUse(List<String> uses) {
    return everywhere().stream()
        .filter(i -> uses.contains(layout.rooms().get(i).room().use().word()))
        .toList();
  }

  private List<Integer> everywhere() {
    return new ArrayList<>(IntStream.range(0, layout.rooms().size()).boxed().toList());
  }

  private void spread(List<Integer> rooms, double[] water, double part) {
    double volume = rooms.stream().mapToDouble(layout::volume).sum();
    rooms.forEach(i -> water[i] += part * layout.volume(i) / volume);
  }
}
