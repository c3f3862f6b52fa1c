package org.drysill.options.packs;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drysill.assess.ventilation.words.FlowText;
import org.drysill.options.PackagesResult.InNone;
import org.drysill.options.rank.Purse;

/** Which measures are in all of the best packages, and which in none and why. */
record InBest(Packages packages, Candidates candidates, Purse purse, FlowText flows) {
  /** The titles of those in all of them. */
  static List<String> all(Candidates candidates, List<PackValue> best) {
    return candidates.each().stream()
        .filter(b -> !best.isEmpty() && best.stream().allMatch(v -> candidates.has(v, b)))
        .map(b -> b.candidate().title())
        .toList();
  }

  /** Those in none, in the order of single measures. */
  List<InNone> none(List<PackValue> best) {
    List<InNone> none = new ArrayList<>();
    for (Member member : best.isEmpty() ? List.<Member>of() : candidates.each()) {
      if (best.stream().noneMatch(v -> candidates.has(v, member))) {
        none.add(new InNone(member.candidate().title(), because(member, best.get(0))));
      }
    }
    return none;
  }

  private String because(Member member, PackValue first) {
    if (!member.entry().admissible()) {
      return "an appliance takes its air from the room, and it needs a spillage test first";
    }
    Optional<Member> instead =
        candidates.in(first).stream().filter(o -> o.excludes(member)).findFirst();
    return instead
        .map(o -> "package A has its place taken by: " + lower(o.candidate().title()))
        .orElseGet(() -> added(member, first));
  }

  private String added(Member member, PackValue first) {
    PackValue with = packages.of(candidates.with(first.members(), member));
    if (!packages.isWhole(with.members())) {
      return "package A lacks what it needs first: "
          + lower(String.join(" ", member.candidate().first()));
    }
    double more = with.bill().annual() - first.bill().annual();
    String money = (more < 0 ? "save " : "cost ") + purse.words(Math.abs(more)) + " a year";
    int months = first.mould() - with.mould();
    if (months > 0) {
      return "added to package A it would end " + months(months) + " more and " + money;
    }
    double air = first.lacks() - with.lacks();
    if (air > PackOrder.NO_AIR) {
      return "added to package A it would bring "
          + flows.provided(air)
          + " of the air that is lacking and "
          + money;
    }
    int dry = first.wet() - with.wet();
    return dry > 0
        ? "added to package A it would only dry glass, in " + months(dry) + ", and " + money
        : "added to package A it would end nothing more and " + money;
  }

  private static String months(int number) {
    return number + (number == 1 ? " month" : " months");
  }

  private static String lower(String title) {
    return title.substring(0, 1).toLowerCase(Locale.ROOT) + title.substring(1);
  }
}
