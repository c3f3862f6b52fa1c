package org.drysill.reference;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.drysill.reference.cautions.*;
import org.drysill.reference.cautions.Caution;
import org.drysill.reference.cautions.CautionFacts;
import org.drysill.reference.cautions.CautionFile;
import org.drysill.reference.climate.ClimateCatalogue;
import org.drysill.reference.dwelling.DwellingDefaults;
import org.drysill.reference.glazing.GlazingCatalogue;
import org.drysill.reference.materials.MaterialCatalogue;
import org.drysill.reference.measures.MeasureCatalogue;
import org.drysill.reference.moisture.MoistureSources;
import org.drysill.reference.prices.MoneyDefaults;
import org.drysill.reference.prices.PriceDefaults;
import org.drysill.reference.readings.ReadingRules;
import org.drysill.reference.recovery.RecoveryDefaults;
import org.drysill.reference.rules.RuleCatalogue;
import org.drysill.reference.ventilation.VentilationDefaults;
import org.drysill.yaml.Vocabularies;

/**
 * Everything published that a survey may name, read once.
 *
 * @param rules ventilation rule sets
 * @param climates reference climates
 * @param glazing panes and their edges
 * @param materials layers of walls
 * @param moisture sources of moisture
 * @param measures what can be done
 * @param dwelling what is taken for a home where the survey does not say
 * @param money how money is counted
 * @param tariffs prices of energy by currency
 */
public record ReferenceData(
    RuleCatalogue rules,
    ClimateCatalogue climates,
    GlazingCatalogue glazing,
    MaterialCatalogue materials,
    MoistureSources moisture,
    MeasureCatalogue measures,
    DwellingDefaults dwelling,
    MoneyDefaults money,
    List<PriceDefaults> tariffs,
    VentilationDefaults ventilation,
    ReadingRules readings,
    RecoveryDefaults recovery,
    List<Caution> cautions,
    CautionFacts cautionFacts) {
  /** Copies the list. */
  public ReferenceData {
    tariffs = List.copyOf(tariffs);
  }

  /** The bundled data. */
  public static ReferenceData bundled() {
    return new ReferenceData(
        RuleCatalogue.bundled(),
        ClimateCatalogue.bundled(),
        GlazingCatalogue.bundled(),
        MaterialCatalogue.bundled(),
        MoistureSources.bundled(),
        MeasureCatalogue.read(),
        DwellingDefaults.bundled(),
        MoneyDefaults.read(),
        PriceDefaults.all(),
        VentilationDefaults.bundled(),
        ReadingRules.bundled(),
        RecoveryDefaults.bundled(),
        CautionFile.all(),
        CautionFacts.read());
  }

  /** The same with other rule sets, such as a user's own before the bundled ones. */
  public ReferenceData withRules(RuleCatalogue other) {
    return new ReferenceData(
        other,
        climates,
        glazing,
        materials,
        moisture,
        measures,
        dwelling,
        money,
        tariffs,
        ventilation,
        readings,
        recovery,
        cautions,
        cautionFacts);
  }

  /** The same with other measures, such as those of a user beside the bundled ones. */
  public ReferenceData withMeasures(MeasureCatalogue other) {
    return new ReferenceData(
        rules,
        climates,
        glazing,
        materials,
        moisture,
        other,
        dwelling,
        money,
        tariffs,
        ventilation,
        readings,
        recovery,
        cautions,
        cautionFacts);
  }

  /** The words that a survey may use for entries of these tables. */
  public Vocabularies vocabularies() {
    Map<String, List<String>> words = new LinkedHashMap<>();
    words.put(RuleCatalogue.VOCABULARY, rules.ids());
    words.put("climate", climates.ids());
    words.put("glazing", glazing.words());
    words.put("material", materials.words());
    words.put("material of any thickness", materials.wordsOfAnyThickness());
    words.put("moisture source", moisture.kinds());
    words.put("measure", measures.names());
    return new Vocabularies(words);
  }
}
