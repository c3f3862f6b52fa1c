package org.drysill.options.draws;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.options.Sureness;
import org.drysill.options.Sureness.InputKind;

/**
 * Something that is not known for sure, with its value in each sample.
 *
 * @param id stable id
 * @param kind which sort
 * @param place the survey's id of where it is, or that of a measure
 * @param name its name in sentences
 * @param basis on what it rests
 * @param restsOn the same in words
 * @param values its value in each sample, in whatever unit rises with it
 */
public record Doubt(
    String id,
    InputKind kind,
    Optional<String> place,
    String name,
    Basis basis,
    String restsOn,
    List<Double> values) {
  /** Copies the list. */
  public Doubt {
    values = List.copyOf(values);
  }

  /** With what it does to results. */
  public Sureness.Input with(List<Sureness.Share> shares) {
    return new Sureness.Input(id, kind, place, name, basis, restsOn, shares);
  }
}
