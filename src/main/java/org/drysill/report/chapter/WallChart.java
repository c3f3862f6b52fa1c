package org.drysill.report.chapter;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import org.drysill.assess.Unit;
import org.drysill.assess.elements.LayerKind;
import org.drysill.assess.elements.ProfilePoint;
import org.drysill.assess.elements.WallLayer;
import org.drysill.assess.elements.WallProfile;
import org.drysill.assess.elements.WallWithin;
import org.drysill.physics.Range;
import org.drysill.report.chart.Axis;
import org.drysill.report.chart.ChartSpec;
import org.drysill.report.chart.ChartText;
import org.drysill.report.chart.MonthLines;
import org.drysill.report.chart.WallLines;
import org.drysill.report.subject.Desk;
import org.drysill.report.words.Rounding;
import org.drysill.report.words.Words;

/** Temperature, and vapour against saturation, through a wall in its worst month. */
final class WallChart {
  private static final int INTERVALS = 4;
  private static final int NAME = 60;

  private WallChart() {}

  static ChartSpec of(Desk desk, WallWithin wall) {
    String title = title(wall);
    return new WallLines(
        new ChartText(
            title,
            "Room at the left, outside at the right",
            "Means of "
                + Words.month(wall.year().profile().month())
                + " at the likely values; layers in proportion to their thickness, thin ones"
                + " widened",
            title + ". " + alt(desk, wall)),
        wall.layers().stream().map(l -> layer(desk, l)).toList(),
        List.of(temperature(desk, wall.year().profile()), vapour(desk, wall.year().profile())));
  }

  private static String title(WallWithin wall) {
    String start =
        Words.capital(Words.shortened(wall.name(), NAME))
            + ": in "
            + Words.month(wall.year().profile().month());
    boolean settles = wall.year().profile().points().stream().anyMatch(ProfilePoint::settling);
    return settles
        ? start + " water settles " + wall.year().wet().get(0).where()
        : start + " the vapour stays below saturation";
  }

  private static String alt(Desk desk, WallWithin wall) {
    WallProfile p = wall.year().profile();
    ProfilePoint closest = p.points().get(1);
    for (ProfilePoint point : p.points().subList(1, Math.max(2, p.points().size() - 1))) {
      boolean closer =
          point.vapourPa() / point.saturationPa() > closest.vapourPa() / closest.saturationPa();
      closest = closer ? point : closest;
    }
    return "From "
        + desk.numbers().one(p.indoorC(), Unit.CELSIUS)
        + " in the room to "
        + desk.numbers().one(p.outdoorC(), Unit.CELSIUS)
        + " outside the layers are "
        + Words.list(wall.layers(), WallLayer::name)
        + ". Where the vapour comes closest to saturation it is "
        + desk.numbers().one(closest.temperatureC(), Unit.CELSIUS)
        + ", the vapour pressure "
        + desk.numbers().one(closest.vapourPa(), Unit.PASCAL)
        + " and saturation "
        + desk.numbers().one(closest.saturationPa(), Unit.PASCAL)
        + ".";
  }

  private static WallLines.Layer layer(Desk desk, WallLayer layer) {
    double thickness = layer.thicknessM().map(Range::likely).orElse(0.0);
    boolean sheet = layer.kind() == LayerKind.MEMBRANE;
    String size =
        sheet || thickness == 0
            ? ""
            : ", "
                + desk.numbers().plain(thickness * 1000, Unit.COUNT, Rounding.NEAREST)
                + "\u00a0mm";
    return new WallLines.Layer(layer.name() + size, sheet ? 0 : thickness, pattern(layer.kind()));
  }

  private static WallLines.Pattern pattern(LayerKind kind) {
    return switch (kind) {
      case MASONRY -> WallLines.Pattern.DIAGONAL;
      case INSULATION -> WallLines.Pattern.CROSSED;
      case MEMBRANE -> WallLines.Pattern.SOLID;
      case CAVITY -> WallLines.Pattern.EMPTY;
      case OTHER -> WallLines.Pattern.GROUND;
    };
  }

  private static WallLines.Panel temperature(Desk desk, WallProfile profile) {
    Lines lines = new Lines(desk, profile, Unit.CELSIUS);
    WallLines.Line line =
        lines.of(
            "temperature",
            profile.indoorC(),
            ProfilePoint::temperatureC,
            profile.outdoorC(),
            MonthLines.Style.MAIN);
    return lines.panel("Temperature", List.of(line), List.of());
  }

  private static WallLines.Panel vapour(Desk desk, WallProfile profile) {
    Lines lines = new Lines(desk, profile, Unit.PASCAL);
    List<ProfilePoint> points = profile.points();
    WallLines.Line saturation =
        lines.of(
            "saturation",
            points.get(0).saturationPa(),
            ProfilePoint::saturationPa,
            points.get(points.size() - 1).saturationPa(),
            MonthLines.Style.LIMIT);
    WallLines.Line vapour =
        lines.of(
            "vapour",
            profile.indoorPa(),
            ProfilePoint::vapourPa,
            profile.outdoorPa(),
            MonthLines.Style.MAIN);
    return lines.panel(
        "Vapour pressure",
        List.of(saturation, vapour),
        points.stream()
            .filter(ProfilePoint::settling)
            .map(p -> new WallLines.Mark("water settles", lines.point(p, p.vapourPa())))
            .limit(1)
            .toList());
  }

  /** Lines through a wall in one unit. */
  private record Lines(Desk desk, WallProfile profile, Unit unit) {
    WallLines.Line of(
        String label,
        double room,
        ToDoubleFunction<ProfilePoint> value,
        double outside,
        MonthLines.Style style) {
      return new WallLines.Line(
          label,
          desk.numbers().onAxis(room, unit),
          profile.points().stream().map(p -> point(p, value.applyAsDouble(p))).toList(),
          desk.numbers().onAxis(outside, unit),
          style);
    }

    WallLines.Point point(ProfilePoint at, double kept) {
      return new WallLines.Point(at.layer(), at.share(), desk.numbers().onAxis(kept, unit));
    }

    WallLines.Panel panel(String title, List<WallLines.Line> lines, List<WallLines.Mark> marks) {
      double[] values =
          lines.stream()
              .flatMapToDouble(
                  l ->
                      DoubleStream.concat(
                          DoubleStream.of(l.room(), l.outside()),
                          l.points().stream().mapToDouble(WallLines.Point::value)))
              .sorted()
              .toArray();
      return new WallLines.Panel(
          title + ", " + desk.numbers().unit(unit),
          Axis.around(values[0], values[values.length - 1], INTERVALS),
          lines,
          marks);
    }
  }
}
