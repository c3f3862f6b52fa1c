package org.drysill.assess.surfaces;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.surfaces.factor.ReadingFactor;
import org.drysill.assess.surfaces.factor.TemperatureFactor;
import org.drysill.survey.Window;

/**
 * What is known of a place before its year.
 *
 * @param id unique id
 * @param item the survey's id
 * @param name its name in sentences
 * @param kind which part of the survey it comes from
 * @param kindWords what it is
 * @param surface what may happen on it
 * @param seen what was seen on it
 * @param material the survey's word for what it is made of
 * @param factor its temperature factor
 * @param read what was read on it
 * @param furnished the factor of a whole wall with furniture before it
 * @param wholePane the window, where the place stands for its pane
 */
record Draft(
    String id,
    String item,
    String name,
    PlaceKind kind,
    String kindWords,
    SurfaceClass surface,
    Seen seen,
    Optional<String> material,
    TemperatureFactor factor,
    List<ReadingFactor> read,
    Optional<TemperatureFactor> furnished,
    Optional<Window> wholePane) {}
