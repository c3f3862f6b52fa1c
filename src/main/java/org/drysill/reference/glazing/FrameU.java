package org.drysill.reference.glazing;

import org.drysill.reference.Citation;
import org.drysill.reference.Spread;
import org.drysill.yaml.Key;

/**
 * Thermal transmittance of a window frame.
 *
 * @param frame what it is made of
 * @param uf thermal transmittance [W/(m²·K)]
 * @param source where it comes from
 */
public record FrameU(
    @Key(about = "What it is made of", example = "timber") String frame,
    @Key(about = "Thermal transmittance, W/(m²·K)", example = "1.8..2.0") Spread uf,
    @Key(about = "Where it comes from") Citation source) {}
