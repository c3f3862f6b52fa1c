package org.drysill.report.remedy;

import org.drysill.report.chapter.Chapter;

/** The chapters that the edition for the file of a remediation has of its own. */
public final class Remedy {
  /** The works, as the timeline and the two surveys tell them. */
  public static final Chapter WORKS = new WorksChapter();

  /** Who measured, when, with what. */
  public static final Chapter MEASURED = new MeasuredChapter();

  /** What is still short, at risk or not told. */
  public static final Chapter REMAINS = new RemainsChapter();

  private Remedy() {}
}
