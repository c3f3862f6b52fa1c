package org.drysill.physics.tracer.fit;

/**
 * One estimate among several of the same quantity.
 *
 * @param value the estimate
 * @param ownError standard error that has nothing to do with the other estimates
 * @param sharedError standard error that all of them have in common
 * @param degreesOfFreedom behind the own error
 */
public record Estimate(
    double value, double ownError, double sharedError, double degreesOfFreedom) {}
