package org.drysill.assess.surfaces;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Unit;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Bounds;
import org.drysill.physics.Range;
import org.drysill.physics.moisture.HumidityClass;
import org.drysill.reference.Citation;

/**
 * By how much the vapour pressure indoors exceeds that outdoors, at one outdoor temperature; the
 * months are reached from there.
 *
 * <p>How it is filled: from simultaneous indoor and outdoor readings or logs of a room, {@code
 * excess} is the vapour pressure indoors less that outdoors, with the instruments' error, {@code
 * outdoor} the outdoor temperature at which they were taken, {@code basis} measured. The range
 * should also hold what one reading cannot tell of a month's mean. A content excess dv [kg/m³]
 * becomes a pressure excess by dp = dv * 461.5 * (Ti + Te) / 2 with temperatures in K.
 *
 * @param excess vapour pressure excess [Pa] at {@code outdoor}; at least 0
 * @param outdoor outdoor temperature at which it holds [°C]
 * @param basis on what it rests
 * @param from what it rests on, in words that can follow "from", such as {@code the readings of 22
 *     January}
 * @param figure id of the figure that it is taken from, where there is one
 * @param sources the documents behind it
 */
public record IndoorVapour(
    Range excess,
    double outdoor,
    Basis basis,
    String from,
    Optional<String> figure,
    List<Citation> sources) {
  /** Copies the list. */
  public IndoorVapour {
    sources = List.copyOf(sources);
  }

  /**
   * The excess [Pa] at another outdoor temperature, for the same moisture load and air: with the
   * shape of the humidity classes of ISO 13788:2012, Annex A (memory), constant up to 0 °C and
   * falling in a line to nothing at 20 °C. Air that is drier indoors than outdoors is not carried
   * on: its excess counts as 0. Where it was read at 20 °C or more outdoors nothing follows from
   * it, and it must not be asked ({@link #isTooWarm}).
   *
   * @param celsius outdoor temperature [°C]
   */
  public Range excessAt(double celsius) {
    double scale = shape(celsius) / Bounds.above("shape of the excess as read", shape(outdoor), 0);
    return new Range(
        Math.max(0, excess.low() * scale),
        Math.max(0, excess.likely() * scale),
        Math.max(0, excess.high() * scale));
  }

  /** The excess as an input of a working, with the outdoor temperature at which it holds. */
  public Input input() {
    return new Input(
        "Δp",
        "vapour indoors over outdoors at %s °C, from %s".formatted(Words.number(outdoor), from),
        excess,
        Unit.PASCAL,
        basis,
        figure);
  }

  /**
   * True where it was so warm outdoors that the excess says little of colder months.
   *
   * @param warmest outdoor temperature up to which it does [°C]
   */
  public boolean isTooWarm(double warmest) {
    return outdoor > warmest;
  }

  private static double shape(double celsius) {
    return HumidityClass.CLASS_1.upperLimitPa(celsius).orElseThrow()
        / HumidityClass.CLASS_1.upperLimitPa(0).orElseThrow();
  }
}
