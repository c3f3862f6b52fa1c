package org.drysill.assess.surfaces;

import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.surfaces.factor.TemperatureFactor;
import org.drysill.assess.surfaces.months.MonthTable;
import org.drysill.assess.surfaces.year.PlaceYear;

/**
 * A place that was assessed.
 *
 * @param id unique id: the survey's own, with {@code .centre}, {@code .edge} or {@code .read} for
 *     the parts of a window
 * @param item the survey's id of the cold spot, window or wall
 * @param room the survey's id of the room
 * @param roomName the room's name in sentences
 * @param name its own name in sentences, such as {@code north window, lower edge of the pane}
 * @param kind which part of the survey it comes from
 * @param kindWords what it is, such as {@code external corner} or {@code single glazing}
 * @param surface what may happen on it
 * @param seen what was seen on it
 * @param factor its temperature factor
 * @param now at the visit; empty where no humidity was read in the room
 * @param months through the year
 * @param year hour by hour through the year
 * @param requirement actual against required temperature factor of the critical month
 * @param published actual against the critical factor that a national document prints, for
 *     comparison
 * @param behindFurniture a whole wall with furniture before it, against the required factor
 * @param condensate water in a cold night [kg], an upper bound; glass only
 * @param neverDry a sentence, where it cannot stay dry at a humidity that people live in
 * @param verdict the result in one plain sentence
 */
public record ColdPlace(
    String id,
    String item,
    String room,
    String roomName,
    String name,
    PlaceKind kind,
    String kindWords,
    SurfaceClass surface,
    Seen seen,
    TemperatureFactor factor,
    Optional<SurfaceNow> now,
    MonthTable months,
    PlaceYear year,
    Finding requirement,
    Optional<Finding> published,
    Optional<Finding> behindFurniture,
    Optional<Figure> condensate,
    Optional<String> neverDry,
    String verdict) {}
