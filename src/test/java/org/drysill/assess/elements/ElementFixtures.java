package org.drysill.assess.elements;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.drysill.assess.Basis;
import org.drysill.assess.Home;
import org.drysill.assess.HomeFixtures;
import org.drysill.assess.OutdoorClimate;
import org.drysill.assess.surfaces.IndoorVapour;
import org.drysill.assess.surfaces.IndoorVapours;
import org.drysill.physics.Range;
import org.drysill.reference.elements.ElementDefaults;
import org.drysill.reference.surfaces.SurfaceTables;

/** Homes with one bedroom at 20 °C and walls; an invented climate, not published. */
final class ElementFixtures {
  static final SurfaceTables TABLES = SurfaceTables.bundled();
  static final ElementDefaults DEFAULTS = ElementDefaults.bundled();

  /** The wall of the worked example, its figures stated so that nothing is spread. */
  static final String BOARD =
      "{material: plasterboard, thickness: 12.5 mm, conductivity: 0.25 W/mK, vapour_factor: 10}";

  static final String CONTROL = "{material: vapour control layer, sd: 2 m}";
  static final String WOOL =
      "{material: mineral wool, thickness: 50 mm, conductivity: 0.035 W/mK, vapour_factor: 1}";
  static final String BRICK =
      "{material: brick, thickness: 215 mm, conductivity: 0.77 W/mK, vapour_factor: 10}";

  private static final double[] CELSIUS = {
    4.5, 4.7, 6.6, 8.9, 12.0, 14.8, 16.8, 16.6, 14.2, 10.9, 7.3, 5.0
  };
  private static final double[] HUMIDITY = {
    0.86, 0.83, 0.80, 0.77, 0.76, 0.76, 0.76, 0.78, 0.81, 0.84, 0.87, 0.87
  };
  private static final int[] DAYS = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

  private ElementFixtures() {}

  /** The only wall, of these layers, in the air of humidity class 3. */
  static WallWithin wall(String... layers) {
    return wall(home(0, layers), IndoorVapours.none());
  }

  static WallWithin wall(Home home, IndoorVapours vapour) {
    return assess(home, vapour).walls().get(0);
  }

  static ElementsResult assess(Home home, IndoorVapours vapour) {
    return ElementAssessor.assess(home, vapour, TABLES, DEFAULTS);
  }

  /** A home in that climate, so many kelvin colder. */
  static Home home(double colder, String... layers) {
    String text =
        """
        drysill: 1
        visit: {date: 2026-01-22}
        dwelling: {jurisdiction: england, floor_area: 84 m2}
        rooms:
          - id: bed
            name: back bedroom
            use: bedroom
            setpoint: 20 C
            walls: [{id: n, name: north wall, layers: [LAYERS]}]
        """
            .replace("LAYERS", String.join(", ", layers));
    Home h = HomeFixtures.of(HomeFixtures.read(text));
    return new Home(
        h.survey(),
        h.floorArea(),
        h.volume(),
        h.storeys(),
        h.bedrooms(),
        h.occupants(),
        h.setpoint(),
        h.n50(),
        climate(colder),
        h.rooms(),
        h.money(),
        h.assumptions());
  }

  private static OutdoorClimate climate(double colder) {
    return new OutdoorClimate(
        "test",
        IntStream.range(0, 12)
            .mapToObj(
                i ->
                    new OutdoorClimate.Month(
                        i + 1,
                        DAYS[i],
                        CELSIUS[i] - colder,
                        Range.exactly(HUMIDITY[i]),
                        Optional.empty()))
            .toList(),
        Basis.PUBLISHED,
        List.of(),
        Optional.empty());
  }

  /** A measured excess at 0 °C outdoors [Pa]. */
  static IndoorVapours vapour(Range excess) {
    return new IndoorVapours(
        Optional.of(
            new IndoorVapour(
                excess, 0, Basis.MEASURED, "the readings", Optional.empty(), List.of())),
        Map.of());
  }
}
