package org.drysill.report.household;

import org.drysill.report.chapter.Chapter;

/** The chapters that the edition for an owner has of its own. */
public final class Household {
  /** What changed since the last visit, in plain words. */
  public static final Chapter SINCE = new SinceChapter();

  /** Facts of the house to keep, on one page. */
  public static final Chapter HOUSE = new HouseChapter();

  /** What the pages after it are for. */
  public static final Chapter BEHIND = new BehindChapter();

  private Household() {}
}
