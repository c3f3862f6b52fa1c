package org.drysill.assess.surfaces;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.drysill.assess.surfaces.months.MonthLimit;
import org.drysill.physics.Range;

/**
 * How much of today's vapour excess a room and its places bear.
 *
 * @param room the survey's id
 * @param places its cold places
 * @param humidityWithoutExcess mean relative humidity in the coldest month, were there no excess
 *     [1]
 * @param humidityOfExcess what today's excess adds to it [1]
 */
public record RoomLimits(
    String room, List<PlaceLimits> places, double humidityWithoutExcess, double humidityOfExcess) {
  /** Copies the list. */
  public RoomLimits {
    places = List.copyOf(places);
  }

  /**
   * A place.
   *
   * @param item the survey's id
   * @param name its name in sentences
   * @param kind which part of the survey it comes from
   * @param surface what may happen on it
   * @param material the survey's word for what it is made of
   * @param factor its temperature factor [1]
   * @param months what each month asks of it, January first
   * @param excess today's likely vapour excess at the temperature outdoors of each month [Pa]
   * @param ratios of each month the least multiple of today's excess at which it is at risk, at the
   *     likely values
   */
  public record PlaceLimits(
      String item,
      String name,
      PlaceKind kind,
      SurfaceClass surface,
      Optional<String> material,
      Range factor,
      List<MonthLimit> months,
      List<Double> excess,
      List<Double> ratios) {
    /** Copies the lists. */
    public PlaceLimits {
      months = List.copyOf(months);
      excess = List.copyOf(excess);
      ratios = List.copyOf(ratios);
    }

    static PlaceLimits of(
        String item,
        String name,
        PlaceKind kind,
        SurfaceClass surface,
        Optional<String> material,
        Range factor,
        List<MonthLimit> months,
        List<Double> excess) {
      List<Double> ratios =
          IntStream.range(0, months.size())
              .mapToObj(
                  m -> {
                    MonthLimit month = months.get(m);
                    double vapour = month.outdoorVapour().likely();
                    return ratio(month.criticalPa(factor.likely(), vapour), excess.get(m));
                  })
              .toList();
      return new PlaceLimits(item, name, kind, surface, material, factor, months, excess, ratios);
    }

    /**
     * The least multiple of today's likely excess at which it is at risk in a month.
     *
     * @param month 0 for January
     * @param factor its temperature factor [1]
     * @param outdoors vapour pressure outdoors [Pa]
     */
    public double ratio(int month, double factor, double outdoors) {
      return ratio(months.get(month).criticalPa(factor, outdoors), excess.get(month));
    }

    private static double ratio(double critical, double today) {
      return today > 0 ? critical / today : critical > 0 ? Double.POSITIVE_INFINITY : 0;
    }
  }
}
