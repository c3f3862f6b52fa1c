package org.drysill.reference.rules;

import java.util.List;
import java.util.Optional;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;
import org.drysill.yaml.Shorthand;

/**
 * A way to compute a rate of air. The values are those of the document; nothing is computed here.
 */
public sealed interface Rate {
  /** Hands this to the case that it is. */
  <T> T on(Cases<T> cases);

  /**
   * One answer for each way to compute a rate, so that none is forgotten.
   *
   * @param <T> the answer
   */
  interface Cases<T> {
    /** The greatest of several terms. */
    T greatestOf(GreatestOf rate);

    /** The sum of several terms. */
    T sumOf(SumOf rate);

    /** The first of several terms less the others. */
    T differenceOf(DifferenceOf rate);

    /** By the number of bedrooms. */
    T byBedrooms(ByBedrooms rate);

    /** By floor area and number of bedrooms. */
    T byFloorAndBedrooms(ByFloorAndBedrooms rate);

    /** By the number of main rooms. */
    T byMainRooms(ByMainRooms rate);

    /** By person. */
    T perPerson(PerPerson rate);

    /** By floor area. */
    T perFloorArea(PerFloorArea rate);

    /** By a polynomial of the floor area. */
    T floorPolynomial(FloorPolynomial rate);

    /** Summed over the rooms of some kinds. */
    T perRoom(PerRoom rate);

    /** Air changes of the whole home. */
    T airChange(AirChange rate);

    /** What leaks are credited with. */
    T leakageCredit(LeakageCredit rate);

    /** The same for every home. */
    T fixed(Fixed rate);
  }

  /**
   * The greatest of several terms.
   *
   * @param terms the terms
   */
  record GreatestOf(List<Term> terms) implements Rate {
    @Override
    public <T> T on(Cases<T> cases) {
      return cases.greatestOf(this);
    }
  }

  /**
   * The sum of several terms.
   *
   * @param terms the terms
   */
  record SumOf(List<Term> terms) implements Rate {
    @Override
    public <T> T on(Cases<T> cases) {
      return cases.sumOf(this);
    }
  }

  /**
   * The first of several terms less the others, and at least nothing.
   *
   * @param terms the terms
   */
  record DifferenceOf(List<Term> terms) implements Rate {
    @Override
    public <T> T on(Cases<T> cases) {
      return cases.differenceOf(this);
    }
  }

  /**
   * By the number of bedrooms.
   *
   * @param steps the rates of the table
   * @param perFurther what each bedroom past the table adds
   */
  record ByBedrooms(
      @Key(about = "The rates of the table", required = true) List<RateStep> steps,
      @Key(
              about = "What each bedroom past the table adds",
              dimension = Dimension.AIRFLOW,
              unit = "l/s",
              min = 0,
              example = "6 l/s")
          Optional<Quantity> perFurther)
      implements Rate {
    @Override
    public <T> T on(Cases<T> cases) {
      return cases.byBedrooms(this);
    }

    /** Refuses steps out of order. */
    public ByBedrooms {
      steps = RateStep.ascending(steps);
    }
  }

  /**
   * By floor area and number of bedrooms.
   *
   * @param rows the rows of the table, each for homes larger than its floor area
   */
  record ByFloorAndBedrooms(
      @Key(about = "The rows of the table", required = true) List<FloorStep> rows) implements Rate {
    @Override
    public <T> T on(Cases<T> cases) {
      return cases.byFloorAndBedrooms(this);
    }

    /** Refuses rows out of order. */
    public ByFloorAndBedrooms {
      rows = FloorStep.ascending(rows);
    }
  }

  /**
   * By the number of main rooms; past the table its last rate holds.
   *
   * @param steps the rates of the table
   */
  record ByMainRooms(@Key(about = "The rates of the table", required = true) List<RateStep> steps)
      implements Rate {
    @Override
    public <T> T on(Cases<T> cases) {
      return cases.byMainRooms(this);
    }

    /** Refuses steps out of order. */
    public ByMainRooms {
      steps = RateStep.ascending(steps);
    }
  }

  /**
   * By person.
   *
   * @param rate the rate of one person
   * @param counted who counts as a person
   */
  record PerPerson(
      @Key(
              about = "The rate of one person",
              dimension = Dimension.AIRFLOW,
              unit = "l/s",
              min = 0,
              example = "7 l/s")
          Quantity rate,
      @Key(about = "Who counts as a person", example = "occupants") PersonCount counted)
      implements Rate {
    @Override
    public <T> T on(Cases<T> cases) {
      return cases.perPerson(this);
    }
  }

