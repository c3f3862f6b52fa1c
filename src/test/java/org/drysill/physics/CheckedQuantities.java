package org.drysill.physics;

import com.hummeling.if97.IF97;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import org.drysill.physics.air.Iso13788Vapour;
import org.drysill.physics.air.MoistAir;
import org.drysill.physics.air.WetBulb;
import org.drysill.physics.energy.DegreeDays;
import org.drysill.physics.energy.VentilationHeat;
import org.drysill.physics.flow.TracerGas;
import org.drysill.physics.moisture.ContinentalIndoorClimate;
import org.drysill.physics.moisture.ContinentalIndoorClimate.Occupancy;
import org.drysill.physics.moisture.HumidityClass;
import org.drysill.physics.moisture.TransientVapour;
import org.drysill.physics.moisture.VapourBalance;
import org.drysill.physics.recovery.RecoveryRatio;
import org.drysill.physics.recovery.Sleeve;
import org.drysill.physics.recovery.SupplyHalfCycle;
import org.drysill.physics.surface.GlassCondensate;
import org.drysill.physics.surface.Iso10077Window;
import org.drysill.physics.surface.Iso13788Surface;
import org.drysill.physics.surface.Iso6946;
import org.drysill.physics.surface.TemperatureFactor;

/** How each quantity of the reference table is worked out here, in the unit of its rows. */
final class CheckedQuantities {
  private static final double SEA_LEVEL = MoistAir.STANDARD_PRESSURE_PA;

  /** The pack's invented year: outdoor temperature [°C] and relative humidity [%] by month. */
  private static final double[][] UK_LIKE_12 = {
    {4.5, 86}, {4.7, 83}, {6.6, 80}, {8.9, 77}, {12.0, 76}, {14.8, 76},
    {16.8, 76}, {16.6, 78}, {14.2, 81}, {10.9, 84}, {7.3, 87}, {5.0, 87}
  };

  private CheckedQuantities() {}

  static Map<String, ToDoubleFunction<CheckRow>> all() {
    Map<String, ToDoubleFunction<CheckRow>> all = new LinkedHashMap<>();
    saturation(all);
    moistAir(all);
    wetBulb(all);
    balance(all);
    indoorClimate(all);
    tracer(all);
    surfaces(all);
    layers(all);
    requiredFactors(all);
    recovery(all);
    sleeve(all);
    heat(all);
    CheckedWaterAndMould.into(all, UK_LIKE_12);
    return all;
  }

  private static void saturation(Map<String, ToDoubleFunction<CheckRow>> all) {
    all.put("psat_HylandWexler", r -> HylandWexler.saturationPressurePa(r.in("T_C")));
    all.put("psat_IAPWS_IF97", r -> if97Pa(r.in("T_C")));
    all.put("psat_ISO13788", r -> Iso13788Vapour.saturationPressurePa(r.in("T_C")));
    all.put("psat_table", r -> Iso13788Vapour.saturationPressurePa(r.in("T_C")));
    all.put("dewpoint_ISO13788_inverse", r -> Iso13788Vapour.dewPointCelsius(r.in("p_Pa")));
    all.put(
        "roundtrip_dewpoint",
        r -> Iso13788Vapour.dewPointCelsius(Iso13788Vapour.saturationPressurePa(r.in("T_C"))));
  }

  static double if97Pa(double celsius) {
    return new IF97(IF97.UnitSystem.SI).saturationPressureT(celsius + 273.15);
  }

