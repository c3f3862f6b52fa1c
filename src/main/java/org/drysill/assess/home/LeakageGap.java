package org.drysill.assess.home;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.dwelling.DefaultNumber;
import org.drysill.reference.dwelling.DwellingDefaults;
import org.drysill.survey.Airtightness;
import org.drysill.survey.Dwelling;
import org.drysill.survey.DwellingType;
import org.drysill.yaml.Quantity;

/** Air changes at 50 Pa: as tested, as stated, from the permeability, or by the age of the home. */
final class LeakageGap {
  private static final String ID = "dwelling.n50";
  private static final String NAME = "air changes at 50 Pa";
  private static final String BETTER = "Have the air leakage of the home tested.";

  private final Dwelling dwelling;
  private final DwellingDefaults defaults;
  private final Facts facts;
  private final Figure volume;

  LeakageGap(Dwelling dwelling, DwellingDefaults defaults, Facts facts, Figure volume) {
    this.dwelling = dwelling;
    this.defaults = defaults;
    this.facts = facts;
    this.volume = volume;
  }

  Figure fill() {
    Optional<Airtightness> stated = dwelling.airtightness();
    Optional<Quantity> n50 = stated.flatMap(Airtightness::n50);
    Optional<Quantity> permeability = stated.flatMap(Airtightness::airPermeability);
    if (n50.isPresent()) {
      return fromN50(n50.get());
    }
    return permeability.map(this::fromPermeability).orElseGet(this::byAge);
  }

  private boolean measured() {
    return dwelling
        .airtightness()
        .flatMap(Airtightness::basis)
        .filter(b -> b == org.drysill.survey.Basis.MEASURED)
        .isPresent();
  }

  private Figure fromN50(Quantity n50) {
    if (measured()) {
      return new Figure(
          ID,
          NAME,
          n50.range(),
          Unit.AIR_CHANGE,
          Basis.MEASURED,
          () ->
              new Working(
                  "n50 as tested", List.of(), List.of(), Optional.of("Survey: " + n50.written())));
    }
    return assumed(spread(n50), n50.written(), "The survey assumes this value; no test is known.");
  }

  /** A number that is itself an assumption gets the spread that such numbers have. */
  private Range spread(Quantity stated) {
    double s = defaults.assumedLeakageSpread();
    return stated.isRange()
        ? stated.range()
        : new Range(stated.value() * (1 - s), stated.value(), stated.value() * (1 + s));
  }

  private Figure fromPermeability(Quantity permeability) {
    Range q50 = measured() ? permeability.range() : spread(permeability);
    if (!measured()) {
      facts.note(
          Facts.assumption(
              "dwelling.airtightness",
              "Air leakage",
              permeability.written() + " at 50 Pa",
              "The survey assumes this value; no test is known.",
              BETTER,
              defaults.leakageOfUnknownAge().source()));
    }
    Range envelope = envelope();
    Range n50 = q50.times(envelope).dividedBy(volume.value());
    Basis basis =
        measured() && dwelling.envelopeArea().isPresent() ? Basis.CALCULATED : Basis.ASSUMED;
    return new Figure(
        ID,
        NAME,
        n50,
        Unit.AIR_CHANGE,
        basis,
        () ->
            new Working(
                "n50 = q50 × A_E / V",
                List.of(
                    Working.Input.of(
                        "A_E", "envelope area", envelope, Unit.SQUARE_METRE, Basis.DECLARED),
                    Working.Input.of("V", volume)),
                List.of(defaults.envelopePerVolumeHouse().source()),
                Optional.of("q50 of the survey: " + permeability.written())));
  }

  private Range envelope() {
    if (dwelling.envelopeArea().isPresent()) {
      return dwelling.envelopeArea().get().range();
    }
    DefaultNumber ratio =
        dwelling.type().filter(LeakageGap::isFlat).isPresent()
            ? defaults.envelopePerVolumeFlat()
            : defaults.envelopePerVolumeHouse();
    Range area = ratio.value().range().times(volume.value());
    facts.note(
        Facts.assumption(
            "dwelling.envelope_area",
            "Area of the envelope",
            String.format(Locale.ROOT, "%.0f to %.0f m²", area.low(), area.high()),
            "A usual ratio of envelope area to volume for this kind of home.",
            "Give the area of outside walls, roof and lowest floor.",
            ratio.source()));
    return area;
  }

  static boolean isFlat(DwellingType type) {
    return switch (type) {
      case GROUND_FLOOR_FLAT, MID_FLOOR_FLAT, TOP_FLOOR_FLAT, MAISONETTE, STUDIO -> true;
      case DETACHED_HOUSE, SEMI_DETACHED_HOUSE, END_TERRACE_HOUSE, MID_TERRACE_HOUSE, BUNGALOW ->
          false;
    };
  }

  private Figure byAge() {
    return dwelling
        .built()
        .flatMap(defaults::leakage)
        .map(
            age ->
                assumed(
                    age.n50().range(),
                    age.n50().written(),
                    "Usual for the year of construction.",
                    age.source()))
        .orElseGet(
            () ->
                assumed(
                    defaults.leakageOfUnknownAge().value().range(),
                    defaults.leakageOfUnknownAge().value().written(),
                    "Neither a test nor the year of construction is known."));
  }

  private Figure assumed(Range n50, String words, String why) {
    return assumed(n50, words, why, defaults.leakageOfUnknownAge().source());
  }

  private Figure assumed(Range n50, String words, String why, Citation source) {
    return facts.assumed(
        ID,
        NAME,
        n50,
        Unit.AIR_CHANGE,
        Facts.assumption(
            "dwelling.airtightness", "Air leakage", words + " at 50 Pa", why, BETTER, source));
  }
}
