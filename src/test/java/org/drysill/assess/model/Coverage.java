package org.drysill.assess.model;

import java.util.List;
import org.drysill.physics.Range;

/**
 * How often the stated interval holds the truth.
 *
 * @param cases homes
 * @param held of these, homes whose interval holds the truth
 * @param bias mean of the logarithm of likely by true
 * @param width mean of the logarithm of the upper by the lower bound, halved
 * @param widthBefore the same before the readings
 */
public record Coverage(int cases, int held, double bias, double width, double widthBefore) {
  /** Of an unknown over homes. */
  public static Coverage of(String unknown, List<SyntheticHome> homes) {
    return homes.stream()
        .map(home -> one(home, unknown))
        .reduce(new Coverage(0, 0, 0, 0, 0), Coverage::plus)
        .mean();
  }

  /** The share of readings that the model says it cannot explain, though nothing is wrong [1]. */
  public static double leftOut(List<SyntheticHome> homes) {
    List<ModelledRoom> read =
        homes.stream()
            .flatMap(home -> home.result().rooms().stream())
            .filter(room -> room.measured().isPresent())
            .toList();
    return (double) read.stream().filter(room -> !room.explained()).count() / read.size();
  }

  /** The share of homes whose interval holds the truth [1]. */
  public double share() {
    return (double) held / cases;
  }

  private static Coverage one(SyntheticHome home, String id) {
    FittedUnknown unknown =
        home.result().unknowns().stream()
            .filter(u -> u.after().id().equals(id))
            .findFirst()
            .orElseThrow();
    double truth = home.truth(id);
    return new Coverage(
        1,
        SyntheticHome.holds(unknown.after().value(), truth) ? 1 : 0,
        Math.log(unknown.after().likely() / truth),
        half(unknown.after().value()),
        half(unknown.before().value()));
  }

  private static double half(Range range) {
    return Math.log(range.high() / range.low()) / 2;
  }

  private Coverage plus(Coverage other) {
    return new Coverage(
        cases + other.cases,
        held + other.held,
        bias + other.bias,
        width + other.width,
        widthBefore + other.widthBefore);
  }

  private Coverage mean() {
    return new Coverage(cases, held, bias / cases, width / cases, widthBefore / cases);
  }
}
