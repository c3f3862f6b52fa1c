package org.drysill.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.drysill.physics.energy.FanEnergy;
import org.drysill.physics.energy.VentilationHeat;
import org.drysill.physics.flow.Aim2;
import org.drysill.physics.flow.Bs5925;
import org.drysill.physics.flow.Iso13789Infiltration;
import org.drysill.physics.flow.LblBasicModel;
import org.drysill.physics.flow.LeakageDivisor;
import org.drysill.physics.flow.LeakagePowerLaw;
import org.drysill.physics.flow.LowPressureTest;
import org.drysill.physics.flow.NormalizedLeakage;
import org.drysill.physics.flow.Orifice;
import org.drysill.physics.flow.RoundDuct;
import org.drysill.physics.flow.WindowAiring;
import org.drysill.physics.recovery.RecoveryRatio;
import org.drysill.reference.WorkedExample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The worked rows of {@code reference/ventilation_examples.csv} that are physics alone; those of
 * the rule sets are tested where the rules are. Coefficients of tables stand here as printed beside
 * the formula: ASHRAE Handbook Fundamentals basic and enhanced model, Sherman 1987, EN ISO 13789
 * Table C.4, the Finnish energy decree section 17 (seen), all others from memory.
 */
public class VentilationExamplesTest {
  private static final Map<String, Function<WorkedExample, Map<String, Double>>> WORKED = worked();

