package org.drysill.options;

import java.util.List;
import org.drysill.assess.Assessment;
import org.drysill.options.money.MoneyStudy;
import org.drysill.options.rank.Entry;
import org.drysill.options.rank.Ranking;

/** The single measures that work in a home, ranked, all of them safe. */
public final class StudiedEntries {
  private StudiedEntries() {}

  /** Those of an assessment. */
  public static List<Entry> of(Assessment assessment, OptionsBasis basis) {
    MoneyStudy money = new MoneyStudy(assessment, basis);
    return new Ranking(basis.defaults().step().likely())
        .ranked(
            Sieve.sift(assessment, basis).working().stream()
                .map(s -> new Entry(money.of(s), List.of(), true))
                .toList());
  }
}
