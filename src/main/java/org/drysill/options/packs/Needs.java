package org.drysill.options.packs;

import java.util.ArrayList;
import java.util.List;
import org.drysill.options.packs.PackValue.Bits;
import org.drysill.reference.measures.Prerequisite;

/**
 * What members of packages must have with them. A prerequisite whose every bringer was left out, or
 * comes before all, is printed with the measure and asks for nothing here.
 *
 * @param ofAir needs of members of the air side
 * @param ofFabric needs of members of the fabric side
 */
record Needs(List<Need> ofAir, List<Need> ofFabric) {
  static final Needs NONE = new Needs(List.of(), List.of());

  Needs {
    ofAir = List.copyOf(ofAir);
    ofFabric = List.copyOf(ofFabric);
  }

  /**
   * A need.
   *
   * @param of the bit of the member, on its own side
   * @param by the members of which one must be there
   */
  record Need(long of, Bits by) {
    boolean isMet(long side, Bits members) {
      return (side & of) == 0
          || (members.air() & by.air()) != 0
          || (members.fabric() & by.fabric()) != 0;
    }
  }

  static Needs of(Candidates candidates) {
    return new Needs(needs(candidates.air(), candidates), needs(candidates.fabric(), candidates));
  }

  private static List<Need> needs(List<Member> side, Candidates candidates) {
    List<Need> needs = new ArrayList<>();
    for (int i = 0; i < side.size(); i++) {
      Member member = side.get(i);
      for (Prerequisite need : member.candidate().needs()) {
        Bits by =
            new Bits(
                bringers(candidates.air(), need, member),
                bringers(candidates.fabric(), need, member));
        if (by.air() != 0 || by.fabric() != 0) {
          needs.add(new Need(1L << i, by));
        }
      }
    }
    return needs;
  }

  private static long bringers(List<Member> side, Prerequisite need, Member member) {
    long bits = 0;
    for (int i = 0; i < side.size(); i++) {
      bits |= side.get(i).brings(need, member) ? 1L << i : 0;
    }
    return bits;
  }

  /** True where all that members need is with them. */
  boolean areMet(Bits members) {
    for (Need need : ofAir) {
      if (!need.isMet(members.air(), members)) {
        return false;
      }
    }
    for (Need need : ofFabric) {
      if (!need.isMet(members.fabric(), members)) {
        return false;
      }
    }
    return true;
  }
}
