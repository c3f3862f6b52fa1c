package org.drysill.assess.surfaces.year;

/** What a year of hours does to a place. */
public sealed interface PlaceYear permits WallYear, GlassYear {}
