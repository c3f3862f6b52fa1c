/** Air change out of a logged tracer: decays found, fitted, judged and combined into evidence. */
package org.drysill.physics.tracer;
