/** Growth of mould on a surface over time. */
package org.drysill.physics.mould;
