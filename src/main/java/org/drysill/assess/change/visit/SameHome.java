package org.drysill.assess.change.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Verdict;

/**
 * Whether two surveys are of one home, by their addresses and their rooms.
 *
 * @param verdict meets where both say the same address and share rooms; short where the addresses
 *     differ or no room is in both; unknown where an address is missing
 * @param said the reason in one sentence
 * @param unmatched rooms of one survey only, in words
 */
public record SameHome(Verdict verdict, String said, List<String> unmatched) {
  /** Copies the list. */
  public SameHome {
    unmatched = List.copyOf(unmatched);
  }

  /** Looks at two homes. */
  public static SameHome of(Home before, Home after) {
    List<String> unmatched = new ArrayList<>();
    unmatched.addAll(only(before, after, "earlier"));
    unmatched.addAll(only(after, before, "later"));
    long shared = after.rooms().stream().filter(r -> before.room(r.id()).isPresent()).count();
    if (shared == 0) {
      return new SameHome(
          Verdict.SHORT,
          "No room is in both surveys, so that no room can be compared: rooms are matched by the"
              + " short name that the survey gives them",
          unmatched);
    }
    return of(address(before), address(after), shared, unmatched);
  }

  private static SameHome of(
      Optional<String> before, Optional<String> after, long shared, List<String> unmatched) {
    if (before.isEmpty() || after.isEmpty()) {
      return new SameHome(
          Verdict.UNKNOWN,
          "The address is not stated in both surveys: that they are of one home rests on the rooms"
              + " that are in both, "
              + shared
              + " of them",
          unmatched);
    }
    if (!plain(before.get()).equals(plain(after.get()))) {
      return new SameHome(
          Verdict.SHORT,
          "The surveys state different addresses, “"
              + before.get()
              + "” before and “"
              + after.get()
              + "” after: what follows holds only if both are of one home",
          unmatched);
    }
    return new SameHome(Verdict.MEETS, "Both surveys are of “" + after.get() + "”", unmatched);
  }

  private static Optional<String> address(Home home) {
    return home.survey().dwelling().address();
  }

  /** Without capitals, spaces and punctuation, which people write in many ways. */
  private static String plain(String address) {
    return address.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "");
  }

  private static List<String> only(Home in, Home notIn, String which) {
    return in.rooms().stream()
        .filter(room -> notIn.room(room.id()).isEmpty())
        .map(RoomFacts::name)
        .map(name -> "The " + name + ": in the " + which + " survey only")
        .toList();
  }
}
