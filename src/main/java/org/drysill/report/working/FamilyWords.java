package org.drysill.report.working;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.report.block.WorkingEntry;
import org.drysill.report.block.WorkingFamily;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Typeset;
import org.drysill.report.words.Words;

/**
 * Writes families of figures, each thing once: sources and remarks where they first come, inputs
 * that all figures of a family share in its head, of names what differs. Every value stays.
 */
final class FamilyWords {
  private final Numbers numbers;
  private final Function<Input, Optional<String>> working;
  private final Set<String> explained = new HashSet<>();
  private final FirstMentions sources = new FirstMentions("sources");
  private final FirstMentions remarks = new FirstMentions("remarks");

  /**
   * A writer that has said nothing yet.
   *
   * @param working the number of an input's own working, where it has one
   */
  FamilyWords(Numbers numbers, Function<Input, Optional<String>> working) {
    this.numbers = numbers;
    this.working = working;
  }

  WorkingFamily of(Family family) {
    List<Family.Member> members = family.members();
    Working rule = members.get(0).working();
    Inputs inputs = new Inputs(numbers, working, explained);
    List<Input> shared = shared(members);
    Notes notes = new Notes(members);
    List<String> head = new ArrayList<>(remarks.at(family.number(), notes.common()));
    if (!shared.isEmpty()) {
      head.add("In all of them " + inputs.words(shared));
    }
    SharedName names = new SharedName(members.stream().map(m -> m.figure().name()).toList());
    List<WorkingEntry> entries = new ArrayList<>();
    for (Family.Member member : members) {
      int index = entries.size();
      List<Input> own = new ArrayList<>(member.working().inputs());
      own.removeIf(i -> shared.contains(i) || isItself(i, member.figure()));
      entries.add(
          new WorkingEntry(
              member.number(),
              names.of(index),
              numbers.worked(member.figure().value(), member.figure().unit()),
              basis(members, index),
              inputs.words(own),
              notes.own(index)));
    }
    return new WorkingFamily(
        family.number(),
        Typeset.units(rule.formula()),
        sources.at(family.number(), Sources.of(rule.sources()).stream().map(Typeset::of).toList()),
        String.join(" ", head.stream().map(Words::sentence).toList()),
        entries);
  }

  /** Inputs that are the same in each figure of more than one. */
  private static List<Input> shared(List<Family.Member> members) {
    List<Input> shared = new ArrayList<>(members.get(0).working().inputs());
    members.forEach(m -> shared.retainAll(m.working().inputs()));
    return members.size() < 2 ? List.of() : shared;
  }

  /** An assumed value that is the figure: it would be printed twice. */
  private static boolean isItself(Input input, Figure figure) {
    return input.name().equals(Words.basis(input.basis()))
        && input.value().equals(figure.value())
        && input.unit() == figure.unit();
  }

  /** On what a figure rests, where that is not plain or said of the one before. */
  private static String basis(List<Family.Member> members, int index) {
    Basis basis = members.get(index).figure().basis();
    Basis before = index == 0 ? Basis.CALCULATED : members.get(index - 1).figure().basis();
    return basis == before ? "" : Words.basis(basis);
  }
}
