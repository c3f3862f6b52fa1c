package org.drysill.options.packs;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.Figure;
import org.drysill.options.MeasureEffect;
import org.drysill.options.SurfaceChange;
import org.drysill.options.packs.PackValue.Bits;
import org.drysill.reference.measures.Prerequisite;

/**
 * Which measures packages are made of: all that work by themselves, have a known cost and change
 * air, water or a surface. Where their packages were too many, first those go that cost no less and
 * do no more than another that they cannot stand beside, then the last in the order of single
 * measures, one by one.
 *
 * @param air members of the air side
 * @param fabric members of the fabric side
 * @param leftOut what was left out and why, in sentences
 */
record Candidates(List<Member> air, List<Member> fabric, List<String> leftOut) {
  /** As many as one bit set holds. */
  private static final int MOST_MEMBERS = 62;

  Candidates {
    air = List.copyOf(air);
    fabric = List.copyOf(fabric);
    leftOut = List.copyOf(leftOut);
  }

  /**
   * Among measures in the order of their ranking.
   *
   * @param most the most packages
   */
  static Candidates of(List<Member> ranked, long most) {
    LeftOut leftOut = new LeftOut();
    List<Member> kept = new ArrayList<>();
    for (Member member : ranked) {
      if (Double.isInfinite(member.entry().annualCost())) {
        leftOut.add(member, "its cost is not known");
      } else if (member.lacks()) {
        leftOut.add(member, "it needs first what no measure here brings (see the measure)");
      } else {
        kept.add(member);
      }
    }
    dropIdle(kept, leftOut);
    return reduced(kept, most, leftOut);
  }

  /** What does nothing by itself stays while another needs it. */
  private static void dropIdle(List<Member> kept, LeftOut leftOut) {
    for (Member member : List.copyOf(kept)) {
      if (!member.acts() && !isNeeded(member, kept)) {
        kept.remove(member);
        leftOut.add(
            member,
            "changes neither air nor water nor a surface by itself, and no measure that was"
                + " combined needs it first");
      }
    }
  }

  private static boolean isNeeded(Member member, List<Member> others) {
    return others.stream().anyMatch(member::brings);
  }

  int size() {
    return air.size() + fabric.size();
  }

  /** All of them. */
  List<Member> each() {
    return Stream.concat(air.stream(), fabric.stream()).toList();
  }

  /** The members of a package. */
  List<Member> in(PackValue value) {
    return each().stream().filter(m -> has(value, m)).toList();
  }

  boolean has(PackValue value, Member member) {
    Bits bit = bit(member);
    return (value.members().air() & bit.air()) != 0
        || (value.members().fabric() & bit.fabric()) != 0;
  }

  /** A package and one member more. */
  Bits with(Bits members, Member member) {
    Bits bit = bit(member);
    return new Bits(members.air() | bit.air(), members.fabric() | bit.fabric());
  }

  private Bits bit(Member member) {
    int inAir = air.indexOf(member);
    return inAir >= 0 ? new Bits(1L << inAir, 0) : new Bits(0, 1L << fabric.indexOf(member));
  }

  private static Candidates reduced(List<Member> kept, long most, LeftOut leftOut) {
    if (isTooMany(kept, most)) {
      for (Member member : List.copyOf(kept)) {
        if (kept.stream().anyMatch(other -> dominates(other, member))) {
          kept.remove(member);
          leftOut.add(member, "what takes its place costs no more and does as much");
        }
      }
    }
    while (isTooMany(kept, most)) {
      Member last = last(kept);
      kept.remove(last);
      leftOut.add(
          last,
          String.format(Locale.ROOT, "there would be more than %,d packages", most)
              + ", and no single measure ranks lower");
      dropIdle(kept, leftOut);
    }
    return new Candidates(
        kept.stream().filter(Member::isOfTheAir).toList(),
        kept.stream().filter(m -> !m.isOfTheAir()).toList(),
        leftOut.sentences());
  }

  /** The last whose going leaves no other without what it needs, save where there is none. */
  private static Member last(List<Member> kept) {
    for (int i = kept.size() - 1; i > 0; i--) {
      if (!isOnlyBringer(kept.get(i), kept)) {
        return kept.get(i);
      }
    }
    return kept.get(kept.size() - 1);
  }

  private static boolean isOnlyBringer(Member member, List<Member> kept) {
    return kept.stream()
        .anyMatch(
            other ->
                other.candidate().needs().stream()
                    .filter(need -> member.brings(need, other))
                    .anyMatch(need -> bringers(need, other, kept) == 1));
  }

  private static long bringers(Prerequisite need, Member member, List<Member> kept) {
    return kept.stream().filter(b -> b.brings(need, member)).count();
  }

  private static boolean isTooMany(List<Member> kept, long most) {
    List<Member> air = kept.stream().filter(Member::isOfTheAir).toList();
    List<Member> fabric = kept.stream().filter(m -> !m.isOfTheAir()).toList();
    if (air.size() > MOST_MEMBERS || fabric.size() > MOST_MEMBERS) {
      return true;
    }
    long sides = Subsets.of(against(air, air), (int) most).length;
    return sides * Subsets.of(against(fabric, fabric), (int) most).length > most;
  }

  /** Of each member the bits of the others that it excludes. */
  static long[] against(List<Member> members, List<Member> others) {
    long[] against = new long[members.size()];
    for (int i = 0; i < against.length; i++) {
      for (int j = 0; j < others.size(); j++) {
        boolean other = !members.get(i).id().equals(others.get(j).id());
        against[i] |= other && members.get(i).excludes(others.get(j)) ? 1L << j : 0;
      }
    }
    return against;
  }

  private static boolean dominates(Member one, Member other) {
    boolean alike = one.candidate().scope().equals(other.candidate().scope());
    return !one.id().equals(other.id())
        && alike
        && one.excludes(other)
        && one.entry().annualCost() <= other.entry().annualCost()
        && one.entry().firstCost() <= other.entry().firstCost()
        && (one.entry().admissible() || !other.entry().admissible())
        && (!one.entry().isStopGap() || other.entry().isStopGap())
        && doesAsMuch(one.effect(), other.effect())
        // Of two that are equal in all this the one with the earlier id stays.
        && (!doesAsMuch(other.effect(), one.effect())
            || one.entry().annualCost() < other.entry().annualCost()
            || one.id().compareTo(other.id()) < 0);
  }

  private static boolean doesAsMuch(MeasureEffect one, MeasureEffect other) {
    return likely(one.lacksAfter()) <= likely(other.lacksAfter())
        && likely(one.excessChange()) <= likely(other.excessChange())
        && one.settles().containsAll(other.settles())
        && other.surfaces().stream().allMatch(s -> monthsAfter(one, s) <= s.monthsAfter().likely());
  }

  private static double likely(Optional<Figure> figure) {
    return figure.map(Figure::likely).orElse(0.0);
  }

  private static double monthsAfter(MeasureEffect effect, SurfaceChange place) {
    return effect.surfaces().stream()
        .filter(s -> s.place().equals(place.place()))
        .mapToDouble(s -> s.monthsAfter().likely())
        .findFirst()
        .orElse(place.monthsBefore());
  }
}
