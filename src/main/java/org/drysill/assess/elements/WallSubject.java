package org.drysill.assess.elements;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.Basis;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Working.Input;
import org.drysill.assess.surfaces.IndoorVapour;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.How;

/**
 * A wall with the air that it is judged in.
 *
 * @param id of the survey
 * @param name in sentences, such as {@code north wall}
 * @param room the room that it belongs to
 * @param layers room side first
 * @param films of both surfaces
 * @param vapour moisture of the indoor air
 * @param climate the air on both sides by month
 */
record WallSubject(
    String id,
    String name,
    RoomFacts room,
    List<WallLayer> layers,
    Films films,
    IndoorVapour vapour,
    WallClimate climate) {
  private static final Citation METHOD =
      Citation.of("ISO 13788", "2012", "6, interstitial condensation by month", How.MEMORY);
  private static final Citation PRESSURES =
      Citation.of("ISO 13788", "2012", "Annex E, saturation vapour pressure", How.MEMORY);

  WallSubject {
    layers = List.copyOf(layers);
  }

  /** The same wall with other layers. */
  WallSubject with(List<WallLayer> others) {
    return new WallSubject(id, name, room, others, films, vapour, climate);
  }

  /** The same wall with moister indoor air, by a range [Pa] at 0 °C outdoors. */
  WallSubject moister(Range by) {
    IndoorVapour more =
        new IndoorVapour(by, 0, Basis.ASSUMED, "what may come on top", Optional.empty(), List.of());
    return new WallSubject(
        id,
        name,
        room,
        layers,
        films,
        vapour,
        climate.with(t -> vapour.excessAt(t).plus(more.excessAt(t))));
  }

  Runs runs() {
    return Runs.of(layers, films, climate);
  }

  /** On what everything that the year says rests. */
  Basis basis() {
    boolean assumed = vapour.basis() == Basis.ASSUMED || climate.climate().basis() == Basis.ASSUMED;
    return assumed ? Basis.ASSUMED : Basis.CALCULATED;
  }

  /** The moisture of the indoor air as an input of a working. */
  Input excess() {
    return vapour.input();
  }

  List<Citation> sources() {
    return Stream.of(
            Stream.of(METHOD, PRESSURES),
            climate.climate().sources().stream(),
            vapour.sources().stream())
        .flatMap(s -> s)
        .toList();
  }

  static Citation method() {
    return METHOD;
  }
}
