package org.drysill.reference.surfaces;

import org.drysill.reference.Citation;
import org.drysill.yaml.Key;

/**
 * How readily mould grows on a material.
 *
 * @param material its word in a survey
 * @param sensitivity the class of the mould model
 * @param source where the class comes from
 */
public record MaterialSensitivity(
    @Key(about = "Its word in a survey", example = "wallpaper") String material,
    @Key(about = "Class of the mould model", example = "sensitive") Sensitivity sensitivity,
    @Key(about = "Where the class comes from") Citation source) {}
