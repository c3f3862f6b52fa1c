/** Air that flows: leakage, openings, windows, ducts, tracer gas. */
package org.drysill.physics.flow;
