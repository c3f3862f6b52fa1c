package org.drysill.options;

import java.util.List;
import java.util.Optional;

/**
 * A reading that takes away much of what is in doubt.
 *
 * @param input the id of what it settles
 * @param room the id of the room that it is about; empty for the home
 * @param ask what is to be done and where, in a sentence
 * @param with with what
 * @param when when and how long
 * @param ofAir the share of the doubt whether there is enough air that it takes away [1]; 0 where
 *     it takes none, or where that is not in doubt
 * @param ofMould the same of the doubt whether walls and corners stay free of mould [1]
 * @param ofRanking the same of the doubt which of the best two packages costs less [1]
 * @param covers words of other instructions that it makes needless
 */
public record NextReading(
    String input,
    Optional<String> room,
    String ask,
    String with,
    String when,
    double ofAir,
    double ofMould,
    double ofRanking,
    List<String> covers) {
  /** Copies the list. */
  public NextReading {
    covers = List.copyOf(covers);
  }

  /** The greatest of its shares [1]. */
  public double most() {
    return Math.max(ofRanking, Math.max(ofAir, ofMould));
  }

  /** True where it makes another instruction needless. */
  public boolean covers(String instruction, Optional<String> itsRoom) {
    return (room.isEmpty() || itsRoom.isEmpty() || room.equals(itsRoom))
        && covers.stream().anyMatch(instruction::contains);
  }
}
