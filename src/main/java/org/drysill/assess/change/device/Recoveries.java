package org.drysill.assess.change.device;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.change.shown.Judgement;
import org.drysill.assess.change.shown.OwnId;
import org.drysill.assess.change.shown.Pair;
import org.drysill.assess.recovery.HeatRecoveryResult;
import org.drysill.assess.recovery.RecoveryUnit;

/** Compares the heat recovery units that both visits tested, by their ids. */
public final class Recoveries {
  private Recoveries() {}

  /** The units with a measured ratio at both visits, in the order of the later survey. */
  public static List<RecoveryChange> compare(HeatRecoveryResult before, HeatRecoveryResult after) {
    return after.units().stream()
        .flatMap(unit -> before.unit(unit.id()).flatMap(was -> change(was, unit)).stream())
        .toList();
  }

  private static Optional<RecoveryChange> change(RecoveryUnit was, RecoveryUnit is) {
    return was.measured()
        .flatMap(
            first ->
                is.measured()
                    .map(
                        second ->
                            change(
                                is,
                                new Pair(named(is, "before", first), named(is, "after", second)))));
  }

  private static RecoveryChange change(RecoveryUnit unit, Pair pair) {
    return new RecoveryChange(
        unit.id(),
        unit.room(),
        unit.name(),
        pair.before(),
        pair.after(),
        pair.change(
            id(unit) + "_change",
            "Change of the measured heat recovery",
            Unit.PERCENTAGE_POINT,
            "η"),
        Judgement.byError(
            pair.difference(),
            pair.error(),
            String.format(
                Locale.ROOT, "plus or minus %.0f percentage points", pair.error() * 100)));
  }

  private static Figure named(RecoveryUnit unit, String when, Figure ratio) {
    return OwnId.of(id(unit) + "_" + when, "Heat recovered " + when, ratio);
  }

  private static String id(RecoveryUnit unit) {
    return "change.recovery." + unit.id() + ".ratio";
  }
}
