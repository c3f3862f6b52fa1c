package org.drysill.assess.surfaces;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.assess.surfaces.months.MonthNames;
import org.drysill.assess.surfaces.months.MonthRow;
import org.drysill.assess.surfaces.months.MonthTable;
import org.drysill.physics.Range;
import org.drysill.physics.surface.GlassCondensate;
import org.drysill.reference.Citation;
import org.drysill.reference.How;
import org.drysill.reference.surfaces.SurfaceDefaults;
import org.drysill.survey.Window;
import org.drysill.yaml.Quantity;

/** Water that settles on a pane in the coldest kind of night of the year, an upper bound. */
final class PaneWater {
  private static final double SECONDS_PER_HOUR = 3600;
  private static final Citation LEWIS =
      new Citation(
          "Lewis relation between heat and vapour transfer",
          Optional.empty(),
          Optional.of("β = 7·10⁻⁹ · hc, in the form of Hens and of Künzel"),
          How.MEMORY);

  private PaneWater() {}

  /** Water in that night [kg]; empty where the size of the window is not known. */
  static Optional<Figure> of(
      String place, Window window, MonthTable months, SurfaceDefaults defaults) {
    MonthRow night =
        months.rows().stream().min(Comparator.comparingDouble(MonthRow::outdoor)).orElseThrow();
    return area(window).map(a -> figure(place, a, night, defaults));
  }

  private static Optional<Range> area(Window window) {
    return window
        .width()
        .map(Quantity::range)
        .flatMap(w -> window.height().map(h -> w.times(h.range())));
  }

  private static Figure figure(String place, Range area, MonthRow night, SurfaceDefaults defaults) {
    Range film = defaults.paneFilm().range();
    double seconds = defaults.condensateHours().likely() * SECONDS_PER_HOUR;
    Range vapour = night.vapourPressure();
    Range surface = night.surface();
    Range rate =
        new Range(
            GlassCondensate.rateKgM2S(vapour.low(), surface.high(), film.low()),
            GlassCondensate.rateKgM2S(vapour.likely(), surface.likely(), film.likely()),
            GlassCondensate.rateKgM2S(vapour.high(), surface.low(), film.high()));
    List<Input> inputs =
        List.of(
            Input.of("pi", "vapour indoors", vapour, Unit.PASCAL, Basis.CALCULATED),
            Input.of("Tsi", "pane", surface, Unit.CELSIUS, Basis.CALCULATED),
            Input.of("A", "area of the opening", area, Unit.SQUARE_METRE, Basis.MEASURED),
            Input.of("t", "hours", defaults.condensateHours().range(), Unit.HOURS, Basis.ASSUMED),
            Input.of("hc", "film", film, Unit.U_VALUE, Basis.PUBLISHED));
    return new Figure(
        "surface." + place + ".night_water",
        "water on the pane in a cold night, at most",
        rate.times(seconds).times(area),
        Unit.KILOGRAM,
        Basis.CALCULATED,
        () ->
            new Working(
                "m = 7·10⁻⁹ · hc · max(0, pi - ps(Tsi)) · A · t · 3600 s/h",
                inputs,
                List.of(LEWIS, defaults.condensateHours().source(), defaults.paneFilm().source()),
                Optional.of(
                    "A cold night of "
                        + MonthNames.of(night.month())
                        + ". An upper bound: the room's air stays as moist as it is, the frame"
                        + " counts as glass, and the warmth that water gives to the pane is left"
                        + " out, 25 to 30 % in itself.")));
  }
}
