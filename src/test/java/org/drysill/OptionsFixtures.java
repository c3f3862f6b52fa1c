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
import org.drysill.options.SurfacesAgain;
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
  private static final OptionsBasis BASIS = basis(UnaryOperator.identity());
  private static final Lately<String, Assessment> ASSESSED = new Lately<>(32);
  private static final Lately<String, OptionsResult> STUDIED = new Lately<>(8);

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
    return ASSESSED.of(text, () -> assessAfresh(text));
  }

  private static Assessment assessAfresh(String text) {
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
    return BASIS;
  }

  /** The same with surfaces judged as quickly as the program does for a home. */
  public static OptionsBasis quickBasis(Home home) {
    RiskAgain risk = new RiskAgain(home, BASIS.tables());
    return basis((changed, vapour) -> risk.of(changed.rooms(), vapour));
  }

  /** The same with surfaces judged by the whole assessment of them, which takes longest. */
  public static OptionsBasis wholeBasis() {
    return basis(
        (home, vapour) ->
            SurfaceAssessor.assess(home, vapour, BASIS.tables()).places().stream()
                .map(PlaceRisk::of)
                .toList());
  }

  private static OptionsBasis basis(SurfacesAgain surfaces) {
    return new OptionsBasis(
        BASIS.catalogue(),
        BASIS.defaults(),
        BASIS.money(),
        BASIS.prices(),
        BASIS.glazing(),
        BASIS.cautions(),
        surfaces,
        BASIS.tables(),
        BASIS.advice());
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
        (home, vapour) -> new RiskAgain(home, tables).of(home.rooms(), vapour),
        tables,
        ReadingAdvice.read());
  }

  /** The options of a survey. */
  public static OptionsResult study(String text) {
    return STUDIED.of(text, () -> OptionsStudy.study(assess(text), basis()));
  }

  /** The same, worked out again though it was lately. */
  public static OptionsResult studyAfresh(String text) {
    return OptionsStudy.study(assessAfresh(text), basis());
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
