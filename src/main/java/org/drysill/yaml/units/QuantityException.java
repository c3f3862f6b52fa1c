package org.drysill.yaml.units;

/** A text is not the quantity that it should be. */
public final class QuantityException extends Exception {
  private static final long serialVersionUID = 1;

  private final Fault fault;

  QuantityException(Fault fault, String hint) {
    super(hint);
    this.fault = fault;
  }

  /** What sort of fault it is. */
  public Fault fault() {
    return fault;
  }

  /** What is wrong, for the person who wrote the text; a clause without a full stop. */
  public String hint() {
    return getMessage();
  }

  /** The sorts of fault. */
  public enum Fault {
    /** Not a number at all. */
    NOT_A_NUMBER,
    /** A number that can be read in two ways. */
    AMBIGUOUS,
    /** A unit of another kind of quantity, or of none. */
    WRONG_UNIT,
    /** A range whose first number is the higher one, or a negative uncertainty. */
    BACKWARDS
  }
}
