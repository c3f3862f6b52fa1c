package org.drysill.assess.recovery;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Direction;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Verdict;
import org.drysill.reference.recovery.RecoveryDefaults;

/** Whether the measured ratio reaches the declared one. */
final class DeclaredFinding {
  private DeclaredFinding() {}

  static Finding of(
      String id,
      String subject,
      String room,
      Figure declared,
      Optional<Figure> measured,
      RecoveryDefaults defaults) {
    Verdict verdict =
        measured.map(m -> Verdict.atLeast(m.value(), declared.likely())).orElse(Verdict.UNKNOWN);
    return new Finding(
        id + ".declared_reached",
        subject + ", heat recovery",
        Optional.of(room),
        verdict,
        Direction.AT_LEAST,
        measured,
        Optional.of(declared),
        because(verdict, declared, measured),
        verdict == Verdict.UNKNOWN ? Optional.of(settledBy(defaults)) : Optional.empty(),
        List.of(defaults.laboratoryDifference().source()));
  }

  private static String because(Verdict verdict, Figure declared, Optional<Figure> measured) {
    String promised = Numbers.percent(declared.likely());
    if (measured.isEmpty()) {
      return "Its maker declares %s; nothing usable was measured.".formatted(promised);
    }
    Figure found = measured.get();
    String bounds =
        "%s (%s to %s)"
            .formatted(
                Numbers.reached(found.likely()),
                Numbers.percent(found.value().low()),
                Numbers.percent(found.value().high()));
    return switch (verdict) {
      case MEETS -> "Measured %s, declared %s: it reaches it.".formatted(bounds, promised);
      case SHORT -> "Measured %s, declared %s: it falls short of it.".formatted(bounds, promised);
      case UNKNOWN ->
          "Measured %s, declared %s: the error of the test hides the difference."
              .formatted(bounds, promised);
    };
  }

  private static String settledBy(RecoveryDefaults defaults) {
    return "Take indoor, outdoor and supply temperature at the room side of the unit through whole"
        + " cycles, with %s K or more between indoors and outdoors."
            .formatted(Numbers.number(defaults.laboratoryDifference().likely()));
  }
}
