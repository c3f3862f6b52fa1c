/**
 * What readings tell of the unknowns of a model: the most likely values within what was believed
 * before, how sure they are, and which readings the model cannot explain.
 */
package org.drysill.physics.zones.fit;
