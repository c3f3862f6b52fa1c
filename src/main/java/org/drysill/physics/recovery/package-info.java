/** Heat recovery in use: temperature ratios, cycles, unbalance, sleeves through the wall. */
package org.drysill.physics.recovery;
