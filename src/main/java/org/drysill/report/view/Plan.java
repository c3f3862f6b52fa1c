package org.drysill.report.view;

import java.util.List;
import org.drysill.report.appendix.Appendices;
import org.drysill.report.chapter.Chapter;
import org.drysill.report.chapter.Chapters;
import org.drysill.report.logged.LogChapter;
import org.drysill.report.photo.PhotosChapter;
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
          Chapters.CHANGE,
          Chapters.HOME,
          Chapters.ROOMS,
          Chapters.OPTIONS,
          Chapters.CAUTIONS,
          Chapters.AIR,
          Chapters.COLD,
          Chapters.WALLS,
          Chapters.HUMIDITY,
          LogChapter.CHAPTER,
          Chapters.MOISTURE,
          Chapters.FANS,
          Chapters.RULES,
          Chapters.TIMELINE,
          PhotosChapter.CHAPTER,
          Appendices.METHOD,
          Appendices.READINGS,
          Appendices.ASSUMPTIONS,
          Appendices.WORKINGS,
          Appendices.SOURCES,
          Appendices.RECORD);

  private static final List<Chapter> REMEDIATION =
      List.of(
          Chapters.TIMELINE,
          Chapters.CHANGE,
          PhotosChapter.CHAPTER,
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
          Chapters.CAUTIONS,
          Chapters.RULES,
          Appendices.METHOD,
          Appendices.READINGS,
          Appendices.ASSUMPTIONS,
          Appendices.SIGNATURES,
          Appendices.WORKINGS,
          Appendices.SOURCES,
          Appendices.RECORD);

  private Plan() {}

  static List<Chapter> of(Edition edition) {
    return switch (edition) {
      case SURVEY -> SURVEY;
      case RECORD -> RECORD;
      case REMEDIATION -> REMEDIATION;
    };
  }
}
