/**
 * Samples of what is not known for sure: points that fill a cube of many dimensions evenly, what
 * they are in a distribution, and how much of the spread of a result each of them explains.
 */
package org.drysill.physics.samples;
