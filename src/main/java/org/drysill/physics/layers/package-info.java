/** Water within built-up elements, month by month. */
package org.drysill.physics.layers;
