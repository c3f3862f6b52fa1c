package org.drysill.assess.elements;

/** Makes the year of a wall from its cases. */
final class WallYears {
  private WallYears() {}

  /**
   * The year.
   *
   * @param id of the wall, or of what is changed at it
   */
  static WallYear of(String id, WallSubject wall, Runs runs) {
    YearTable table = new YearTable(runs, wall.layers());
    YearFigures figures = new YearFigures(id, wall, runs);
    return new WallYear(
        runs.likely().year().verdict(),
        runs.best().year().verdict(),
        runs.worst().year().verdict(),
        figures.highest(),
        figures.left(),
        figures.settling(),
        table.months(),
        table.wet(),
        table.profile());
  }
}
