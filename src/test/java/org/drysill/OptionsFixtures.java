package org.drysill;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.drysill.assess.Assessment;
import org.drysill.assess.Home;
import org.drysill.assess.OutdoorClimates;
import org.drysill.assess.cautions.CautionAssessor;
import org.drysill.assess.home.HomeBuilder;
import org.drysill.assess.surfaces.PlaceRisk;
import org.drysill.assess.surfaces.RiskAgain;
import org.drysill.assess.surfaces.SurfaceAssessor;
import org.drysill.options.OptionsBasis;
import org.drysill.options.OptionsResult;
import org.drysill.options.OptionsStudy;
import org.drysill.options.RankedMeasure;
import org.drysill.reference.ReferenceData;
import org.drysill.reference.measures.Measure;
import org.drysill.reference.measures.MeasureCatalogue;
import org.drysill.reference.measures.OptionDefaults;
import org.drysill.reference.readings.ReadingAdvice;
import org.drysill.reference.surfaces.SurfaceTables;
import org.drysill.survey.Survey;
import org.drysill.yaml.ProblemText;
import org.drysill.yaml.Reading;
import org.drysill.yaml.RecordReader;

/** Whole studies of options from surveys as text, with the bundled data. */
public final class OptionsFixtures {
  private static final ReferenceData DATA = ReferenceData.bundled();

  private OptionsFixtures() {}

  /** A survey under {@code src/test/resources/surveys/options}. */
  public static String text(String name) {
    String path = "/surveys/options/" + name + ".yaml";
    try (InputStream in = OptionsFixtures.class.getResourceAsStream(path)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What a survey means; fails where it has errors. */
  public static Assessment assess(String text) {
    Survey survey = survey(text);
    OutdoorClimates.Resolved climate =
        OutdoorClimates.resolve(survey, DATA.climates(), Optional.empty(), Optional.empty());
    return new Assessor(DATA)
        .assess(
            HomeBuilder.build(
                survey,
                climate.climate(),
                climate.assumptions(),
                DATA.dwelling(),
                DATA.money(),
                DATA.tariffs()),
            Optional.empty());
  }

  private static Survey survey(String text) {
    Reading<Survey> reading =
        RecordReader.read(Survey.class, text, "survey.yaml", DATA.vocabularies());
    return reading
        .value()
        .orElseThrow(
            () ->
                new AssertionError(
                    reading.problems().stream()
                        .map(ProblemText::of)
                        .collect(Collectors.joining("\n"))));
  }

  /** The bundled measures and all that belongs to them. */
  public static OptionsBasis basis() {
    return basis(UnaryOperator.identity());
  }

  /** The same with surfaces judged as quickly as the program does for a home. */
  public static OptionsBasis quickBasis(Home home) {
    OptionsBasis all = basis();
    RiskAgain risk = new RiskAgain(home, all.tables());
    return new OptionsBasis(
        all.catalogue(),
        all.defaults(),
        all.money(),
        all.prices(),
        all.glazing(),
        all.cautions(),
        (changed, vapour) -> risk.of(changed.rooms(), vapour),
        all.tables(),
        all.advice());
  }

  /** The same with other measures. */
  public static OptionsBasis basis(UnaryOperator<List<Measure>> change) {
    SurfaceTables tables = SurfaceTables.bundled();
    return new OptionsBasis(
        new MeasureCatalogue(change.apply(DATA.measures().measures())),
        OptionDefaults.read(),
        DATA.money(),
        DATA.tariffs(),
        DATA.glazing(),
        new CautionAssessor(DATA.cautions(), DATA.cautionFacts()),
        (home, vapour) ->
            SurfaceAssessor.assess(home, vapour, tables).places().stream()
                .map(PlaceRisk::of)
                .toList(),
        tables,
        ReadingAdvice.read());
  }

  /** The options of a survey. */
  public static OptionsResult study(String text) {
    return OptionsStudy.study(assess(text), basis());
  }

  /** A bundled measure. */
  public static Measure measure(String id) {
    return DATA.measures().measure(id).orElseThrow();
  }

  /** A measure of a study, ranked or beyond the budget. */
  public static RankedMeasure find(OptionsResult options, String id) {
    return options.ranked().stream()
        .filter(m -> m.id().equals(id))
        .findFirst()
        .or(() -> options.beyondBudget().stream().filter(m -> m.id().equals(id)).findFirst())
        .orElseThrow(() -> new AssertionError(id + " is neither ranked nor beyond the budget"));
  }
}
