/** Heat and electricity that ventilation takes, and what money is worth in time. */
package org.drysill.physics.energy;
