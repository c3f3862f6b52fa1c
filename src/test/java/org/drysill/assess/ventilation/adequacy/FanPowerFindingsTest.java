package org.drysill.assess.ventilation.adequacy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.drysill.assess.ventilation.VentilationFixtures.assess;
import static org.drysill.assess.ventilation.VentilationFixtures.assessBy;

import java.util.List;
import org.drysill.assess.Finding;
import org.drysill.assess.Verdict;
import org.drysill.reference.DataFiles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Specific fan power; Approved Document L Volume 1, 2021, para 6.55: seen. */
class FanPowerFindingsTest {
  private static String room(String fan) {
    return "- {id: bath, use: bathroom, fans: [{id: f, name: Fan, " + fan + "}]}";
  }

  private static List<Finding> power(String rules, String fan) {
    return assess(rules, "floor_area: 84", room(fan)).fanPower();
  }

  private static Finding power(String fan) {
    return power("england", fan).get(0);
  }

  @ParameterizedTest
  @CsvSource({
    "intermittent extract, 0.5",
    "extract hood, 0.5",
    "continuous extract, 0.7",
    "positive input, 0.5",
    "alternating heat recovery, 1.5",
    "simultaneous heat recovery, 1.5",
    "balanced heat recovery, 1.5"
  })
  void each_kind_has_its_limit(String kind, double limit) {
    Finding finding = power("kind: " + kind + ", power: 1 W, measured_flow: {value: 9..11 l/s}");
    assertThat(finding.required().orElseThrow().likely() / 1000).isCloseTo(limit, within(1e-9));
    assertThat(finding.verdict()).isEqualTo(Verdict.MEETS);
    assertThat(finding.because().contains("alternating units have none of their own"))
        .isEqualTo(kind.startsWith("alternating"));
  }

  /** 5 W by 10 l/s are 0.5 W/(l/s): equality may be. */
  @ParameterizedTest
  @CsvSource({
    "10..12 l/s, MEETS",
    "9.99..12 l/s, UNKNOWN",
    "8..10 l/s, UNKNOWN",
    "8..9.99 l/s, SHORT"
  })
  void the_limit_may_be_reached_and_not_passed(String flow, Verdict verdict) {
    Finding finding =
        power("kind: intermittent extract, power: 5 W, measured_flow: {value: " + flow + "}");
    assertThat(finding.verdict()).isEqualTo(verdict);
    assertThat(finding.settledBy().isPresent()).isEqualTo(verdict == Verdict.UNKNOWN);
  }

  @Test
  void what_it_draws_is_rounded_up_and_what_it_may_draw_down() {
    assertThat(
            power("kind: intermittent extract, power: 5 W, measured_flow: {value: 9.99..12 l/s}")
                .because())
        .isEqualTo("0.51 W/(l/s) as fitted, at most 0.50 W/(l/s).");
  }

  @Test
  void power_or_flow_that_is_not_known_is_asked_for() {
    Finding silent = power("kind: intermittent extract, measured_flow: 10 l/s");
    assertThat(silent.verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(silent.because()).startsWith("Its power or flow is not known; ");
    assertThat(silent.settledBy().orElseThrow()).startsWith("Read the power of Fan");
    Finding unstated = power("kind: intermittent extract, power: 1 W");
    assertThat(unstated.verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(unstated.settledBy().orElseThrow()).startsWith("Measure the flow at Fan");
  }

  @ParameterizedTest
  @CsvSource({"recirculating hood", "passive stack", "fitted but not working"})
  void what_moves_no_air_by_electricity_has_no_finding(String kind) {
    assertThat(power("england", "kind: " + kind + ", power: 5 W")).isEmpty();
  }

  @Test
  void a_document_without_a_limit_says_so() {
    Finding finding =
        power("sweden", "kind: continuous extract, power: 5 W, measured_flow: 10 l/s").get(0);
    assertThat(finding.verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(finding.required()).isEmpty();
    assertThat(finding.because())
        .endsWith("no limit of fan power is known for such a fan; not assessed.");
    assertThat(finding.settledBy()).isEmpty();
    assertThat(finding.sources()).isEmpty();
  }

  @Test
  void a_doubtful_limit_withholds_the_verdict_and_asks_for_its_document() {
    String rules =
        DataFiles.text("rules/england.yaml")
            .replace(
                "clause: \"para 6.55(b)\", how: seen}",
                "clause: \"para 6.55(b)\", how: memory}, confidence: low");
    Finding finding =
        assessBy(
                rules,
                "floor_area: 84",
                room("kind: continuous extract, power: 1 W, measured_flow: 10 l/s"))
            .fanPower()
            .get(0);
    assertThat(finding.verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(finding.settledBy().orElseThrow()).startsWith("Look the figure up");
  }
}