  private static void moistAir(Map<String, ToDoubleFunction<CheckRow>> all) {
    all.put("vapour_pressure", CheckedQuantities::vapourPressure);
    all.put("dewpoint", r -> MoistAir.dewPointCelsius(r.in("T_C"), r.in("RH_pct") / 100));
    all.put("humidity_ratio", r -> ratio(r) * 1000);
    all.put("humidity_ratio_saturated", CheckedQuantities::ratio);
    all.put("abs_humidity", CheckedQuantities::gramPerM3);
    all.put("abs_humidity_saturated", CheckedQuantities::gramPerM3);
    all.put("enthalpy", r -> MoistAir.enthalpyJKg(r.in("T_C"), ratio(r)) / 1000);
    all.put("enthalpy_saturated", r -> MoistAir.enthalpyJKg(r.in("T_C"), ratio(r)) / 1000);
    all.put("specific_volume", r -> MoistAir.specificVolumeM3Kg(r.in("T_C"), ratio(r), SEA_LEVEL));
    all.put(
        "specific_volume_saturated",
        r -> MoistAir.specificVolumeM3Kg(r.in("T_C"), ratio(r), SEA_LEVEL));
    all.put("moist_air_density", r -> MoistAir.densityKgM3(r.in("T_C"), ratio(r), SEA_LEVEL));
    all.put("wetbulb", r -> WetBulb.celsius(r.in("T_C"), r.in("RH_pct") / 100, SEA_LEVEL));
    all.put("air_heat_capacity", r -> MoistAir.heatCapacityJM3K(r.in("T_C"), 0, SEA_LEVEL) / 1000);
  }

  private static void wetBulb(Map<String, ToDoubleFunction<CheckRow>> all) {
    all.put("humidity_ratio_from_wetbulb", CheckedQuantities::bulbRatio);
    all.put("enthalpy_from_wetbulb", r -> MoistAir.enthalpyJKg(r.in("T_C"), bulbRatio(r)) / 1000);
    all.put("dewpoint_from_wetbulb", r -> Iso13788Vapour.dewPointCelsius(bulbPressure(r)));
    all.put("RH_from_wetbulb", r -> MoistAir.relativeHumidity(r.in("T_C"), bulbPressure(r)) * 100);
    all.put(
        "specific_volume_from_wetbulb",
        r -> MoistAir.specificVolumeM3Kg(r.in("T_C"), bulbRatio(r), SEA_LEVEL));
  }

  private static void balance(Map<String, ToDoubleFunction<CheckRow>> all) {
    all.put("vapour_removed_per_m3", r -> removedKgM3(r) * 1000);
    all.put("vapour_removed_flow", r -> removedKgM3(r) * 1000 * r.in("qv_m3h"));
    all.put(
        "water_removed_per_kg_air",
        r -> (ratio(r.in("Ti_C"), r.in("RHi_pct")) - ratio(r.in("Te_C"), r.in("RHe_pct"))) * 1000);
    all.put(
        "moisture_added_mass",
        r ->
            new TransientVapour(1, 0, 1).contentKgM3(0, 0, peopleKgS(r), r.in("hours") * 3600)
                * 1000);
    all.put(
        "moisture_added_concentration",
        r ->
            new TransientVapour(r.in("V_m3"), 0, 1)
                    .contentKgM3(0, 0, peopleKgS(r), r.in("hours") * 3600)
                * 1000);
    all.put(
        "vapour_excess",
        r ->
            VapourBalance.excessKgM3(
                    r.in("G_kg_day") / 86400,
                    Airflow.ofAirChange(r.in("n_1h"), r.in("V_m3")).m3PerSecond())
                * 1000);
    all.put(
        "vapour_pressure_excess",
        r ->
            VapourBalance.pressureExcessPa(
                r.in("dv_g_m3") / 1000,
                r.in("T_mean_K") - 273.15 + 10,
                r.in("T_mean_K") - 273.15 - 10));
    all.put("min_ventilation_for_RH", CheckedQuantities::requiredFlow);
    all.put(
        "transient_vapour",
        r ->
            new TransientVapour(
                        r.in("V_m3"),
                        Airflow.ofAirChange(r.in("n_1h"), r.in("V_m3")).m3PerSecond(),
                        r.in("M"))
                    .contentKgM3(
                        r.in("v0_g_m3") / 1000,
                        r.in("ve_g_m3") / 1000,
                        r.in("G_g_h") / 3.6e6,
                        r.in("t_h") * 3600)
                * 1000);
  }

