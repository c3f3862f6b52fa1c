package org.drysill.yaml;

import java.util.Optional;
import org.drysill.yaml.ProblemList.Finding;

/** Complains about values, with the place of the value and what its key expects. */
final class Complaints {
  private final ProblemList problems;

  Complaints(ProblemList problems) {
    this.problems = problems;
  }

  Place place(Spot spot) {
    return problems.lines().atPoint(spot.node().getStartMark().getIndex());
  }

  /** Something else stands where a value of a shape should. */
  Optional<Object> wrong(YamlCode code, Spot spot, Shape shape, String found) {
    return wrong(code, spot, shape, found, Optional.empty());
  }

  Optional<Object> wrong(
      YamlCode code, Spot spot, Shape shape, String found, Optional<String> meant) {
    return add(code, spot, new Finding(found, Expectation.of(shape, spot.key()), meant));
  }

  /** Always empty, so that a reader can return what it says. */
  Optional<Object> add(YamlCode code, Spot spot, Finding finding) {
    problems.add(code, place(spot), spot.path(), finding);
    return Optional.empty();
  }
}
