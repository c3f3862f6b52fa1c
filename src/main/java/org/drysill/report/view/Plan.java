package org.drysill.report.view;

import java.util.List;
import org.drysill.report.appendix.Appendices;
import org.drysill.report.chapter.Chapter;
import org.drysill.report.chapter.Chapters;
import org.drysill.report.household.Household;
import org.drysill.report.logged.LogChapter;
import org.drysill.report.photo.PhotosChapter;
import org.drysill.report.remedy.Remedy;
import org.drysill.survey.Edition;

/** Which chapters an edition has, in its order. The figures are the same in all of them. */
final class Plan {
  private static final List<Chapter> SURVEY =
      List.of(
          Chapters.HOME,
          Chapters.ROOMS,
          Chapters.CHANGE,
          Chapters.AIR,
          Chapters.RULES,
          Chapters.HUMIDITY,
          LogChapter.CHAPTER,
          Chapters.COLD,
          Chapters.WALLS,
          Chapters.FANS,
          Chapters.MOISTURE,
          Chapters.OPTIONS,
          Chapters.CAUTIONS,
          Chapters.TIMELINE,
          PhotosChapter.CHAPTER,
          Appendices.METHOD,
          Appendices.READINGS,
          Appendices.ASSUMPTIONS,
          Appendices.WORKINGS,
          Appendices.SOURCES,
          Appendices.RECORD);

  private static final List<Chapter> RECORD =
      List.of(
          Chapters.SOON,
          Household.SINCE,
          Household.HOUSE,
          Chapters.COLD_PLACES,
          PhotosChapter.CHAPTER,
          Chapters.CAUTIONS,
          Household.BEHIND,
          Chapters.HOME,
          Chapters.ROOMS,
          Chapters.CHANGE,
          Chapters.OPTIONS,
          Chapters.AIR,
          Chapters.COLD_TABLES,
          Chapters.WALLS,
          Chapters.HUMIDITY,
          LogChapter.CHAPTER,
          Chapters.MOISTURE,
          Chapters.FANS,
          Chapters.RULES,
          Chapters.TIMELINE,
          Appendices.METHOD,
          Appendices.READINGS,
          Appendices.ASSUMPTIONS,
          Appendices.WORKINGS,
          Appendices.SOURCES,
          Appendices.RECORD);

  private static final List<Chapter> REMEDIATION =
      List.of(
          Chapters.TIMELINE,
          Remedy.WORKS,
          Chapters.CHANGE,
          PhotosChapter.CHAPTER,
          Remedy.MEASURED,
          Remedy.REMAINS,
          Chapters.CAUTIONS,
          Appendices.SIGNATURES,
          Household.BEHIND,
          Chapters.HOME,
          Chapters.ROOMS,
          Chapters.AIR,
          Chapters.HUMIDITY,
          LogChapter.CHAPTER,
          Chapters.COLD,
          Chapters.WALLS,
          Chapters.FANS,
          Chapters.MOISTURE,
          Chapters.OPTIONS,
          Chapters.RULES,
          Appendices.METHOD,
          Appendices.READINGS,
          Appendices.ASSUMPTIONS,
          Appendices.WORKINGS,
          Appendices.SOURCES,
          Appendices.RECORD);

  private Plan() {}

  static List<Chapter> of(Edition edition) {
    return switch (edition) {
      case SURVEY -> SURVEY;
      case RECORD -> RECORD;
      case REMEDIATION -> REMEDIATION;
      case BRIEF -> throw new IllegalArgumentException("the short report has chapters of its own");
    };
  }
}
