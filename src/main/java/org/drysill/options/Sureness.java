package org.drysill.options;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Unit;
import org.drysill.physics.Range;

/**
 * How sure the ranking of packages is and what makes it unsure, from samples of all that is not
 * known for sure.
 *
 * @param samples how many samples
 * @param packages how many packages were looked at in each
 * @param results the results that were looked at: of the best package its air, what its walls have
 *     in reserve and its yearly cost, and by how much it is cheaper than the second
 * @param inputs what was not known, that which moves any result most first
 */
public record Sureness(int samples, int packages, List<Result> results, List<Input> inputs) {
  /** Copies the lists. */
  public Sureness {
    results = List.copyOf(results);
    inputs = List.copyOf(inputs);
  }

  /** Standard error of a chance of one half in so many samples [1]. */
  public double coarseness() {
    return Math.sqrt(0.25 / samples);
  }

  /** The results that inputs are held against. */
  public enum ResultKind {
    /** Outdoor air of the home with the best package [m³/s]. */
    AIR,
    /** How much more vapour indoors the walls and corners of the best package would bear [1]. */
    RESERVE,
    /** Yearly cost of the best package over the horizon [currency/a]. */
    COST,
    /** Yearly cost of the second package less that of the best [currency/a]. */
    LEAD
  }

  /** The sorts of what is not known. */
  public enum InputKind {
    /** Air through leaks and ventilators. */
    LEAKS,
    /** The flow of a fan that is there. */
    FAN,
    /** Water of all sources. */
    WATER,
    /** Air both ways through doors. */
    DOORS,
    /** Water that panes take. */
    GLASS,
    /** A moment of readings against the mean of days. */
    MOMENT,
    /** An error of the instruments that read humidity. */
    INSTRUMENT,
    /** How much a defect that is put in order first does today. */
    REPAIR,
    /** The vapour excess of a room as it was logged or taken. */
    EXCESS,
    /** The temperature factor of a cold place. */
    SURFACE,
    /** Outdoor humidity of the climate. */
    CLIMATE,
    /** The price of a measure. */
    PRICE,
    /** What a measure does. */
    EFFECT,
    /** What a measure takes to run. */
    RUNNING,
    /** Energy prices, discount rate, heat of a year. */
    MONEY
  }

  /**
   * A result over the samples.
   *
   * @param kind which one
   * @param name its name in sentences
   * @param unit its unit
   * @param spread 5 %, median, 95 %
   * @param target what it has to reach, where there is such a thing
   */
  public record Result(
      ResultKind kind, String name, Unit unit, Range spread, Optional<Double> target) {}

  /**
   * Something that is not known for sure.
   *
   * @param id stable id, such as {@code factor.north-corner} or {@code price.window-ventilator}
   * @param kind which sort
   * @param place the survey's id of the fan, room or place, or the id of the measure; empty for the
   *     home
   * @param name its name in sentences
   * @param basis on what it rests
   * @param restsOn the same in words that can follow "rests on"
   * @param shares what it does to each result
   */
  public record Input(
      String id,
      InputKind kind,
      Optional<String> place,
      String name,
      Basis basis,
      String restsOn,
      List<Share> shares) {
    /** Copies the list. */
    public Input {
      shares = List.copyOf(shares);
    }

    /** What it does to a result. */
    public Optional<Share> share(ResultKind result) {
      return shares.stream().filter(s -> s.result() == result).findFirst();
    }

    /** The greatest of its shares [1]. */
    public double greatest() {
      return shares.stream().mapToDouble(Share::share).max().orElse(0);
    }
  }

  /**
   * What an input does to a result.
   *
   * @param result which result
   * @param share of its variance, first order [1]
   * @param error standard error of the share [1]
   * @param low expected result over the tenth of the samples in which the input is lowest, in the
   *     unit of the result
   * @param high the same where it is highest
   */
  public record Share(ResultKind result, double share, double error, double low, double high) {}
}
