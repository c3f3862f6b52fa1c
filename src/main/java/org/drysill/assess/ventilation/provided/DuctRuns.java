package org.drysill.assess.ventilation.provided;

import org.drysill.reference.ventilation.DuctRun;
import org.drysill.reference.ventilation.VentilationDefaults;
import org.drysill.survey.Duct;
import org.drysill.survey.DuctMaterial;
import org.drysill.survey.Fan;
import org.drysill.survey.FanKind;

/** How far a fan blows, as the deratings tell it apart. */
final class DuctRuns {
  private DuctRuns() {}

  static DuctRun of(Fan fan, VentilationDefaults defaults) {
    if (fan.kind() == FanKind.BALANCED_HEAT_RECOVERY || fan.kind() == FanKind.POSITIVE_INPUT) {
      return DuctRun.DUCTED_SYSTEM;
    }
    return fan.duct().map(duct -> of(duct, defaults)).orElse(DuctRun.NOT_KNOWN);
  }

  private static DuctRun of(Duct duct, VentilationDefaults defaults) {
    boolean slack = duct.material().filter(m -> m == DuctMaterial.FLEXIBLE_SLACK).isPresent();
    int bends = duct.bends().orElse(0);
    if (slack || bends > 1) {
      return DuctRun.LONG_OR_SLACK_DUCT;
    }
    return duct.length().map(l -> byLength(l.value(), bends, defaults)).orElse(DuctRun.NOT_KNOWN);
  }

  private static DuctRun byLength(double metres, int bends, VentilationDefaults defaults) {
    if (bends == 0 && metres <= defaults.wallLength().value()) {
      return DuctRun.THROUGH_WALL;
    }
    return metres <= defaults.shortLength().value()
        ? DuctRun.SHORT_DUCT
        : DuctRun.LONG_OR_SLACK_DUCT;
  }
}
