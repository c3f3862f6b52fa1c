package org.drysill.survey.log.read;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.drysill.survey.log.LogCode;
import org.drysill.survey.log.LogFigures;
import org.drysill.survey.log.LogFile;
import org.drysill.yaml.Problem;

/** Notes a log of another year than the visit: its clock was never set, or it is another log. */
final class FarFromVisit {
  /** A log may run on after a visit or end before it, but not by more; judgement. */
  private static final int MOST_MONTHS = 12;

  private FarFromVisit() {}

  /** The problem; empty for a log that cannot be used and for one near the visit. */
  static Optional<Problem> of(LogFile log, LocalDate visit) {
    return log.account().flatMap(account -> of(log.file(), account, visit));
  }

  private static Optional<Problem> of(String file, LogFile.Account account, LocalDate visit) {
    LogFigures figures = account.figures();
    ZoneId zone = account.layout().zone();
    LocalDate first = LocalDate.ofInstant(figures.first(), zone);
    LocalDate last = LocalDate.ofInstant(figures.last(), zone);
    if (!first.isAfter(visit.plusMonths(MOST_MONTHS))
        && !last.isBefore(visit.minusMonths(MOST_MONTHS))) {
      return Optional.empty();
    }
    return Optional.of(
        new Refusals(file, List.of())
            .at(
                1,
                LogCode.FAR_FROM_VISIT,
                "readings from " + first + " to " + last,
                "some within twelve months of the visit of " + visit)
            .problem());
  }
}
