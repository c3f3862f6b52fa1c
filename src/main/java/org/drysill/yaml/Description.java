package org.drysill.yaml;

/** What a schema says about a key: what it is, the unit of a bare number, the usual range. */
final class Description {
  private Description() {}

  static String of(Field field) {
    Key key = field.key();
    StringBuilder text = new StringBuilder(key.about()).append('.');
    String unit = key.unit().equals("1") ? "" : key.unit();
    if (!unit.isEmpty()) {
      text.append(" A bare number is in ").append(unit).append('.');
    }
    String space = unit.isEmpty() ? "" : " " + unit;
    append(text, " Usual: ", key.low(), key.high(), space);
    append(text, " Possible: ", key.min(), key.max(), space);
    return text.toString();
  }

  private static void append(
      StringBuilder text, String word, double low, double high, String unit) {
    if (Double.isFinite(low) && Double.isFinite(high)) {
      text.append(word).append(Bounds.number(low)).append(" to ").append(Bounds.number(high));
    } else if (Double.isFinite(low)) {
      text.append(word).append("at least ").append(Bounds.number(low));
    } else if (Double.isFinite(high)) {
      text.append(word).append("at most ").append(Bounds.number(high));
    } else {
      return;
    }
    text.append(unit).append('.');
  }
}
