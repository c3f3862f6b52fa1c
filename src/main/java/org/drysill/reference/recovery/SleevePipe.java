package org.drysill.reference.recovery;

import org.drysill.reference.Sourced;
import org.drysill.yaml.Key;

/**
 * The pipe of a fan through a wall.
 *
 * @param material what it is made of
 * @param conductivity thermal conductivity [W/(m·K)]
 * @param thickness wall thickness of the pipe [m]
 */
public record SleevePipe(
    @Key(about = "What it is made of", example = "metal") PipeMaterial material,
    @Key(about = "Thermal conductivity, W/(m·K)") Sourced conductivity,
    @Key(about = "Wall thickness of the pipe, m") Sourced thickness) {}
