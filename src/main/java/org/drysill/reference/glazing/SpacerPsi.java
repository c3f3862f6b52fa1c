package org.drysill.reference.glazing;

import org.drysill.reference.Citation;
import org.drysill.reference.Spread;
import org.drysill.yaml.Key;

/**
 * Linear thermal transmittance between pane and frame.
 *
 * @param spacer what keeps the panes apart
 * @param frame what the frame is made of
 * @param glazing uncoated or low-e
 * @param psi linear thermal transmittance [W/(m·K)]
 * @param source where it comes from
 */
public record SpacerPsi(
    @Key(about = "What keeps the panes apart", example = "aluminium or steel") String spacer,
    @Key(about = "What the frame is made of", example = "timber or pvc") String frame,
    @Key(about = "uncoated or low-e", example = "low-e") String glazing,
    @Key(about = "Linear thermal transmittance, W/(m·K)", example = "0.08") Spread psi,
    @Key(about = "Where it comes from") Citation source) {}