  private static void indoorClimate(Map<String, ToDoubleFunction<CheckRow>> all) {
    all.put(
        "humidity_class_limit_dp",
        r -> humidityClass(r.in("class_upper")).upperLimitPa(r.in("Te_C")).orElseThrow());
    all.put(
        "humidity_class_limit_dv",
        r -> humidityClass(r.in("class_upper")).upperLimitKgM3(r.in("Te_C")).orElseThrow() * 1000);
    all.put(
        "humidity_class",
        r -> HumidityClass.of(r.in("dp_Pa"), r.in("Te_C")).orElseThrow().number());
    all.put("indoor_T_continental", r -> ContinentalIndoorClimate.temperatureCelsius(r.in("Te_C")));
    all.put(
        "indoor_RH_continental",
        r ->
            ContinentalIndoorClimate.relativeHumidity(
                    r.in("Te_C"),
                    r.text("occupancy").equals("high") ? Occupancy.HIGH : Occupancy.NORMAL)
                * 100);
  }

  private static void tracer(Map<String, ToDoubleFunction<CheckRow>> all) {
    all.put(
        "air_change_decay",
        r ->
            TracerGas.airChangeOfDecayPerHour(
                r.in("C0_ppm") * 1e-6,
                r.in("C1_ppm") * 1e-6,
                r.in("Cbg_ppm") * 1e-6,
                r.in("dt_h")));
    all.put(
        "air_change_decay_vapour",
        r ->
            r.in("M")
                * TracerGas.airChangeOfDecayPerHour(
                    r.in("v0_g_m3"), r.in("v1_g_m3"), r.in("ve_g_m3"), r.in("dt_h")));
    all.put(
        "ventilation_steady_CO2",
        r ->
            TracerGas.steadyFlowM3S(
                    r.in("G_L_s") / 1000, r.in("C_ppm") * 1e-6, r.in("Cbg_ppm") * 1e-6)
                * 1000);
    all.put(
        "CO2_rate_person",
        r ->
            TracerGas.personEmissionM3S(
                    r.in("BMR_MJ_day"), r.in("met"), r.in("T_K") - 273.15, r.in("P_kPa") * 1000)
                * 1000);
  }

  private static void surfaces(Map<String, ToDoubleFunction<CheckRow>> all) {
    all.put(
        "fRsi", r -> TemperatureFactor.fromTemperatures(r.in("Tsi_C"), r.in("Ti_C"), r.in("Te_C")));
    all.put(
        "glass_centre_fRsi",
        r -> TemperatureFactor.fromUValue(r.in("Ug_W_m2K"), r.in("Rsi_m2K_W")));
    all.put("fRsi_wall", r -> TemperatureFactor.fromUValue(r.in("U_W_m2K"), 0.13, r.in("Rsi")));
    all.put("pane_surface_T", CheckedQuantities::paneCelsius);
    all.put(
        "pane_condensation_RH",
        r ->
            Iso13788Surface.highestIndoorHumidity(paneFactor(r), r.in("Ti_C"), r.in("Te_C"), 1)
                * 100);
    all.put(
        "pane_condensation_onset_Te",
        r ->
            Iso13788Surface.onsetOutdoorCelsius(
                    pressure(r.in("Ti_C"), r.in("RH_pct")), 1, r.in("Ti_C"), paneFactor(r))
                .orElseThrow());
    all.put(
        "surface_T_for_80pct", r -> Iso13788Surface.coldestSurfaceCelsius(vapourPressure(r), 0.8));
    all.put(
        "pane_condensation_rate",
        r ->
            GlassCondensate.rateKgM2S(
                    pressure(r.in("Ti_C"), r.in("RH_pct")), r.in("Tsi_C"), r.in("hc_W_m2K"))
                * 3.6e6);
    all.put("pane_condensate_night", CheckedQuantities::paneNight);
    all.put(
        "window_Uw",
        r ->
            new Iso10077Window(
                    r.in("Ag_m2"), r.in("Ug"), r.in("Af_m2"), r.in("Uf"), r.in("lg_m"), r.in("psi"))
                .uValue());
  }

