/** Figures of air as words within the sentences of findings, rounded towards the failing side. */
package org.drysill.assess.ventilation.words;
