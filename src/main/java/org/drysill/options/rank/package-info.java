/**
 * Within step 3: in which order measures deserve the money, and why.
 *
 * <p>In: measures with effect and money. Out: ranks with reasons, and what a budget buys.
 */
package org.drysill.options.rank;
