package org.drysill.report.appendix;

import org.drysill.report.chapter.Chapter;

/** The chapters that stand behind the findings. */
public final class Appendices {
  /** The method in plain words. */
  public static final Chapter METHOD = new MethodChapter();

  /** What was taken for granted. */
  public static final Chapter ASSUMPTIONS = new AssumptionsChapter();

  /** The readings that would help. */
  public static final Chapter READINGS = new ReadingsChapter();

  /** How each figure came about; to be written after every chapter that speaks of a figure. */
  public static final Chapter WORKINGS = new WorkingsChapter();

  /** The documents. */
  public static final Chapter SOURCES = new SourcesChapter();

  /** The survey as it was read, and from what and by what the report was made. */
  public static final Chapter RECORD = new RecordChapter();

  /** Lines to sign on. */
  public static final Chapter SIGNATURES = new SignaturesChapter();

  private Appendices() {}
}
