package org.drysill.options;

import java.util.List;
import org.drysill.assess.Assumption;
import org.drysill.reference.measures.OptionDefaults;

/** What the study of options takes for granted. */
final class OptionAssumptions {
  private OptionAssumptions() {}

  static List<Assumption> of(OptionDefaults defaults) {
    return List.of(
        new Assumption(
            "options.one_zone",
            "Effect of measures",
            "the home is one zone in a steady state",
            "A measure is reckoned by how it changes the ratio of water given off to outdoor air.",
            "Log temperature and humidity in each room for two cold weeks.",
            defaults.leastEffect().source()),
        new Assumption(
            "options.gains",
            "Free heat",
            defaults.gains().range().low()
                + " to "
                + defaults.gains().range().high()
                + " K below the indoor temperature the heating is off",
            "Sun, people and appliances warm an ordinary home by as much.",
            "Compare the figures with the energy of a year's bills.",
            defaults.gains().source()),
        new Assumption(
            "options.load",
            "Washing dried indoors",
            defaults.kgPerLoad().range().low()
                + " to "
                + defaults.kgPerLoad().range().high()
                + " kg of water a load",
            "Usual after spinning.",
            "Weigh a load wet and dry.",
            defaults.kgPerLoad().source()));
  }
}
