package org.drysill.physics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.drysill.physics.air.MoistAir;
import org.drysill.physics.layers.Element;
import org.drysill.physics.layers.Iso13788Element;
import org.drysill.physics.layers.MonthClimate;
import org.drysill.physics.layers.MonthWater;
import org.drysill.physics.layers.Slice;
import org.drysill.physics.layers.VapourLine;
import org.drysill.physics.moisture.HumidityClass;
import org.drysill.physics.mould.MouldGrowth;
import org.drysill.physics.mould.MouldIndex;
import org.drysill.physics.mould.MouldSensitivity;

/** How the quantities of water within elements and of mould are worked out here. */
final class CheckedWaterAndMould {
  private static final List<String> MONTHS =
      List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");
  private static final double[] DAYS = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  private static final double PERIOD_DAYS = 90;

  private CheckedWaterAndMould() {}

  static void into(Map<String, ToDoubleFunction<CheckRow>> all, double[][] year) {
    all.put("glaser_condensed_90d", CheckedWaterAndMould::condensed);
    all.put("glaser_evaporation_90d", CheckedWaterAndMould::evaporated);
    all.put("glaser_monthly_Ma", r -> month(r, year).storedKgM2());
    all.put("glaser_monthly_gc", r -> total(month(r, year)));
    all.put("sd_to_Z", r -> r.in("sd_m") / permeability(r) * 1e-9);
    all.put("VTT_RHcrit", r -> MouldGrowth.criticalHumidity(r.in("T_C"), surface(r)));
    all.put(
        "VTT_weeks_to_M1",
        r ->
            MouldGrowth.weeksToFirstGrowth(
                r.in("T_C"), r.in("RH_pct"), MouldSensitivity.VERY_SENSITIVE));
    all.put("VTT_Mmax", r -> MouldGrowth.highestIndex(r.in("T_C"), r.in("RH_pct"), surface(r)));
    all.put(
        "VTT_growth_rate",
        r -> MouldGrowth.ratePerDay(r.in("T_C"), r.in("RH_pct"), r.in("M"), surface(r)));
    all.put("VTT_M_after", r -> after(r, MouldIndex.CLEAN, r.in("T_C"), r.in("RH_pct"), 1));
    all.put("VTT_decline", r -> after(r, new MouldIndex(r.in("M0"), 0), 20, 50, r.in("Cmat")));
  }

  private static double permeability(CheckRow row) {
    return row.text("d0").equals("SBi224") ? 1 / 5.5e9 : row.in("d0");
  }

  private static double after(
      CheckRow row, MouldIndex start, double celsius, double humidity, double decline) {
    double hours = row.in("hours_dry", row.in("days", 0) * 24);
    MouldIndex index = start;
    for (int hour = 0; hour < hours; hour++) {
      index = index.after(celsius, humidity, surface(row), decline);
    }
    return index.value();
  }

  private static MouldSensitivity surface(CheckRow row) {
    return switch (row.inputs().getOrDefault("class", "sensitive")) {
      case "sensitive_or_very", "sensitive" -> MouldSensitivity.SENSITIVE;
      default -> MouldSensitivity.valueOf(row.text("class").toUpperCase(Locale.ROOT));
    };
  }

  private static Element wall(CheckRow row) {
    List<Slice> layers = new ArrayList<>();
    layers.add(Slice.of(0.0125, 0.25, 10));
    if (!row.text("wall").contains("without VCL")) {
      layers.add(new Slice(0, 2));
    }
    layers.add(Slice.of(0.05, 0.035, 1));
    layers.add(Slice.of(0.215, 0.77, 10));
    return Element.of(layers, 0.13, 0.04);
  }

  private static double condensed(CheckRow row) {
    Element wall = wall(row);
    MonthClimate winter = new MonthClimate(20, row.in("pi"), -5, row.in("pe"), PERIOD_DAYS);
    return total(Iso13788Element.month(wall, winter, new double[wall.planes()]));
  }

  /** The period balance takes the saturation at the wet plane from its own table. */
  private static double evaporated(CheckRow row) {
    Element wall = wall(row);
    int planes = wall.planes();
    int wet =
        IntStream.range(0, planes).filter(k -> isBehindWool(wall, k)).findFirst().orElseThrow();
    boolean[] water = new boolean[planes];
    water[wet] = true;
    double[] saturation = new double[planes];
    Arrays.fill(saturation, row.in("psat"));
    double[] airLayer = IntStream.range(0, planes).mapToDouble(wall::airLayerM).toArray();
    double inside = row.in("pi", 1200);
    VapourLine line = VapourLine.drawn(airLayer, saturation, inside, row.in("pe", inside), water);
    return -line.rateKgM2S(wet) * PERIOD_DAYS * 86_400;
  }

  private static boolean isBehindWool(Element wall, int plane) {
    return Math.abs(wall.resistanceTo(plane) - 0.0125 / 0.25 - 0.05 / 0.035) < 1e-9;
  }

  private static MonthWater month(CheckRow row, double[][] year) {
    List<MonthClimate> climate =
        IntStream.range(0, MONTHS.size()).mapToObj(m -> classThree(year[m], DAYS[m])).toList();
    Iso13788Element.Year water = Iso13788Element.year(wall(row), climate);
    int asked = MONTHS.indexOf(row.text("month"));
    return water.months().get(Math.floorMod(asked - water.first(), MONTHS.size()));
  }

  private static MonthClimate classThree(double[] air, double days) {
    double outdoor = MoistAir.vapourPressurePa(air[0], air[1] / 100);
    double excess = HumidityClass.CLASS_3.upperLimitPa(air[0]).orElseThrow();
    return new MonthClimate(20, outdoor + excess, air[0], outdoor, days);
  }

  private static double total(MonthWater month) {
    return IntStream.range(0, month.planes()).mapToDouble(month::gainedKgM2).sum();
  }
}
