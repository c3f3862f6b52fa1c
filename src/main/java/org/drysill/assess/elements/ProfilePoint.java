package org.drysill.assess.elements;

/**
 * A wall at one plane in one month.
 *
 * @param layer the layer that the plane lies in or begins, 0 for the first; the number of layers
 *     for the outer surface
 * @param share share of the layer's thickness before it [1]
 * @param temperatureC temperature [°C]
 * @param saturationPa saturation vapour pressure [Pa]
 * @param vapourPa vapour pressure [Pa]
 * @param settling true where water settles or lies
 */
public record ProfilePoint(
    int layer,
    double share,
    double temperatureC,
    double saturationPa,
    double vapourPa,
    boolean settling) {}
