/** Exponential fits with honest errors, and how several of them become one. */
package org.drysill.physics.tracer.fit;
