/** Rises and sudden falls of vapour: showers, cooking, drying, windows. */
package org.drysill.physics.tracer.event;
