/** How much water goes into the air: by the list of sources, and by what the readings imply. */
package org.drysill.assess.moisture;
