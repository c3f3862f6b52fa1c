package org.drysill.report.chapter;

/** The chapters that carry findings. */
public final class Chapters {
  /** The home and the visit. */
  public static final Chapter HOME = new HomeChapter();

  /** Rooms at a glance. */
  public static final Chapter ROOMS = new RoomsChapter();

  /** Ventilation. */
  public static final Chapter AIR = new AirChapter();

  /** Rule sets side by side. */
  public static final Chapter RULES = new RulesChapter();

  /** Readings of the air. */
  public static final Chapter HUMIDITY = new HumidityChapter();

  /** Condensation and mould. */
  public static final Chapter COLD = new ColdChapter(ColdChapter.Depth.WHOLE);

  /** Of it where, why, from when, and what would stop it. */
  public static final Chapter COLD_PLACES = new ColdChapter(ColdChapter.Depth.PLACES);

  /** Of it what stands behind that. */
  public static final Chapter COLD_TABLES = new ColdChapter(ColdChapter.Depth.TABLES);

  /** Water within built-up walls. */
  public static final Chapter WALLS = new WallsChapter();

  /** Fans and heat recovery. */
  public static final Chapter FANS = new FansChapter();

  /** Moisture by source. */
  public static final Chapter MOISTURE = new MoistureChapter();

  /** What could be done. */
  public static final Chapter OPTIONS = new OptionsChapter();

  /** Before and after. */
  public static final Chapter CHANGE = new ChangeChapter();

  /** What happened when. */
  public static final Chapter TIMELINE = new TimelineChapter();

  /** Cautions and local code. */
  public static final Chapter CAUTIONS = new CautionsChapter();

  /** What to do this week, this winter and when there is money. */
  public static final Chapter SOON = new SoonChapter();

  private Chapters() {}
}
