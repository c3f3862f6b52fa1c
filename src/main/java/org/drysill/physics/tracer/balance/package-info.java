/** What means over a period and known production tell of the air, and the other way round. */
package org.drysill.physics.tracer.balance;