  static List<WorkedExample> examples() {
    return WorkedExample.all().stream().filter(e -> WORKED.containsKey(e.id())).toList();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("examples")
  void a_worked_example_holds(WorkedExample example) {
    Map<String, Double> found = WORKED.get(example.id()).apply(example);
    assertThat(found).containsOnlyKeys(example.expected().keySet());
    found.forEach(
        (key, value) -> {
          String printed = number(example.expected().get(key));
          assertThat(value)
              .as(key)
              .isCloseTo(Double.parseDouble(printed), within(example.allowance(printed)));
        });
  }

  @Test
  void every_example_that_is_worked_here_stands_in_the_table() {
    assertThat(examples()).hasSameSizeAs(WORKED.keySet()).hasSize(16);
  }

  @Test
  void the_table_holds_all_its_45_rows() {
    assertThat(WorkedExample.all())
        .hasSize(45)
        .extracting(WorkedExample::id)
        .startsWith("E01")
        .endsWith("E45")
        .doesNotHaveDuplicates();
  }

  /** The rows that are worked here. */
  public static Set<String> ids() {
    return WORKED.keySet();
  }

  private static Map<String, Function<WorkedExample, Map<String, Double>>> worked() {
    Map<String, Function<WorkedExample, Map<String, Double>>> all = new LinkedHashMap<>();
    all.put(
        "E14",
        e ->
            Map.of(
                "ach", Airflow.litresPerSecond(e.in("l_s")).airChangePerHour(e.in("volume_m3"))));
    all.put("E15", VentilationExamplesTest::trickle);
    all.put("E20", VentilationExamplesTest::normalizedLeakage);
    all.put("E30", VentilationExamplesTest::divisors);
    all.put(
        "E31",
        e -> Map.of("l_s", LeakageDivisor.flowM3S(e.in("q50"), e.in("envelope_m2"), 24) * 1000));
    all.put(
        "E32",
        e ->
            Map.of(
                "l_s",
                new LblBasicModel(0.00029, 0.000231)
                        .flowM3S(e.in("AL_cm2") * 1e-4, e.in("dT"), e.in("U"))
                    * 1000));
    all.put("E33", VentilationExamplesTest::enhanced);
    all.put("E34", VentilationExamplesTest::singleSided);
    all.put("E35", VentilationExamplesTest::airing);
    all.put("E36", VentilationExamplesTest::duct);
    all.put("E37", VentilationExamplesTest::alternating);
    all.put("E38", VentilationExamplesTest::fanPower);
    all.put("E39", VentilationExamplesTest::recovery);
    all.put(
        "E41",
        e -> Map.of("l_s_m2", Airflow.ofAirChange(e.in("ach"), e.in("h")).litresPerSecond()));
    all.put(
        "E42",
        e ->
            Map.of(
                "q50_over_20",
                LeakageDivisor.airChangePerHour(e.in("q50"), LeakageDivisor.KRONVALL_PERSILY),
                "pulse_ach",
                LowPressureTest.airChangePerHour(e.in("q4"))));
    all.put("E43", VentilationExamplesTest::unbalanced);
    return all;
  }

  private static Map<String, Double> trickle(WorkedExample e) {
    Orifice orifice = new Orifice(e.in("cd"), e.in("ea_mm2") * 1e-6);
    double rho = e.in("rho");
    return Map.of(
        "l_s_1Pa", orifice.flowM3S(1, rho) * 1000,
        "l_s_2Pa", orifice.flowM3S(2, rho) * 1000,
        "l_s_10Pa", orifice.flowM3S(10, rho) * 1000,
        "l_s_1Pa_cd062", new Orifice(0.62, orifice.areaM2()).flowM3S(1, rho) * 1000);
  }

  /** Full form in US units; ELA [in²] is 0.055 × Q50 [cfm], (H/Hr)^0.4 is the factor by storeys. */
  private static Map<String, Double> normalizedLeakage(WorkedExample e) {
    double ft2 = 0.3048 * 0.3048;
    double in2 = ft2 / 144;
    double cfm = Airflow.cubicFeetPerMinute(1).m3PerSecond();
    double area = 0.055 * e.in("Q50_cfm") * in2;
    double floor = e.in("floor_ft2") * ft2;
    double leakage = NormalizedLeakage.of(area, floor, e.in("storeys"));
    double flow = NormalizedLeakage.flowM3S(leakage, e.in("wsf"), floor, 7.3 * ft2 / cfm);
    return Map.of("ELA_in2", area / in2, "Qinf_cfm", flow / cfm);
  }

  private static Map<String, Double> divisors(WorkedExample e) {
    double sherman = LeakageDivisor.sherman(e.in("C"), 0.8, 1, 1);
    return Map.of(
        "div20", LeakageDivisor.airChangePerHour(e.in("n50"), LeakageDivisor.KRONVALL_PERSILY),
        "N", sherman,
        "n_inf", LeakageDivisor.airChangePerHour(e.in("n50"), sherman));
  }

  private static Map<String, Double> enhanced(WorkedExample e) {
    Aim2 model = new Aim2(0.078, 0.17, 0.7, 0.59);
    LeakagePowerLaw leakage = new LeakagePowerLaw(e.in("c"), e.in("n"));
    return Map.of(
        "Qs_l_s", model.stackM3S(leakage, e.in("dT")) * 1000,
        "Qw_l_s", model.windM3S(leakage, e.in("Umet")) * 1000,
        "Q_l_s", model.flowM3S(leakage, e.in("dT"), e.in("Umet")) * 1000);
  }

  private static Map<String, Double> singleSided(WorkedExample e) {
    double mean = e.in("Tmean") - Temperature.ZERO_CELSIUS_K;
    double half = e.in("dT") / 2;
    double wind = Bs5925.singleSidedWindM3S(e.in("A"), e.in("U"));
    double stack =
        Bs5925.singleSidedStackM3S(
            new Orifice(0.61, e.in("A")), e.in("H"), mean + half, mean - half);
    return Map.of(
        "wind_ach", Airflow.m3PerSecond(wind).airChangePerHour(e.in("V")),
        "stack_ach", Airflow.m3PerSecond(stack).airChangePerHour(e.in("V")));
  }

  private static Map<String, Double> airing(WorkedExample e) {
    return Map.of(
        "en16798_7_m3_h",
        WindowAiring.en16798M3S(e.in("A"), e.in("h"), e.in("dT"), e.in("u")) * 3600,
        "phaff_m3_h",
        WindowAiring.en15242M3S(e.in("A"), e.in("h"), e.in("dT"), e.in("u")) * 3600);
  }

  private static Map<String, Double> duct(WorkedExample e) {
    double flow = e.in("q_l_s") / 1000;
    RoundDuct smooth = new RoundDuct(e.in("D_mm") / 1000, 0.03e-3);
    RoundDuct flexible = new RoundDuct(smooth.diameterM(), 3e-3);
    RoundDuct.Air air = RoundDuct.Air.ROOM;
    return Map.of(
        "v_m_s", smooth.velocityMs(flow),
        "Re", smooth.reynolds(flow, air),
        "f_smooth", smooth.frictionFactor(flow, air),
        "Pa_m_smooth", smooth.frictionPaPerM(flow, air),
        "Pa_m_flex3mm", flexible.frictionPaPerM(flow, air));
  }

  private static Map<String, Double> alternating(WorkedExample e) {
    String[] phases = e.inputs().get("phase_s").split(",", 2);
    double supply = Double.parseDouble(phases[0]);
    double share = supply / (supply + Double.parseDouble(phases[1]));
    return Map.of(
        "single_average_supply_m3_h", e.in("flow_m3_h") * share,
        "pair_antiphase_supply_m3_h", e.in("flow_m3_h") * (share + (1 - share)));
  }

  private static Map<String, Double> fanPower(WorkedExample e) {
    double flow = e.in("flow_l_s") / 1000;
    double power = FanEnergy.powerW(e.in("sfp") * 1000, flow);
    return Map.of(
        "W",
        power,
        "kWh_year",
        FanEnergy.electricityKwh(power, 8760),
        "passive_house_limit_W_per_l_s",
        FanEnergy.specificFanPower(0.45, Airflow.m3PerHour(1).m3PerSecond()) / 1000,
        "W_at_limit",
        FanEnergy.powerW(0.45 * 3600, flow));
  }

  private static Map<String, Double> recovery(WorkedExample e) {
    double supply = RecoveryRatio.supply(e.in("extract"), e.in("outdoor"), e.in("supply"));
    double loss =
        VentilationHeat.lossCoefficientWK(Airflow.m3PerHour(50).m3PerSecond(), 0.335 * 3600);
    return Map.of(
        "eta_supply",
        supply,
        "eta_exhaust",
        RecoveryRatio.exhaust(e.in("extract"), e.in("outdoor"), e.in("exhaust")),
        "meets_73pct",
        supply >= 0.73 ? 1.0 : 0.0,
        "recovered_W_at_50m3_h",
        loss * supply * (e.in("extract") - e.in("outdoor")));
  }

  private static Map<String, Double> unbalanced(WorkedExample e) {
    Iso13789Infiltration model = new Iso13789Infiltration(e.in("e"), e.in("f"));
    double leakage = Airflow.ofAirChange(e.in("n50"), e.in("V")).m3PerSecond();
    double extract = Airflow.m3PerHour(e.in("unbalance_m3_h")).m3PerSecond();
    return Map.of(
        "balanced_ach",
        Airflow.m3PerSecond(model.flowM3S(leakage, extract, extract)).airChangePerHour(e.in("V")),
        "extract_only_infiltration_ach",
        Airflow.m3PerSecond(model.flowM3S(leakage, 0, extract)).airChangePerHour(e.in("V")));
  }

  private static String number(String text) {
    return text.equals("True") ? "1" : text;
  }
}
