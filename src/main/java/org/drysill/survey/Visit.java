package org.drysill.survey;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.drysill.survey.share.LeftOut;
import org.drysill.yaml.Key;

/**
 * The visit and its circumstances.
 *
 * @param reference the reference of the visit in your files
 * @param date the day of the visit
 * @param edition which edition of the report: survey, record or remediation
 * @param surveyor who took the readings
 * @param preparedFor who the report is for
 * @param reason why the home was visited, in one sentence
 * @param previous an earlier survey of the same home, for before and after
 * @param instruments the instruments used
 * @param timeline what happened when, for the remediation edition
 * @param hazard how the landlord classed the hazard, where the law has classes
 * @param photos photographs of the home as a whole
 * @param notInspected what could not be seen or reached
 */
public record Visit(
    @LeftOut @Key(about = "The reference of the visit in your files", example = "HX-0042/1")
        Optional<String> reference,
    @Key(about = "The day of the visit", example = "2026-01-22") LocalDate date,
    @Key(
            about = "Which edition of the report: survey, record, remediation or brief",
            example = "survey")
        Optional<Edition> edition,
    @LeftOut @Key(about = "Who took the readings") Optional<Surveyor> surveyor,
    @LeftOut @Key(about = "Who the report is for", example = "Owner of 4 Sample Terrace")
        Optional<String> preparedFor,
    @LeftOut
        @Key(
            about = "Why the home was visited, in one sentence",
            example = "Water on the bedroom windows on most winter mornings")
        Optional<String> reason,
    @LeftOut
        @Key(
            about = "An earlier survey of the same home, for before and after",
            example = "../2025-02-11/survey.yaml")
        Optional<String> previous,
    @Key(about = "The instruments used") List<Instrument> instruments,
    @Key(about = "What happened when, for the remediation edition") List<TimelineEvent> timeline,
    @Key(
            about = "How the landlord classed the hazard, where the law has classes of it",
            example = "significant")
        Optional<HazardClass> hazard,
    @LeftOut @Key(about = "Photographs of the home as a whole", example = "photos/north-side.jpg")
        List<Photo> photos,
    @LeftOut @Key(about = "What could not be seen or reached", example = "Roof void: no access")
        List<String> notInspected) {
  /** Copies the lists. */
  public Visit {
    instruments = List.copyOf(instruments);
    timeline = List.copyOf(timeline);
    photos = List.copyOf(photos);
    notInspected = List.copyOf(notInspected);
  }

  /** The same, for another edition of the report. */
  public Visit with(Edition other) {
    return new Visit(
        reference,
        date,
        Optional.of(other),
        surveyor,
        preparedFor,
        reason,
        previous,
        instruments,
        timeline,
        hazard,
        photos,
        notInspected);
  }
}
