package org.drysill.assess.elements;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Direction;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Range;
import org.drysill.physics.layers.Iso13788Element;
import org.drysill.reference.Citation;
import org.drysill.reference.Sourced;
import org.drysill.reference.elements.ElementDefaults;

/** The year of a wall against what is asked: nothing left, and never too much. */
final class ElementFindings {
  private static final String SETTLES =
      "Find out the layers and their makers' vapour resistance, and log temperature and humidity of"
          + " the room and of the outdoor air through a cold month.";

  private final WallSubject wall;
  private final WallYear year;

  ElementFindings(WallSubject wall, WallYear year) {
    this.wall = wall;
    this.year = year;
  }

  /** No water is left after a year. */
  Finding accumulation() {
    Verdict verdict = Verdict.atMost(year.left().value(), 0);
    return new Finding(
        "element." + wall.id() + ".accumulation",
        "Water left within the " + wall.name() + " after a year",
        Optional.of(wall.room().id()),
        verdict,
        Direction.AT_MOST,
        Optional.of(year.left()),
        Optional.of(
            asked(
                ".none_left",
                "water that may be left after a year",
                Range.exactly(0),
                WallSubject.method())),
        YearWords.because(year),
        settledBy(verdict),
        List.of(WallSubject.method()));
  }

  /** The highest content against a national document; empty where nothing ever settles. */
  Optional<Finding> content(ElementDefaults defaults) {
    if (year.wet().isEmpty()) {
      return Optional.empty();
    }
    boolean absorbed = year.wet().stream().allMatch(WetPlace::absorbed);
    Sourced limit = absorbed ? defaults.highestWater() : defaults.highestWaterAtFilm();
    Verdict verdict = content(limit);
    return Optional.of(
        new Finding(
            "element." + wall.id() + ".content",
            "Highest water content of the " + wall.name() + ", for comparison",
            Optional.of(wall.room().id()),
            verdict,
            Direction.AT_MOST,
            Optional.of(year.highest()),
            Optional.of(
                asked(
                    ".limit",
                    "water content that a national document of Germany allows",
                    limit.range(),
                    limit.source())),
            because(absorbed),
            settledBy(verdict),
            List.of(limit.source(), defaults.absorbingSource())));
  }

  /** What grows from year to year is under no limit for good. */
  private Verdict content(Sourced limit) {
    Verdict first = Verdict.atMost(year.highest().value(), limit.likely());
    boolean grows = year.worst() == Iso13788Element.Verdict.ACCUMULATES;
    return first == Verdict.MEETS && grows ? Verdict.UNKNOWN : first;
  }

  private String because(boolean absorbed) {
    String first =
        absorbed
            ? "The layers beside the water take it up, so that the general limit applies."
            : "A layer beside the water takes up none, so that the lower limit applies.";
    String grows =
        year.worst() == Iso13788Element.Verdict.ACCUMULATES
            ? " The content is that of a first year; where water stays it grows from year to year."
            : "";
    return first + grows + " Timber at the water has a limit of its own, which is not reckoned.";
  }

  private static Optional<String> settledBy(Verdict verdict) {
    return verdict == Verdict.UNKNOWN ? Optional.of(SETTLES) : Optional.empty();
  }

  private Figure asked(String key, String name, Range value, Citation source) {
    return new Figure(
        "element." + wall.id() + key,
        name,
        value,
        Unit.WATER_CONTENT,
        Basis.PUBLISHED,
        () ->
            new Working(
                "M as printed",
                List.of(Input.of("M", "printed", value, Unit.WATER_CONTENT, Basis.PUBLISHED)),
                List.of(source),
                Optional.empty()));
  }
}
