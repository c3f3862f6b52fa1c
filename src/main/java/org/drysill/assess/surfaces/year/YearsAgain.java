package org.drysill.assess.surfaces.year;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.drysill.assess.OutdoorHours;
import org.drysill.assess.surfaces.SurfaceClass;
import org.drysill.physics.Range;
import org.drysill.physics.surface.MouldYear;
import org.drysill.physics.surface.PaneYear;
import org.drysill.reference.surfaces.SurfaceTables;

/**
 * Years of rooms once more, for a home or an indoor vapour that measures changed: what {@link
 * SurfaceYears} finds at the likely values, without words and workings. Safe for many threads.
 */
public final class YearsAgain {
  private final SurfaceTables tables;
  private final YearAir air;
  private final int start;

  /** For a home whose outdoor hours are known or made. */
  public YearsAgain(OutdoorHours hours, SurfaceTables tables) {
    this.tables = tables;
    this.air = YearRules.air(tables, hours);
    this.start = YearRules.start(hours);
  }

  /**
   * A place of a room.
   *
   * @param surface what may happen on it
   * @param factor its temperature factor [1]
   * @param material the survey's word for what it is made of
   */
  public record Place(SurfaceClass surface, double factor, Optional<String> material) {}

  /** Likely vapour excess by hour [Pa], of an excess by outdoor temperature [°C]. */
  public double[] excess(DoubleFunction<Range> excess) {
    return air.excess(excess);
  }

  /** What a pane of a room at a set point [°C] bears over the vapour outdoors, by hour [Pa]. */
  public double[] bears(double factor, double setpoint) {
    return air.bears(factor, setpoint);
  }

  /** The hour of the year at which surfaces are clean and dry: noon or midnight. */
  public int start() {
    return start;
  }

  /** When a pane counts as wet. */
  public PaneYear.Pane pane() {
    return YearRules.pane(tables, start);
  }

  /** Outdoor temperature by hour [°C], as panes follow it. */
  public double[] outdoorCelsius() {
    return air.outdoor();
  }

  /** The same as walls follow it [°C]. */
  public double[] slowCelsius() {
    return air.slowOutdoor();
  }

  /** Vapour pressure outdoors by hour as rooms follow it [Pa]. */
  public double[] slowVapourPa() {
    return air.slowVapour();
  }

  /** Temperature by hour of a room at a set point [°C]. */
  public double[] indoorCelsius(double setpoint) {
    return air.indoor(setpoint);
  }

  /**
   * The year of a room.
   *
   * @param setpoint indoor temperature while it is heated [°C]
   * @param excess its vapour excess by hour [Pa]
   * @param places its cold places
   * @param humid relative humidity from which its air counts as humid [1]
   */
  public RoomYear of(double setpoint, double[] excess, List<Place> places, double humid) {
    YearAir.AtSurfaces at = air.atSurfaces(setpoint, excess);
    PaneYear.Pane pane = pane();
    int mornings = 0;
    int hours = 0;
    double mould = 0;
    for (Place place : places) {
      if (place.surface() == SurfaceClass.OPAQUE) {
        MouldYear.Surface surface =
            YearRules.wall(tables, tables.hours().sensitivity(place.material()), start);
        mould = Math.max(mould, MouldYear.of(place.factor(), at.walls(), surface).peak());
      } else {
        PaneYear year = PaneYear.of(place.factor(), at.panes(), pane);
        mornings = Math.max(mornings, year.wetMornings());
        hours = Math.max(hours, year.wetHours());
      }
    }
    return new RoomYear(mornings, hours, mould, air.hoursAbove(humid, setpoint, excess));
  }
}
