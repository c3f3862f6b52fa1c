package org.drysill.options;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.drysill.assess.Figure;
import org.drysill.assess.Working.Input;

/** Works out a formula as it is printed, from the likely values of its inputs. */
final class Arithmetic {
  /** Names with the longest first, so that none is taken for the beginning of another. */
  private final Map<String, Double> values = new LinkedHashMap<>();

  private final String text;
  private int at;

  private Arithmetic(String formula, List<Input> inputs) {
    inputs.stream()
        .sorted((a, b) -> Integer.compare(b.symbol().length(), a.symbol().length()))
        // Of several inputs by one symbol the sum counts, which Σ stands for.
        .forEach(i -> values.merge(i.symbol(), i.value().likely(), Double::sum));
    // Constants with units, as SI and kWh take them.
    this.text =
        formula
            .replace("0.34 Wh/(m³·K)", "1224")
            .replace("24 h", "0.024")
            .replace("8760 h", "8.76")
            .replace("Σ ", "")
            .replace(" ", "");
  }

  static double of(Figure figure) {
    Arithmetic sum = new Arithmetic(figure.working().formula(), figure.working().inputs());
    double value = sum.sum();
    if (sum.at < sum.text.length()) {
      throw new IllegalArgumentException(figure.id() + ": " + sum.text.substring(sum.at));
    }
    return value;
  }

  private boolean takes(String next) {
    boolean there = text.startsWith(next, at);
    at += there ? next.length() : 0;
    return there;
  }

  private double sum() {
    double value = takes("−") ? -product() : product();
    while (true) {
      if (takes("+")) {
        value += product();
      } else if (takes("−")) {
        value -= product();
      } else {
        return value;
      }
    }
  }

  private double product() {
    double value = factor();
    while (true) {
      if (takes("·")) {
        value *= factor();
      } else if (takes("/")) {
        value /= factor();
      } else {
        return value;
      }
    }
  }

  private double factor() {
    if (takes("(")) {
      return closed(sum());
    }
    if (takes("min(")) {
      double one = sum();
      takes(";");
      return closed(Math.min(one, sum()));
    }
    if (takes("max(0,")) {
      return closed(Math.max(0, sum()));
    }
    if (takes("none")) {
      return 0;
    }
    for (Map.Entry<String, Double> value : values.entrySet()) {
      if (takes(value.getKey().replace(" ", ""))) {
        return value.getValue();
      }
    }
    int from = at;
    while (at < text.length() && (Character.isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
      at++;
    }
    return Double.parseDouble(text.substring(from, at));
  }

  private double closed(double value) {
    if (!takes(")")) {
      throw new IllegalArgumentException("not closed: " + text.substring(at));
    }
    return value;
  }
}