  /** Wall W1 of the table: plasterboard, mineral wool, brick between still air and wind. */
  private static final List<Double> W1 =
      List.of(
          Iso6946.layerResistance(0.0125, 0.25),
          Iso6946.layerResistance(0.050, 0.035),
          Iso6946.layerResistance(0.215, 0.77));

  private static void layers(Map<String, ToDoubleFunction<CheckRow>> all) {
    all.put("glaser_RT", r -> 1 / Iso6946.uValue(0.13, W1, 0.04));
    all.put("glaser_interface_T", r -> behindInsulation(r.in("Ti"), r.in("Te")));
    all.put(
        "glaser_interface_psat",
        r -> Iso13788Vapour.saturationPressurePa(behindInsulation(20, -5)));
  }

  /** Temperature between insulation and brick: all before it takes the part of a film. */
  private static double behindInsulation(double indoor, double outdoor) {
    double before = 0.13 + W1.get(0) + W1.get(1);
    double factor = TemperatureFactor.fromUValue(Iso6946.uValue(0.13, W1, 0.04), before, before);
    return TemperatureFactor.surfaceCelsius(factor, indoor, outdoor);
  }

  private static void requiredFactors(Map<String, ToDoubleFunction<CheckRow>> all) {
    all.put(
        "monthly_fRsi_min",
        r ->
            requiredFactor(
                humidityClass(r.in("class")),
                r.in("Te_C"),
                r.in("RHe_pct"),
                r.in("Ti_C"),
                r.in("phi_si")));
    all.put(
        "annual_fRsi_max",
        r ->
            Arrays.stream(UK_LIKE_12)
                .mapToDouble(
                    m ->
                        requiredFactor(humidityClass(r.in("class")), m[0], m[1], r.in("Ti_C"), 0.8))
                .max()
                .orElseThrow());
  }

  private static void recovery(Map<String, ToDoubleFunction<CheckRow>> all) {
    all.put("hr_efficiency", r -> RecoveryRatio.supply(r.in("Ti_C"), r.in("To_C"), r.in("Tsu_C")));
    all.put(
        "hr_efficiency_cycle",
        r ->
            SupplyHalfCycle.meanRatio(samples(r.text("Tsu_series_C")), r.in("Ti_C"), r.in("To_C")));
    all.put(
        "hr_efficiency_u",
        r -> {
          double u = r.in("u_each_K");
          return RecoveryRatio.uncertainty(r.in("eta"), r.in("dT_K"), u, u, u);
        });
    all.put(
        "hr_min_dT",
        r -> {
          double u = r.in("u_each_K");
          return TemperatureRatio.differenceForUncertainty(r.in("eta"), r.in("target_u"), u, u, u);
        });
    all.put(
        "hr_effective_unbalanced",
        r ->
            RecoveryRatio.effectiveUnderUnbalance(
                r.in("eta"),
                Airflow.m3PerHour(r.in("q_sup")).m3PerSecond(),
                Airflow.m3PerHour(r.in("q_ext")).m3PerSecond()));
  }

  private static void sleeve(Map<String, ToDoubleFunction<CheckRow>> all) {
    all.put(
        "sleeve_axial_conductance",
        r -> new Sleeve(r.in("lambda"), r.in("D_m"), r.in("t_m"), r.in("L_m")).axialConductance());
    all.put(
        "sleeve_inner_end_f",
        r ->
            Sleeve.innerEndFactor(
                r.in("K_W_K"), r.in("hi") * r.in("Ai_m2"), r.in("he") * r.in("Ae_m2")));
    all.put(
        "fin_parameter_m",
        r -> new Sleeve(r.in("lambda"), 0.16, r.in("t_m"), 0.3).finParameter(r.in("h")));
  }

  private static void heat(Map<String, ToDoubleFunction<CheckRow>> all) {
    all.put("ventilation_loss_coeff", CheckedQuantities::lossCoefficient);
    all.put(
        "degree_days",
        r ->
            DegreeDays.ofHours(
                DoubleStream.generate(() -> r.in("Te_C")).limit((long) r.in("hours")),
                r.in("base_C")));
    all.put("ventilation_heat_year", r -> VentilationHeat.heatKwh(r.in("H_W_K"), r.in("HDD")));
    all.put(
        "heat_recovered_year",
        r -> VentilationHeat.heatKwh(lossCoefficient(r), r.in("HDD")) * r.in("eta"));
  }

