package org.drysill.assess.logs.air;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;

/**
 * The air change of a room by decays of one tracer.
 *
 * @param room the room's id
 * @param roomName its name in sentences
 * @param tracer CO₂ or vapour
 * @param accepted decays whose rate counts
 * @param refused falls whose rate does not count, by reason
 * @param airChange by CO₂ the air change with its interval, by vapour the least that it can be
 *     [1/h]; empty without a decay that counts
 * @param hardlyAbove by vapour, what it hardly exceeds [1/h]
 * @param believed beside what ventilation says that the room gets; empty where either is unknown
 * @param said what it means, in words
 */
public record AirChangeOfLog(
    String room,
    String roomName,
    Tracer tracer,
    int accepted,
    List<Refused> refused,
    Optional<Figure> airChange,
    Optional<Figure> hardlyAbove,
    Optional<Finding> believed,
    String said) {
  /** Copies the list. */
  public AirChangeOfLog {
    refused = List.copyOf(refused);
  }

  /** What was logged. */
  public enum Tracer {
    /** Gives the air change with an interval. */
    CO2("CO₂"),
    /** Gives a lower bound only, for walls and furniture store it. */
    VAPOUR("vapour");

    private final String word;

    Tracer(String word) {
      this.word = word;
    }

    /** Its name in sentences. */
    public String word() {
      return word;
    }
  }

  /**
   * Falls that were refused for one reason.
   *
   * @param reason in words
   * @param count how many
   */
  public record Refused(String reason, int count) {}

  /** All falls that were looked at. */
  public int looked() {
    return accepted + refused.stream().mapToInt(Refused::count).sum();
  }
}
