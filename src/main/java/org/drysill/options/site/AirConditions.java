package org.drysill.options.site;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assessment;
import org.drysill.assess.Finding;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Verdict;
import org.drysill.reference.measures.AirEffect;
import org.drysill.reference.measures.Measure;
import org.drysill.reference.measures.OptionDefaults;
import org.drysill.survey.DuctMaterial;
import org.drysill.survey.Fan;
import org.drysill.survey.FanKind;

/** Those conditions that are about air, fans and their ducts. */
record AirConditions(Assessment assessment, OptionDefaults defaults) {

  Held homeAir() {
    return Held.of(
        assessment.ventilation().wholeHome().verdict() != Verdict.MEETS,
        "The home does not surely get the air that is asked.",
        "the home gets the air that is asked");
  }

  Held homeLeaky() {
    return Held.of(
        assessment.home().n50().likely() > defaults.leakyHome().likely(),
        "Much air passes the envelope unasked.",
        "the envelope is not leaky");
  }

  static Held notMet(List<Finding> findings, Site site, String what, String no) {
    Optional<RoomFacts> room = site.room();
    boolean open =
        findings.stream()
            .filter(f -> f.room().equals(room.map(RoomFacts::id)))
            .anyMatch(f -> f.verdict() != Verdict.MEETS);
    return Held.of(open, "The " + what + " is short or not known there.", no);
  }

  static Held noHood(Site site) {
    boolean hood =
        site.room().stream()
            .flatMap(r -> r.room().fans().stream())
            .anyMatch(f -> f.kind() == FanKind.EXTRACT_HOOD);
    return Held.of(
        !hood, "No hood of the kitchen leads outside.", "a hood that leads outside is there");
  }

  static Held metalSleeve(Site site) {
    boolean metal =
        site.room().stream()
            .flatMap(r -> r.room().fans().stream())
            .flatMap(f -> f.duct().stream())
            .anyMatch(d -> d.material().equals(Optional.of(DuctMaterial.METAL_SLEEVE)));
    return Held.of(metal, "The sleeve is metal.", "no metal sleeve was seen");
  }

  Held flowLost(Site site) {
    return Held.of(
        site.fan().map(this::lost).orElse(false),
        "The fan moves well below its declared flow, or its duct is slack.",
        "no fan was seen that loses flow in its duct");
  }

  private boolean lost(Fan fan) {
    boolean slack =
        fan.duct().flatMap(d -> d.material()).equals(Optional.of(DuctMaterial.FLEXIBLE_SLACK));
    double share = defaults.flowLost().likely();
    boolean low =
        fan.declaredFlow()
            .flatMap(d -> fan.measuredFlow().map(m -> m.value().value() < share * d.value()))
            .orElse(false);
    return fan.declaredFlow().isPresent() && (slack || low);
  }

  static Held fanOut(Site site) {
    return Held.of(
        site.fan().map(f -> f.kind() == FanKind.FITTED_BUT_NOT_WORKING).orElse(false),
        "The fan is out of use.",
        "every fan that was seen works");
  }

  Held noSuchFan(Measure measure, Site site) {
    Optional<String> kind = measure.air().flatMap(AirEffect::fan);
    boolean there =
        assessment.home().rooms().stream()
            .filter(r -> site.room().map(s -> s.id().equals(r.id())).orElse(true))
            .flatMap(r -> r.room().fans().stream())
            .anyMatch(f -> kind.equals(Optional.of(f.kind().word())));
    return Held.of(!there, "No such system is there.", "such a system is there already");
  }
}
