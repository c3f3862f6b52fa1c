package org.drysill.assess.model;

import org.drysill.reference.Sourced;
import org.drysill.reference.model.ModelDefaults;
import org.drysill.reference.readings.BalanceRules;

/**
 * What the model rests on beside the home.
 *
 * @param defaults what is believed before the readings
 * @param balance when readings can tell the production of moisture
 * @param paneFilm convective film coefficient of a pane [W/(m²·K)]
 */
public record ModelRules(ModelDefaults defaults, BalanceRules balance, Sourced paneFilm) {}
