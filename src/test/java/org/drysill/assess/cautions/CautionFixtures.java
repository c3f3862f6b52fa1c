package org.drysill.assess.cautions;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Home;
import org.drysill.assess.HomeFixtures;
import org.drysill.reference.cautions.CautionFacts;
import org.drysill.reference.cautions.CautionFile;

/** Homes by the facts that call for cautions. */
final class CautionFixtures {
  static final CautionAssessor ASSESSOR =
      new CautionAssessor(CautionFile.all(), CautionFacts.read());

  private CautionFixtures() {}

  /**
   * A home.
   *
   * @param dwelling more keys of the dwelling in flow style, beginning with a comma; may be empty
   * @param room keys of the one bathroom in flow style, beginning with a comma; may be empty
   */
  static Home home(String dwelling, String room) {
    return HomeFixtures.home(
        "floor_area: 84 m2" + dwelling, "- {id: bath, use: bathroom" + room + "}");
  }

  static List<String> shown(String dwelling, String room) {
    return ASSESSOR.assess(home(dwelling, room)).shown().stream().map(ShownCaution::id).toList();
  }

  /** Why a caution is shown in a home as it stands; empty where it is not. */
  static Optional<String> because(String id, String dwelling, String room) {
    return ASSESSOR.assess(home(dwelling, room)).caution(id).map(ShownCaution::because);
  }

  /** Why a caution belongs to work in the home; empty where it does not. */
  static Optional<String> ofWork(String id, String dwelling) {
    Home home = home(dwelling, "");
    return ASSESSOR.ofWork(List.of(id), home, home.rooms()).stream()
        .map(ShownCaution::because)
        .findFirst();
  }
}
