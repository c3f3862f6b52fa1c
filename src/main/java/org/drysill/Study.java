package org.drysill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import org.drysill.assess.Assessment;
import org.drysill.assess.Home;
import org.drysill.assess.cautions.CautionAssessor;
import org.drysill.assess.surfaces.RiskAgain;
import org.drysill.options.OptionsBasis;
import org.drysill.options.OptionsResult;
import org.drysill.options.OptionsStudy;
import org.drysill.reference.DataFiles;
import org.drysill.reference.ReferenceData;
import org.drysill.reference.measures.OptionDefaults;
import org.drysill.reference.readings.ReadingAdvice;
import org.drysill.reference.surfaces.SurfaceTables;
import org.drysill.report.Report;
import org.drysill.report.ReportWriter;
import org.drysill.report.evidence.InputFile;
import org.drysill.report.language.Language;
import org.drysill.report.subject.Provenance;
import org.drysill.report.subject.Subject;
import org.drysill.survey.Edition;
import org.drysill.survey.Survey;
import org.drysill.survey.log.Logs;

/** From visits that were read to what is said of them. */
final class Study {
  private Study() {}

  /** Studies what could be done about what was assessed, with what is published. */
  interface Options extends BiFunction<ReferenceData, Assessment, OptionsResult> {}

  static Report compose(
      Visit visit, Optional<Visit> before, ReportWishes wishes, Consumer<String> stages) {
    return compose(visit, before, wishes, stages, Study::options);
  }

  /** The same with another way to the options, such as one that remembers them. */
  static Report compose(
      Visit visit,
      Optional<Visit> before,
      ReportWishes wishes,
      Consumer<String> stages,
      Options study) {
    List<InputFile> inputs = new ArrayList<>(inputs(visit, before));
    inputs.addAll(TemplateFiles.of(wishes.templates()));
    return new ReportWriter(wishes.templates(), stages)
        .write(studied(visit, before, inputs, wishes.spoken(), stages, study), inputs);
  }

  private static Subject studied(
      Visit visit,
      Optional<Visit> before,
      List<InputFile> inputs,
      Language language,
      Consumer<String> stages,
      Options study) {
    ReferenceData data = visit.own().data();
    stages.accept("assessing");
    Assessment assessment = assess(visit, before);
    stages.accept("studying options");
    OptionsResult options = study.apply(data, assessment);
    return new Subject(
        visit.file(),
        assessment,
        options,
        provenance(visit.file().survey(), assessment, language, inputs));
  }

  static Subject studied(Visit visit, Optional<Visit> before) {
    return studied(visit, before, Study::options);
  }

  /** The same with another way to the options. */
  static Subject studied(Visit visit, Optional<Visit> before, Options study) {
    return studied(visit, before, inputs(visit, before), Language.ENGLISH, stage -> {}, study);
  }

  private static List<InputFile> inputs(Visit visit, Optional<Visit> before) {
    return InputFiles.of(
        visit.file(),
        visit.own().logs(),
        before.map(then -> then.own().logs()).orElse(Logs.none()));
  }

  private static Provenance provenance(
      Survey survey, Assessment assessment, Language language, List<InputFile> inputs) {
    DataFiles.Digest data = DataFiles.digest();
    return new Provenance(
        "Drysill",
        Drysill.version(),
        new Provenance.Data(data.files(), data.sha256()),
        assessment.ventilation().rules().named(),
        survey.visit().edition().orElse(Edition.SURVEY),
        language,
        inputs.stream().map(Provenance.Input::of).toList(),
        Optional.empty());
  }

  static Assessment assess(Visit visit, Optional<Visit> before) {
    return new Assessor(visit.own().data())
        .assess(
            visit.home(),
            visit.own().logs(),
            before.map(then -> new Assessor.Surveyed(then.home(), then.own().logs())));
  }

  /** What could be done about what a survey means. */
  static OptionsResult options(ReferenceData data, Assessment assessment) {
    return OptionsStudy.study(assessment, basis(data, assessment.home()));
  }

  private static OptionsBasis basis(ReferenceData data, Home home) {
    SurfaceTables tables = SurfaceTables.bundled();
    RiskAgain risk = new RiskAgain(home, tables);
    return new OptionsBasis(
        data.measures(),
        OptionDefaults.read(),
        data.money(),
        data.tariffs(),
        data.glazing(),
        new CautionAssessor(data.cautions(), data.cautionFacts()),
        (changed, vapour) -> risk.of(changed.rooms(), vapour),
        tables,
        ReadingAdvice.read());
  }
}