  /**
   * By floor area.
   *
   * @param rate the rate
   * @param area the area that the rate is printed for
   */
  record PerFloorArea(
      @Key(
              about = "The rate",
              dimension = Dimension.AIRFLOW,
              unit = "l/s",
              min = 0,
              example = "0.3 l/s")
          Quantity rate,
      @Key(
              about = "The area that the rate is printed for",
              dimension = Dimension.AREA,
              unit = "m2",
              min = 0.01,
              example = "1 m2")
          Quantity area)
      implements Rate {
    @Override
    public <T> T on(Cases<T> cases) {
      return cases.perFloorArea(this);
    }
  }

  /**
   * By a polynomial of the floor area in m²: constant + linear × A + square × A².
   *
   * @param constant the part that every home has
   * @param perM2 the part by each m²
   * @param perM4 the part by each m² squared; may be negative
   */
  record FloorPolynomial(
      @Key(
              about = "The part that every home has",
              dimension = Dimension.AIRFLOW,
              unit = "l/s",
              example = "20 m3/h")
          Quantity constant,
      @Key(
              about = "The part by each m2",
              dimension = Dimension.AIRFLOW,
              unit = "l/s",
              example = "1.15 m3/h")
          Quantity perM2,
      @Key(
              about = "The part by each m2 squared; may be negative",
              dimension = Dimension.AIRFLOW,
              unit = "l/s",
              example = "-0.001 m3/h")
          Quantity perM4)
      implements Rate {
    @Override
    public <T> T on(Cases<T> cases) {
      return cases.floorPolynomial(this);
    }
  }

  /**
   * Summed over the rooms of some kinds.
   *
   * @param rooms the kinds of room
   * @param each the rate of each of them
   * @param perM2 the rate by each m² of their floors
   * @param least the least rate of each of them
   */
  record PerRoom(
      @Key(about = "The kinds of room", required = true) List<RoomGroup> rooms,
      @Key(
              about = "The rate of each of them",
              dimension = Dimension.AIRFLOW,
              unit = "l/s",
              min = 0,
              example = "5 l/s")
          Optional<Quantity> each,
      @Key(
              about = "The rate by each m2 of their floors",
              dimension = Dimension.AIRFLOW,
              unit = "l/s",
              min = 0,
              example = "0.9 l/s")
          Optional<Quantity> perM2,
      @Key(
              about = "The least rate of each of them",
              dimension = Dimension.AIRFLOW,
              unit = "l/s",
              min = 0,
              example = "7 l/s")
          Optional<Quantity> least)
      implements Rate {
    @Override
    public <T> T on(Cases<T> cases) {
      return cases.perRoom(this);
    }

    /** Refuses a rate that is given in no way. */
    public PerRoom {
      rooms = List.copyOf(rooms);
      if (each.isEmpty() && perM2.isEmpty()) {
        throw new IllegalArgumentException("each or per_m2");
      }
    }
  }

  /**
   * Air changes of the whole home.
   *
   * @param perHour air changes
   */
  @Shorthand("perHour")
  record AirChange(
      @Key(
              about = "Air changes",
              dimension = Dimension.AIR_CHANGE,
              unit = "/h",
              min = 0,
              example = "0.5 /h")
          Quantity perHour)
      implements Rate {
    @Override
    public <T> T on(Cases<T> cases) {
      return cases.airChange(this);
    }
  }

  /**
   * What leaks are credited with: share × w × s × Q50, w the weather and shielding factor of the
   * place, Q50 the flow through leaks at 50 Pa.
   *
   * @param share share of the flow at 50 Pa
   * @param heights the factor s by storeys; past the table the last holds
   */
  record LeakageCredit(
      @Key(about = "Share of the flow at 50 Pa", min = 0, example = "0.052") double share,
      @Key(about = "Factors by storeys; past the table the last holds", required = true)
          List<HeightFactor> heights)
      implements Rate {
    @Override
    public <T> T on(Cases<T> cases) {
      return cases.leakageCredit(this);
    }

    /** Copies the list. */
    public LeakageCredit {
      heights = List.copyOf(heights);
    }

    /**
     * A factor by height.
     *
     * @param storeys number of storeys
     * @param factor the factor
     */
    public record HeightFactor(
        @Key(about = "Number of storeys", min = 1, example = "2") int storeys,
        @Key(about = "The factor", min = 0, example = "1.32") double factor) {}
  }

  /**
   * The same for every home.
   *
   * @param rate the rate
   */
  @Shorthand("rate")
  record Fixed(
      @Key(
              about = "The rate",
              dimension = Dimension.AIRFLOW,
              unit = "l/s",
              min = 0,
              example = "13 l/s")
          Quantity rate)
      implements Rate {
    @Override
    public <T> T on(Cases<T> cases) {
      return cases.fixed(this);
    }
  }
}
