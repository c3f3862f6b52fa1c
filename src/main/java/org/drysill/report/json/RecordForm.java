package org.drysill.report.json;

import java.util.Arrays;
import org.drysill.assess.Figure;
import org.drysill.assess.RoomFacts;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.yaml.Quantity;

/** How a type of record stands in the results. */
enum RecordForm {
  /** A range with basis and working, its unit in the key. */
  FIGURE,
  /** A range with its basis, the unit in the key. */
  OUTCOME,
  /** Low, likely, high, the unit in the key. */
  IN_UNIT,
  /** Low, likely, high. */
  RANGE,
  /** A document with its clause, as one line of text. */
  CITATION,
  /** What the survey names, by its id there. */
  ID,
  /** Key by key. */
  OBJECT;

  private static final ClassValue<RecordForm> KNOWN =
      new ClassValue<>() {
        @Override
        protected RecordForm computeValue(Class<?> type) {
          return found(type);
        }
      };

  static RecordForm of(Class<?> type) {
    return KNOWN.get(type);
  }

  private static RecordForm found(Class<?> type) {
    if (type == Figure.class) {
      return FIGURE;
    }
    if (type == Outcome.class) {
      return OUTCOME;
    }
    if (type == InUnit.class) {
      return IN_UNIT;
    }
    if (type == Range.class || type == Quantity.class) {
      return RANGE;
    }
    if (type == Citation.class) {
      return CITATION;
    }
    return type == RoomFacts.class || isNamedBySurvey(type) ? ID : OBJECT;
  }

  private static boolean isNamedBySurvey(Class<?> type) {
    return type.getPackageName().startsWith("org.drysill.survey")
        && Arrays.stream(type.getRecordComponents()).anyMatch(c -> c.getName().equals("id"));
  }
}
