package org.drysill.survey;

import java.util.Optional;
import org.drysill.yaml.Key;

/**
 * The names of the columns of a log of the cycles of a heat recovery unit.
 *
 * @param date date, where it has a column of its own
 * @param time date and time, or the time of day where the date has a column of its own
 * @param indoor room air
 * @param outdoor outdoor air
 * @param supply air at the grille in the room, which it blows in and draws out in turn
 * @param exhaust air at the grille outdoors
 * @param flow air flow, in any unit
 */
public record CycleColumns(
    @Key(about = "Date, where it has a column of its own", example = "Date") Optional<String> date,
    @Key(
            about = "Date and time, or time of day where the date has its own column",
            example = "Time")
        Optional<String> time,
    @Key(about = "Room air", example = "Indoor") Optional<String> indoor,
    @Key(about = "Outdoor air", example = "Outdoor") Optional<String> outdoor,
    @Key(
            about = "Air at the grille in the room, which it blows in and draws out in turn",
            example = "Grille")
        Optional<String> supply,
    @Key(about = "Air at the grille outdoors", example = "Exhaust") Optional<String> exhaust,
    @Key(about = "Air flow, in any unit", example = "Flow") Optional<String> flow) {}
