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
    return dwelling
        .envelopeArea()
        .map(Quantity::range)
        .map(area -> byArea(permeability, q50, area))
        .orElseGet(() -> byRatio(permeability, q50));
  }

  private Figure byArea(Quantity permeability, Range q50, Range area) {
    return fromPermeability(
        permeability,
        q50.times(area).dividedBy(volume.value()),
        measured() ? Basis.CALCULATED : Basis.ASSUMED,
        "n50 = q50 × A_E / V",
        List.of(
            permeabilityInput(q50),
            Working.Input.of("A_E", "envelope area", area, Unit.SQUARE_METRE, Basis.DECLARED),
            Working.Input.of("V", volume)),
        List.of());
  }

  /** The volume, from which the area would be taken, cancels. */
  private Figure byRatio(Quantity permeability, Range q50) {
    DefaultNumber usual =
        dwelling.type().filter(LeakageGap::isFlat).isPresent()
            ? defaults.envelopePerVolumeFlat()
            : defaults.envelopePerVolumeHouse();
    Range ratio = usual.value().range();
    Range area = ratio.times(volume.likely());
    facts.note(
        Facts.assumption(
            "dwelling.envelope_area",
            "Area of the envelope",
            String.format(Locale.ROOT, "%.0f to %.0f m²", area.low(), area.high()),
            "A usual ratio of envelope area to volume for this kind of home.",
            "Give the area of outside walls, roof and lowest floor.",
            usual.source()));
    return fromPermeability(
        permeability,
        q50.times(ratio),
        Basis.ASSUMED,
        "n50 = q50 × r",
        List.of(
            permeabilityInput(q50),
            Working.Input.of(
                "r", "envelope area by air volume, in m²/m³", ratio, Unit.RATIO, Basis.ASSUMED)),
        List.of(usual.source()));
  }

  private static Figure fromPermeability(
      Quantity permeability,
      Range n50,
      Basis basis,
      String formula,
      List<Working.Input> inputs,
      List<Citation> sources) {
    return new Figure(
        ID,
        NAME,
        n50,
        Unit.AIR_CHANGE,
        basis,
        () ->
            new Working(
                formula,
                inputs,
                sources,
                Optional.of("q50 of the survey: " + permeability.written())));
  }

  private Working.Input permeabilityInput(Range q50) {
    return Working.Input.of(
        "q50",
        "air permeability at 50 Pa, in m³/(h·m²)",
        q50,
        Unit.RATIO,
        measured() ? Basis.MEASURED : Basis.ASSUMED);
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
