package org.drysill.assess.elements;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drysill.assess.Assumption;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.assess.surfaces.IndoorVapour;
import org.drysill.assess.surfaces.IndoorVapours;
import org.drysill.assess.surfaces.VapourOfRooms;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.How;
import org.drysill.reference.elements.ElementDefaults;
import org.drysill.reference.surfaces.SurfaceTables;
import org.drysill.survey.Wall;

/**
 * Assesses the water within every built-up wall whose layers are known. What is assumed of indoor
 * temperature and vapour is told where the walls' surfaces are assessed.
 */
public final class ElementAssessor {
  private static final Citation U_VALUE =
      Citation.of("ISO 6946", "2017", "6, homogeneous layers", How.MEMORY);

  private final Home home;
  private final SurfaceTables tables;
  private final ElementDefaults defaults;
  private final VapourOfRooms vapour;
  private final WallLayers layers;

  private ElementAssessor(
      Home home, IndoorVapours vapour, SurfaceTables tables, ElementDefaults defaults) {
    this.home = home;
    this.tables = tables;
    this.defaults = defaults;
    this.vapour = new VapourOfRooms(vapour, tables.defaults());
    this.layers = new WallLayers(tables.materials(), defaults);
  }

  /**
   * Water within the walls of a home.
   *
   * @param home the home with every gap filled
   * @param vapour what was read of its indoor vapour
   * @param tables what is published about surfaces and materials
   * @param defaults what is taken of elements
   */
  public static ElementsResult assess(
      Home home, IndoorVapours vapour, SurfaceTables tables, ElementDefaults defaults) {
    return new ElementAssessor(home, vapour, tables, defaults).assess();
  }

  private ElementsResult assess() {
    List<WallWithin> walls = new ArrayList<>();
    for (RoomFacts room : home.rooms()) {
      for (Wall wall : room.room().walls()) {
        layers
            .of(wall)
            .map(known -> subject(room, wall, known))
            .map(this::wall)
            .ifPresent(walls::add);
      }
    }
    return new ElementsResult(walls, fromTable(walls).stream().toList());
  }

  private WallSubject subject(RoomFacts room, Wall wall, List<WallLayer> known) {
    IndoorVapour moisture = vapour.of(room);
    return new WallSubject(
        wall.id(),
        wall.name().orElse("wall " + wall.id()),
        room,
        known,
        Films.of(tables.surfaces()),
        moisture,
        new WallClimate(
            home.climate(), room.setpoint().likely(), moisture::excessAt, tables.defaults()));
  }

  private WallWithin wall(WallSubject wall) {
    Runs runs = wall.runs();
    WallYear year = WallYears.of("element." + wall.id(), wall, runs);
    ElementFindings findings = new ElementFindings(wall, year);
    return new WallWithin(
        wall.id(),
        wall.name(),
        wall.room().id(),
        wall.room().name(),
        wall.layers(),
        uValue(wall),
        year,
        new DryBelow(wall, runs).find(),
        new LeakingAir(wall, runs.likely(), defaults).find(),
        new Variants(wall, defaults).all(),
        findings.accumulation(),
        findings.content(defaults),
        MethodLimits.of(wall.layers()));
  }

  private static Figure uValue(WallSubject wall) {
    Range resistance =
        wall.layers().stream()
            .map(l -> l.resistance().value())
            .reduce(Range.exactly(wall.films().inside() + wall.films().outside()), Range::plus);
    List<Input> inputs = new ArrayList<>(wall.films().inputs());
    wall.layers().forEach(l -> inputs.add(Input.of("R(" + l.name() + ")", l.resistance())));
    return new Figure(
        "element." + wall.id() + ".u_value",
        "U-value of the wall",
        Range.exactly(1).dividedBy(resistance),
        Unit.U_VALUE,
        Basis.CALCULATED,
        () ->
            new Working(
                "U = 1 / (Rsi + Σ R + Rse)",
                inputs,
                Stream.concat(Stream.of(U_VALUE), wall.films().sources().stream()).toList(),
                Optional.empty()));
  }

  private static Optional<Assumption> fromTable(List<WallWithin> walls) {
    List<WallLayer> layers =
        walls.stream()
            .flatMap(w -> w.layers().stream())
            .filter(l -> l.table().isPresent())
            .toList();
    return layers.stream()
        .findFirst()
        .flatMap(WallLayer::table)
        .map(
            source ->
                new Assumption(
                    "element.layers",
                    "How heat and vapour pass the layers of walls",
                    "table values with their bounds for "
                        + layers.stream()
                            .map(WallLayer::name)
                            .distinct()
                            .collect(Collectors.joining(", ")),
                    "the makers' figures were not given",
                    "Find the makers' conductivity and vapour resistance of each layer, or open"
                        + " the wall.",
                    source));
  }
}
