package org.drysill.assess.elements;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.assess.surfaces.months.MonthNames;
import org.drysill.physics.Range;
import org.drysill.physics.layers.Iso13788Element;
import org.drysill.physics.layers.MonthWater;

/** The figures of a year with their workings. */
final class YearFigures {
  /** Less than this is nothing in three digits [kg/m²]. */
  private static final double LEAST_SHOWN = 0.0005;

  private static final int MONTHS = 12;

  private final String id;
  private final WallSubject wall;
  private final Runs runs;
  private final Iso13788Element.Year year;

  YearFigures(String id, WallSubject wall, Runs runs) {
    this.id = id;
    this.wall = wall;
    this.runs = runs;
    this.year = runs.likely().year();
  }

  /** The most water within the wall at the end of a month. */
  Figure highest() {
    int peak =
        IntStream.range(0, MONTHS)
            .boxed()
            .max((a, b) -> Double.compare(stored(a), stored(b)))
            .orElseThrow();
    return figure(
        "highest_water",
        "highest water content within the wall",
        runs.range(Iso13788Element.Year::highestKgM2),
        "M = max Σ ΔM(month)",
        peak + 1);
  }

  /** The water within it after twelve months. */
  Figure left() {
    return figure(
        "water_left",
        "water left within the wall after a year",
        runs.range(Iso13788Element.Year::leftKgM2),
        "M = Σ ΔM(month), twelve months",
        MONTHS);
  }

  private double stored(int month) {
    return year.months().get(month).storedKgM2();
  }

  private Figure figure(String key, String name, Range value, String formula, int months) {
    return new Figure(
        id + "." + key,
        name,
        value,
        Unit.WATER_CONTENT,
        wall.basis(),
        () -> new Working(formula, inputs(), wall.sources(), Optional.of(note(months))));
  }

  private List<Input> inputs() {
    List<Input> inputs = new ArrayList<>(List.of(wall.excess()));
    settling().ifPresent(f -> inputs.add(Input.of("ΔM(worst month)", f)));
    return inputs;
  }

  private String note(int months) {
    String start =
        year.verdict() == Iso13788Element.Verdict.NONE
            ? "At the likely values no water settles in any month."
            : changes(months);
    return start
        + " The bounds are the driest and the wettest case within the ranges of the layers, of the"
        + " indoor moisture and of the climate.";
  }

  /** What each month adds or takes, as far as it shows in three digits. */
  private String changes(int months) {
    List<String> changes = new ArrayList<>();
    double before = 0;
    for (int i = 0; i < months; i++) {
      double change = stored(i) - before;
      before = stored(i);
      if (Math.abs(change) >= LEAST_SHOWN) {
        String month = MonthNames.of((year.first() + i) % MONTHS + 1);
        changes.add(String.format(Locale.ROOT, "%s %+.3f", month, change));
      }
    }
    return changes.isEmpty()
        ? "From a dry wall less than 0.001 kg/m² settles in any month."
        : "From a dry wall, in kg/m²: " + String.join(", ", changes).replace('-', '\u2212') + ".";
  }

  /** What settles in the worst month at the wettest plane; empty where nothing does. */
  Optional<Figure> settling() {
    Optional<MonthWater> worst =
        year.months().stream()
            .filter(m -> m.condensedKgM2() > 0)
            .max((a, b) -> Double.compare(a.condensedKgM2(), b.condensedKgM2()));
    return worst.map(this::settling);
  }

  private Figure settling(MonthWater month) {
    SettlingPlane plane = SettlingPlane.wettest(runs.likely(), month);
    int number = (year.first() + year.months().indexOf(month)) % MONTHS + 1;
    return new Figure(
        id + ".settling",
        "water that settles in " + MonthNames.of(number),
        Range.exactly(plane.gainedKgM2()),
        Unit.WATER_CONTENT,
        wall.basis(),
        () -> plane.working(wall, number));
  }
}
