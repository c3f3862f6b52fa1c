package org.drysill.options.packs;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.surfaces.RoomLimits;
import org.drysill.assess.surfaces.RoomLimits.PlaceLimits;
import org.drysill.assess.surfaces.SurfaceClass;

/** A room in one state of its fabric: how many months of it are at risk at a given vapour. */
final class RoomState {
  private final int zone;
  private final double volume;
  private final double setpoint;
  private final RoomLimits limits;
  private final double[][][] opaque;
  private final double[][][] glass;

  private RoomState(int zone, double volume, double setpoint, RoomLimits limits) {
    this.zone = zone;
    this.setpoint = setpoint;
    this.volume = volume;
    this.limits = limits;
    this.opaque = items(limits, SurfaceClass.OPAQUE);
    this.glass = items(limits, SurfaceClass.GLASS);
  }

  static RoomState of(int zone, RoomFacts room, RoomLimits limits) {
    return new RoomState(zone, room.volume().likely(), room.setpoint().likely(), limits);
  }

  /** The places of each item of the survey, its months by place. */
  private static double[][][] items(RoomLimits limits, SurfaceClass surface) {
    Map<String, List<PlaceLimits>> items = new LinkedHashMap<>();
    limits.places().stream()
        .filter(p -> p.surface() == surface)
        .forEach(p -> items.merge(p.item(), List.of(p), RoomState::joined));
    return items.values().stream()
        .map(
            places ->
                places.stream()
                    .map(p -> p.ratios().stream().mapToDouble(r -> r).toArray())
                    .toArray(double[][]::new))
        .toArray(double[][][]::new);
  }

  private static List<PlaceLimits> joined(List<PlaceLimits> some, List<PlaceLimits> more) {
    return Stream.concat(some.stream(), more.stream()).toList();
  }

  /** Its limits as they were found. */
  RoomLimits limits() {
    return limits;
  }

  /** Months at risk of mould, summed over walls and corners. */
  int mould(double[][] ratios) {
    return months(opaque, ratios);
  }

  /** Months with wet glass, summed over windows. */
  int wet(double[][] ratios) {
    return months(glass, ratios);
  }

  /** Adds one to each month for every wall and corner at risk of mould in it. */
  void addMould(int[] months, double[][] ratios) {
    add(months, opaque, ratios);
  }

  /** Adds one to each month for every window that gets wet in it. */
  void addWet(int[] months, double[][] ratios) {
    add(months, glass, ratios);
  }

  private void add(int[] months, double[][][] items, double[][] ratios) {
    for (double[][] places : items) {
      double[] worst = worst(places, ratios);
      for (int m = 0; m < months.length; m++) {
        months[m] += isAtRisk(worst, ratios, m) ? 1 : 0;
      }
    }
  }

  /** The least multiple of the vapour at which a month is at risk of mould [1]. */
  double reserve(double[][] ratios) {
    double least = Double.POSITIVE_INFINITY;
    for (double[][] places : opaque) {
      for (double[] place : places) {
        for (int m = 0; m < place.length; m++) {
          least = Math.min(least, reserve(place[m], ratios[m][zone]));
        }
      }
    }
    return least;
  }

  /** By what a multiple of the vapour may grow until it reaches a limit. */
  static double reserve(double limit, double multiple) {
    return multiple > 0 ? limit / multiple : limit > 0 ? Double.POSITIVE_INFINITY : 0;
  }

  /** The zone that its air belongs to. */
  int zone() {
    return zone;
  }

  /** Relative humidity in the coldest month [1]. */
  double winterHumidity(double[][] ratios, int coldest) {
    return Math.min(
        1, limits.humidityWithoutExcess() + limits.humidityOfExcess() * ratios[coldest][zone]);
  }

  /** Indoor temperature while it is heated [°C]. */
  double setpoint() {
    return setpoint;
  }

  double volume() {
    return volume;
  }

  /** The worst part of a window or corner stands for it. */
  private int months(double[][][] items, double[][] ratios) {
    int sum = 0;
    for (double[][] places : items) {
      int worst = 0;
      for (double[] place : places) {
        worst = Math.max(worst, months(place, ratios));
      }
      sum += worst;
    }
    return sum;
  }

  private double[] worst(double[][] places, double[][] ratios) {
    double[] worst = places[0];
    for (double[] place : places) {
      worst = months(place, ratios) > months(worst, ratios) ? place : worst;
    }
    return worst;
  }

  private int months(double[] place, double[][] ratios) {
    int months = 0;
    for (int m = 0; m < place.length; m++) {
      months += isAtRisk(place, ratios, m) ? 1 : 0;
    }
    return months;
  }

  private boolean isAtRisk(double[] place, double[][] ratios, int month) {
    return ratios[month][zone] >= place[month];
  }
}