  private static double lossCoefficient(CheckRow r) {
    double m3h = r.in("q_m3h", r.in("n_1h", 0) * r.in("V_m3", 0));
    return VentilationHeat.lossCoefficientWK(
        Airflow.m3PerHour(m3h).m3PerSecond(), r.in("c") * 3600);
  }

  private static List<SupplyHalfCycle.Sample> samples(String series) {
    return Arrays.stream(series.split("\\|", -1))
        .map(s -> SupplyHalfCycle.Sample.of(Double.parseDouble(s)))
        .toList();
  }

  private static double requiredFactor(
      HumidityClass c, double te, double rhe, double ti, double highest) {
    double indoor = pressure(te, rhe) + c.upperLimitPa(te).orElseThrow();
    return Iso13788Surface.requiredFactor(indoor, highest, ti, te).orElseThrow();
  }

  private static HumidityClass humidityClass(double number) {
    return Arrays.stream(HumidityClass.values())
        .filter(c -> c.number() == number)
        .findFirst()
        .orElseThrow();
  }

  private static double paneFactor(CheckRow r) {
    return TemperatureFactor.fromUValue(r.in("Ug_W_m2K"), r.in("Rsi", 0.13));
  }

  private static double paneCelsius(CheckRow r) {
    return TemperatureFactor.surfaceCelsius(paneFactor(r), r.in("Ti_C"), r.in("Te_C"));
  }

  private static double paneNight(CheckRow r) {
    double surface =
        TemperatureFactor.surfaceCelsius(
            TemperatureFactor.fromUValue(r.in("Ug"), 0.13), r.in("Ti_C"), r.in("Te_C"));
    double rate =
        GlassCondensate.rateKgM2S(pressure(r.in("Ti_C"), r.in("RH_pct")), surface, r.in("hc"));
    return rate * r.in("A_m2") * r.in("hours") * 3.6e6;
  }

  private static double requiredFlow(CheckRow r) {
    double ceiling = content(r.in("Ti_C"), r.in("RHi_max_pct"));
    double outdoor = content(r.in("Te_C"), r.in("RHe_pct"));
    return VapourBalance.requiredFlowM3S(r.in("G_g_h") / 3.6e6, ceiling, outdoor).orElseThrow()
        * 3600;
  }

  private static double peopleKgS(CheckRow r) {
    return r.in("persons") * r.in("g_per_h") / 3.6e6;
  }

  private static double removedKgM3(CheckRow r) {
    return content(r.in("Ti_C"), r.in("RHi_pct")) - content(r.in("Te_C"), r.in("RHe_pct"));
  }

  private static double bulbRatio(CheckRow r) {
    return WetBulb.humidityRatio(r.in("T_C"), r.in("Twb_C"), SEA_LEVEL);
  }

  private static double bulbPressure(CheckRow r) {
    return MoistAir.vapourPressureOfRatioPa(bulbRatio(r), SEA_LEVEL);
  }

  private static double vapourPressure(CheckRow r) {
    return pressure(r.in("T_C"), r.in("RH_pct", 100));
  }

  private static double gramPerM3(CheckRow r) {
    return content(r.in("T_C"), r.in("RH_pct", 100)) * 1000;
  }

  private static double ratio(CheckRow r) {
    return ratio(r.in("T_C"), r.in("RH_pct", 100));
  }

  private static double pressure(double celsius, double percent) {
    return MoistAir.vapourPressurePa(celsius, percent / 100);
  }

  private static double content(double celsius, double percent) {
    return MoistAir.vapourContentKgM3(celsius, pressure(celsius, percent));
  }

  private static double ratio(double celsius, double percent) {
    return MoistAir.humidityRatio(pressure(celsius, percent), SEA_LEVEL);
  }
}
