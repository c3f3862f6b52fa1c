package org.drysill.reference.climate;

import java.util.List;
import java.util.OptionalDouble;
import org.drysill.reference.climate.EpwProblems.Spot;

/** One data row of a weather file; what cannot be read becomes a located problem. */
final class EpwRow {
  private final int line;
  private final List<String> fields;
  private final EpwProblems problems;

  EpwRow(int line, List<String> fields, EpwProblems problems) {
    this.line = line;
    this.fields = fields;
    this.problems = problems;
  }

  boolean isComplete() {
    if (fields.size() >= EpwField.FIELDS) {
      return true;
    }
    problems.add(
        EpwCode.TOO_FEW_FIELDS,
        new Spot(line, 1, "", text()),
        "a record of " + fields.size() + " fields",
        "at least " + EpwField.FIELDS + " fields, the wind speed being the last of them");
    return false;
  }

  /** A number; empty where the file marks it as missing or where it cannot be read. */
  OptionalDouble value(EpwField field) {
    String written = fields.get(field.index()).strip();
    try {
      return checked(field, Double.parseDouble(written));
    } catch (NumberFormatException notANumber) {
      problems.add(EpwCode.NOT_A_NUMBER, spot(field), '"' + written + '"', "a number");
      return OptionalDouble.empty();
    }
  }

  private OptionalDouble checked(EpwField field, double value) {
    if (field.isMissing(value)) {
      return OptionalDouble.empty();
    }
    if (!field.isAllowed(value)) {
      problems.add(
          EpwCode.OUT_OF_RANGE,
          spot(field),
          fields.get(field.index()).strip(),
          "a " + field.label() + " " + field.range());
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(field.kept(value));
  }

  private Spot spot(EpwField field) {
    int column =
        1 + fields.subList(0, field.index()).stream().mapToInt(text -> text.length() + 1).sum();
    return new Spot(line, column, field.label(), text());
  }

  private String text() {
    return String.join(",", fields);
  }
}
