package org.drysill.assess.surfaces.year;

import java.util.Arrays;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import org.drysill.assess.OutdoorHours;
import org.drysill.physics.Range;
import org.drysill.physics.air.Iso13788Vapour;
import org.drysill.physics.surface.HourlyAir;
import org.drysill.physics.surface.TemperatureFactor;
import org.drysill.physics.weather.HourlyYear;

/**
 * The air of rooms hour by hour.
 *
 * <p>The moisture of a room and the warmth of its walls follow the mean of the last hours outdoors;
 * a pane follows the hour.
 */
final class YearAir {
  private final double[] outdoor = new double[HourlyYear.HOURS];
  private final double[] slowOutdoor;
  private final double[] slowVapour;
  private final double rise;

  /**
   * The outdoor side.
   *
   * @param hours outdoors
   * @param memory hours over which rooms and walls follow
   * @param rise how much warmer it is indoors than outdoors without heating [K]
   */
  YearAir(OutdoorHours hours, int memory, double rise) {
    double[] vapour = new double[HourlyYear.HOURS];
    for (int h = 0; h < HourlyYear.HOURS; h++) {
      outdoor[h] = hours.year().celsius(h);
      vapour[h] = hours.year().vapourPa(h);
    }
    this.slowOutdoor = HourlyAir.runningMean(outdoor, memory);
    this.slowVapour = HourlyAir.runningMean(vapour, memory);
    this.rise = rise;
  }

  /** Likely excess of a room by hour [Pa], of an excess by outdoor temperature [°C]. */
  double[] excess(DoubleFunction<Range> excess) {
    double[] likely = new double[HourlyYear.HOURS];
    for (int h = 0; h < likely.length; h++) {
      likely[h] = excess.apply(slowOutdoor[h]).likely();
    }
    return likely;
  }

  /** What a pane of a room at a set point [°C] bears over the vapour outdoors, by hour [Pa]. */
  double[] bears(double factor, double setpoint) {
    double[] bears = new double[HourlyYear.HOURS];
    for (int h = 0; h < bears.length; h++) {
      double surface = TemperatureFactor.surfaceCelsius(factor, indoor(setpoint, h), outdoor[h]);
      bears[h] = Math.max(0, Iso13788Vapour.saturationPressurePa(surface) - slowVapour[h]);
    }
    return bears;
  }

  /** A room at a set point [°C] with an excess by hour [Pa], at its walls and at its panes. */
  AtSurfaces atSurfaces(double setpoint, double[] excess) {
    double[] indoor = new double[HourlyYear.HOURS];
    double[] vapour = new double[HourlyYear.HOURS];
    for (int h = 0; h < indoor.length; h++) {
      indoor[h] = indoor(setpoint, h);
      double most = Iso13788Vapour.saturationPressurePa(indoor[h]);
      vapour[h] = Math.min(most, slowVapour[h] + excess[h]);
    }
    return new AtSurfaces(
        new HourlyAir(indoor, vapour, slowOutdoor), new HourlyAir(indoor, vapour, outdoor));
  }

  /** Hours in which the air of a room is moister than a relative humidity [1]. */
  int hoursAbove(double humidity, double setpoint, double[] excess) {
    int hours = 0;
    for (int h = 0; h < HourlyYear.HOURS; h++) {
      double most = Iso13788Vapour.saturationPressurePa(indoor(setpoint, h));
      hours += slowVapour[h] + excess[h] > humidity * most ? 1 : 0;
    }
    return hours;
  }

  double[] outdoor() {
    return outdoor.clone();
  }

  double[] slowOutdoor() {
    return slowOutdoor.clone();
  }

  double[] slowVapour() {
    return slowVapour.clone();
  }

  double[] indoor(double setpoint) {
    double[] indoor = new double[HourlyYear.HOURS];
    Arrays.setAll(indoor, h -> indoor(setpoint, h));
    return indoor;
  }

  private double indoor(double setpoint, int hour) {
    return Math.max(setpoint, slowOutdoor[hour] + rise);
  }

  /**
   * The air of a room.
   *
   * @param walls as its walls have it
   * @param panes as its panes have it
   */
  record AtSurfaces(HourlyAir walls, HourlyAir panes) {}

  /** A room at a set point [°C] with an excess of vapour [Pa] by outdoor temperature. */
  Room room(double setpoint, DoubleFunction<Range> excess) {
    double[] indoor = new double[HourlyYear.HOURS];
    Range[] above = new Range[HourlyYear.HOURS];
    for (int h = 0; h < HourlyYear.HOURS; h++) {
      indoor[h] = indoor(setpoint, h);
      above[h] = excess.apply(slowOutdoor[h]);
    }
    return new Room(indoor, above);
  }

  /** The air of a room, for its walls or for its panes, at one end of what is known of it. */
  final class Room {
    private final double[] indoor;
    private final Range[] above;

    private Room(double[] indoor, Range[] above) {
      this.indoor = indoor;
      this.above = above;
    }

    Ends walls() {
      return ends(slowOutdoor);
    }

    Ends panes() {
      return ends(outdoor);
    }

    private Ends ends(double[] outside) {
      return new Ends(
          air(outside, Range::low), air(outside, Range::likely), air(outside, Range::high));
    }

    private HourlyAir air(double[] outside, ToDoubleFunction<Range> end) {
      double[] vapour = new double[HourlyYear.HOURS];
      for (int h = 0; h < vapour.length; h++) {
        double most = Iso13788Vapour.saturationPressurePa(indoor[h]);
        vapour[h] = Math.min(most, slowVapour[h] + end.applyAsDouble(above[h]));
      }
      return new HourlyAir(indoor, vapour, outside);
    }
  }

  /**
   * The air with the least, the likely and the most vapour.
   *
   * @param low least
   * @param likely likely
   * @param high most
   */
  record Ends(HourlyAir low, HourlyAir likely, HourlyAir high) {}
}
