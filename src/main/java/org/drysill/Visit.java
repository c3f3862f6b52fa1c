package org.drysill;

import java.util.Optional;
import org.drysill.assess.Home;
import org.drysill.assess.OutdoorClimates;
import org.drysill.assess.home.HomeBuilder;
import org.drysill.reference.ReferenceData;
import org.drysill.survey.Survey;
import org.drysill.survey.SurveyFile;

/**
 * A visit that was read.
 *
 * @param file its survey
 * @param own what the survey brings of its own: data, weather, logs
 */
record Visit(SurveyFile file, OwnFiles own) {
  static Visit of(SurveyFile file, ReferenceData data) {
    return new Visit(file, OwnFiles.read(file, data));
  }

  Visit as(ReportWishes wishes) {
    return new Visit(file.with(wishes.of(file.survey())), own);
  }

  /** The home with every gap filled. */
  Home home() {
    Survey survey = file.survey();
    ReferenceData data = own.data();
    OutdoorClimates.Resolved climate =
        OutdoorClimates.resolve(survey, data.climates(), Optional.empty(), own.weather());
    return HomeBuilder.build(
        survey,
        climate.climate(),
        climate.assumptions(),
        data.dwelling(),
        data.money(),
        data.tariffs());
  }
}
